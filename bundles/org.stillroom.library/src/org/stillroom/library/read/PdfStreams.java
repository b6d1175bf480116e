package org.stillroom.library.read;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.zip.InflaterInputStream;

/**
 * A look at the streams of a PDF file before it is opened: none may unpack to more than there is
 * memory for. Pictures are left out, since nothing unpacks them to get at words.
 */
final class PdfStreams {

    private static final byte[] KEYWORD = "stream".getBytes(StandardCharsets.US_ASCII);
    private static final int DICTIONARY = 1024;
    private static final int BUFFER = 1 << 16;

    private final String id;
    private final Limits limits;
    private final TimeBudget budget;
    private final byte[] before = new byte[DICTIONARY];
    private long at;

    PdfStreams(String id, Limits limits, TimeBudget budget) {
        this.id = id;
        this.limits = limits;
        this.budget = budget;
    }

    /** Refuses a file with a stream that unpacks to more than the limit. */
    void check(Path file) throws IOException, Refused {
        try (FileChannel channel = FileChannel.open(file);
                InputStream in = new BufferedInputStream(Channels.newInputStream(channel), BUFFER);
                FileChannel other = FileChannel.open(file)) {
            int matched = 0;
            for (int b = in.read(); b >= 0; b = in.read()) {
                before[(int) (at++ % DICTIONARY)] = (byte) b;
                matched = b == KEYWORD[matched] ? matched + 1 : b == KEYWORD[0] ? 1 : 0;
                if (matched == KEYWORD.length) {
                    matched = 0;
                    check(other);
                }
                if (at % BUFFER == 0) {
                    budget.check();
                }
            }
        }
    }

    private void check(FileChannel channel) throws IOException, Refused {
        String dictionary = dictionary();
        int packed = count(dictionary, "/FlateDecode") + count(dictionary, "/Fl ");
        if (packed == 0 || packed > 4 || dictionary.contains("/Image")) {
            return;
        }
        channel.position(at);
        InputStream in = new BufferedInputStream(Channels.newInputStream(channel), BUFFER);
        in.mark(2);
        // the keyword ends with a line feed, or with a carriage return and a line feed
        if (in.read() == '\r' && in.read() != '\n') {
            in.reset();
        }
        for (int i = 0; i < packed; i++) {
            in = new InflaterInputStream(in);
        }
        drain(in);
    }

    private void drain(InputStream in) throws Refused {
        byte[] buffer = new byte[BUFFER];
        long size = 0;
        try {
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                budget.check();
                size += n;
                if (size > limits.inflatedBytes()) {
                    throw Refused.of(
                            id,
                            "A part of it unpacks to more than "
                                    + limits.inflatedBytes() / (1024 * 1024)
                                    + " MB, which no page has.",
                            "Print it to a new PDF file, or save its words as plain text.");
                }
            }
        } catch (IOException damaged) {
            // whether that matters shows when it is opened
            budget.check();
        }
    }

    /** Returns what stands between the object's start and the keyword. */
    private String dictionary() {
        int length = (int) Math.min(at, DICTIONARY);
        byte[] bytes = new byte[length];
        for (int i = 0; i < length; i++) {
            bytes[i] = before[(int) ((at - length + i) % DICTIONARY)];
        }
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        return text.endsWith("endstream") ? "" : text.substring(text.lastIndexOf(" obj") + 1);
    }

    private static int count(String text, String word) {
        int count = 0;
        for (int i = text.indexOf(word); i >= 0; i = text.indexOf(word, i + 1)) {
            count++;
        }
        return count;
    }
}
