package org.stillroom.library.read;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Optional;
import org.stillroom.model.explain.Problem;

/**
 * A file's characters and the digest of its bytes.
 *
 * @param text the characters, without a byte order mark, line ends as line feeds
 * @param digest SHA-256 of the bytes in hexadecimal
 */
record FileText(String text, String digest) {

    /** As many bytes as tell a text in UTF-16 by the zeros in it. */
    private static final int LOOK = 4096;

    /** Returns the text of bytes in UTF-8, or in UTF-16 with a byte order mark. */
    static FileText of(String id, byte[] bytes) throws Refused {
        return of(id, bytes, StandardCharsets.UTF_8);
    }

    /** Returns the text of bytes in an encoding, unless a byte order mark tells another. */
    static FileText of(String id, byte[] bytes, Charset charset) throws Refused {
        String text = decode(id, bytes, charset).replace("\r\n", "\n").replace('\r', '\n');
        int zero = text.indexOf(0);
        if (zero >= 0) {
            int line = 1 + (int) text.substring(0, zero).chars().filter(c -> c == '\n').count();
            throw new Refused(zeroByte(id, line));
        }
        return new FileText(text, digest(bytes));
    }

    /** Returns the encoding that a byte order mark tells. */
    static Optional<Charset> marked(byte[] bytes) {
        if (starts(bytes, 0xEF, 0xBB, 0xBF)) {
            return Optional.of(StandardCharsets.UTF_8);
        }
        if (starts(bytes, 0xFF, 0xFE)) {
            return Optional.of(StandardCharsets.UTF_16LE);
        }
        return starts(bytes, 0xFE, 0xFF)
                ? Optional.of(StandardCharsets.UTF_16BE)
                : Optional.empty();
    }

    private static String decode(String id, byte[] bytes, Charset charset) throws Refused {
        if (starts(bytes, 0xFF, 0xFE, 0, 0) || starts(bytes, 0, 0, 0xFE, 0xFF)) {
            throw new Refused(
                    Problem.error(id, "It is in UTF-32, which is not read.", "Save it as UTF-8."));
        }
        Optional<Charset> marked = marked(bytes);
        if (marked.isPresent()) {
            int mark = marked.get().equals(StandardCharsets.UTF_8) ? 3 : 2;
            return strict(id, bytes, mark, marked.get());
        }
        int zeros = 0;
        for (int i = 0; i < Math.min(bytes.length, LOOK); i++) {
            zeros += bytes[i] == 0 ? 1 : 0;
        }
        if (zeros > 0) {
            throw new Refused(notText(id, bytes, zeros));
        }
        return strict(id, bytes, 0, charset);
    }

    private static Problem notText(String id, byte[] bytes, int zeros) {
        int looked = Math.min(bytes.length, LOOK);
        // in UTF-16 every second byte of western words is a zero
        if (zeros > looked * 0.4 && zeros < looked * 0.6) {
            return Problem.error(
                    id,
                    "It seems to be in UTF-16 without a byte order mark.",
                    "Open it in a text editor and save it as UTF-8.");
        }
        int first = 0;
        while (bytes[first] != 0) {
            first++;
        }
        return zeroByte(id, lineOf(bytes, first));
    }

    private static Problem zeroByte(String id, int line) {
        return Problem.error(
                id,
                line,
                "",
                "It is not a text: it holds a zero byte.",
                "Put the text into a file of its own, in UTF-8.");
    }

    private static boolean starts(byte[] bytes, int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (bytes.length <= i || (bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    private static String strict(String id, byte[] bytes, int from, Charset charset)
            throws Refused {
        ByteBuffer in = ByteBuffer.wrap(bytes, from, bytes.length - from);
        try {
            return charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(in)
                    .toString();
        } catch (CharacterCodingException e) {
            int at = Math.min(in.position(), bytes.length - 1);
            String hex = String.format(Locale.ROOT, "%02X", bytes[at] & 0xFF);
            throw new Refused(
                    Problem.error(
                            id,
                            lineOf(bytes, at),
                            "byte " + hex,
                            "It is not in " + charset.name() + ".",
                            "Open it in a text editor, choose the encoding that shows it rightly "
                                    + "(often Windows-1252), and save it as UTF-8."));
        }
    }

    private static int lineOf(byte[] bytes, int at) {
        int line = 1;
        for (int i = 0; i < at; i++) {
            if (bytes[i] == '\n') {
                line++;
            }
        }
        return line;
    }

    /** Tells whether bytes hold a word in ASCII. */
    static boolean find(byte[] bytes, String word) {
        return new String(bytes, StandardCharsets.ISO_8859_1).contains(word);
    }

    /** Returns the SHA-256 of bytes in hexadecimal. */
    static String digest(byte[] bytes) {
        return HexFormat.of().formatHex(sha().digest(bytes));
    }

    static MessageDigest sha() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform has SHA-256", impossible);
        }
    }
}
