package org.stillroom.library.read;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.stillroom.model.explain.Problem;

/**
 * A file's characters and the digest of its bytes.
 *
 * @param text the characters, without a byte order mark, line ends as line feeds
 * @param digest SHA-256 of the bytes in hexadecimal
 */
record FileText(String text, String digest) {

    /** Larger than any book: some forty thick ones. */
    static final long LARGEST = 32L * 1024 * 1024;

    private static final int LOOK = 8192;

    /** Tells why a file's characters cannot be had. */
    static final class Refused extends Exception {
        private static final long serialVersionUID = 1L;
        private final transient Problem problem;

        Refused(Problem problem) {
            super(problem.reason());
            this.problem = problem;
        }

        Problem problem() {
            return problem;
        }
    }

    /** Reads a text file in UTF-8, or in UTF-16 where it starts with a byte order mark. */
    static FileText read(String id, Path file) throws Refused {
        byte[] bytes = bytes(id, file);
        String text = decode(id, bytes).replace("\r\n", "\n").replace('\r', '\n');
        return new FileText(text, digest(bytes));
    }

    static byte[] bytes(String id, Path file) throws Refused {
        try {
            long size = Files.size(file);
            if (size > LARGEST) {
                throw new Refused(
                        Problem.error(
                                id,
                                "It holds "
                                        + size / (1024 * 1024)
                                        + " MB; a source of more than 32 MB is not read.",
                                "Cut it into one file for each book."));
            }
            return Files.readAllBytes(file);
        } catch (AccessDeniedException e) {
            throw new Refused(
                    Problem.error(
                            id,
                            "It may not be read by this user.",
                            "Give yourself the right to read it."));
        } catch (IOException e) {
            throw new Refused(
                    Problem.error(
                            id,
                            "It cannot be read (" + e.getMessage() + ").",
                            "Look whether the disk or the share is still there."));
        }
    }

    private static String decode(String id, byte[] bytes) throws Refused {
        if (starts(bytes, 0xFF, 0xFE)) {
            return strict(id, bytes, 2, StandardCharsets.UTF_16LE);
        }
        if (starts(bytes, 0xFE, 0xFF)) {
            return strict(id, bytes, 2, StandardCharsets.UTF_16BE);
        }
        for (int i = 0; i < Math.min(bytes.length, LOOK); i++) {
            if (bytes[i] == 0) {
                throw new Refused(
                        Problem.error(
                                id,
                                lineOf(bytes, i),
                                "",
                                "It is not a text: it holds a zero byte.",
                                "Put the text into a file of its own, in UTF-8."));
            }
        }
        int bom =
                bytes.length > 2 && starts(bytes, 0xEF, 0xBB) && (bytes[2] & 0xFF) == 0xBF ? 3 : 0;
        return strict(id, bytes, bom, StandardCharsets.UTF_8);
    }

    private static boolean starts(byte[] bytes, int first, int second) {
        return bytes.length > 1 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
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
            String hex = String.format(java.util.Locale.ROOT, "%02X", bytes[at] & 0xFF);
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

    static String digest(byte[]... parts) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            for (byte[] part : parts) {
                sha.update(part);
            }
            return HexFormat.of().formatHex(sha.digest());
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform has SHA-256", impossible);
        }
    }
}
