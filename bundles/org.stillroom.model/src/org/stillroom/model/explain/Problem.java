package org.stillroom.model.explain;

import java.util.OptionalInt;

/**
 * Something that could not be read or done, said so that a person can mend it.
 *
 * @param severity how bad it is
 * @param file the file's path as the user knows it, or empty
 * @param line the line from 1, where there is one
 * @param words the words concerned, or empty
 * @param reason what was wrong, a sentence
 * @param remedy the nearest thing that would work, a sentence, or empty
 */
public record Problem(
        Severity severity,
        String file,
        OptionalInt line,
        String words,
        String reason,
        String remedy) {

    /** How bad a problem is. */
    public enum Severity {
        /** The thing was not read or done. */
        ERROR,
        /** It was read or done, and something about it is doubtful. */
        WARNING
    }

    /** Returns an error about a whole file. */
    public static Problem error(String file, String reason, String remedy) {
        return new Problem(Severity.ERROR, file, OptionalInt.empty(), "", reason, remedy);
    }

    /** Returns an error about a line of a file. */
    public static Problem error(String file, int line, String words, String reason, String remedy) {
        return new Problem(Severity.ERROR, file, OptionalInt.of(line), words, reason, remedy);
    }

    /** Returns a warning about a whole file. */
    public static Problem warning(String file, String reason, String remedy) {
        return new Problem(Severity.WARNING, file, OptionalInt.empty(), "", reason, remedy);
    }

    /** Returns a warning about a line of a file. */
    public static Problem warning(
            String file, int line, String words, String reason, String remedy) {
        return new Problem(Severity.WARNING, file, OptionalInt.of(line), words, reason, remedy);
    }

    /** Returns the problem in one line: place, reason, words, remedy. */
    public String toText() {
        StringBuilder out = new StringBuilder(file);
        line.ifPresent(n -> out.append(':').append(n));
        if (!out.isEmpty()) {
            out.append(": ");
        }
        out.append(reason);
        if (!words.isEmpty()) {
            out.append(" [").append(words).append(']');
        }
        if (!remedy.isEmpty()) {
            out.append(' ').append(remedy);
        }
        return out.toString();
    }
}
