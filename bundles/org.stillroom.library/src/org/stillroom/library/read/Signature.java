package org.stillroom.library.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/** What the first bytes of a file say that it is, whatever its name says. */
enum Signature {
    /** Parts packed together: DOCX, ODT, EPUB and others. */
    ZIP("PK", "parts packed together", "Name it with the ending of what it is."),
    /** Portable Document Format. */
    PDF("%PDF", "it is a PDF", "Name it with the ending .pdf."),
    /** The older binary files of word processors, also where a password protects newer ones. */
    OFFICE(
            "\u00d0\u00cf\u0011\u00e0",
            "it is a word processor’s older file (.doc), or protected with a password",
            "Open it in a word processor, take the password off, and save it as .docx or .odt."),
    /** Rich Text Format. */
    RTF("{\\rtf", "it is Rich Text (.rtf)", "Open it in a word processor and save it as .docx."),
    /** XML or HTML. */
    MARKUP("<", "it is mark-up", "Name it with the ending .html or .xml.");

    private final String bytes;
    private final String what;
    private final String remedy;

    Signature(String bytes, String what, String remedy) {
        this.bytes = bytes;
        this.what = what;
        this.remedy = remedy;
    }

    /** Returns what a file is by its first bytes, if that can be told. */
    static Optional<Signature> of(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return of(in.readNBytes(8));
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    static Optional<Signature> of(byte[] head) {
        String start = new String(head, StandardCharsets.ISO_8859_1);
        return Stream.of(values()).filter(s -> start.startsWith(s.bytes)).findFirst();
    }

    /** Returns what it is, in words. */
    String what() {
        return what;
    }

    /** Returns what to do, a sentence. */
    String remedy() {
        return remedy;
    }
}
