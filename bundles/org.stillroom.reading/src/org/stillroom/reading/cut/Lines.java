package org.stillroom.reading.cut;

import java.util.Arrays;

/** The lines of a text as UTF-16 bounds, found in one pass. */
final class Lines {

    private final String text;
    private final int[] starts;
    private final int count;

    Lines(String text) {
        this.text = text;
        int[] found = new int[1024];
        int n = 1;
        for (int at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) {
            if (n == found.length) {
                found = Arrays.copyOf(found, n * 2);
            }
            found[n++] = at + 1;
        }
        starts = found;
        count = n;
    }

    int count() {
        return count;
    }

    /** Returns where a line, from 0, starts. */
    int start(int line) {
        return starts[line];
    }

    /** Returns where a line ends, its line feed left out. */
    int end(int line) {
        return line + 1 < count ? starts[line + 1] - 1 : text.length();
    }

    /** Returns the first character of a line that is no blank, or its end. */
    int first(int line) {
        int at = start(line);
        int end = end(line);
        while (at < end && isBlank(text.charAt(at))) {
            at++;
        }
        return at;
    }

    /** Returns the place after the last character of a line that is no blank. */
    int last(int line) {
        int at = end(line);
        int start = start(line);
        while (at > start && isBlank(text.charAt(at - 1))) {
            at--;
        }
        return at;
    }

    boolean isEmpty(int line) {
        return first(line) == end(line);
    }

    /** Returns a line without the blanks around it; long lines only to a hundred and sixty units. */
    String words(int line) {
        int from = first(line);
        int to = Math.max(from, last(line));
        return text.substring(from, Math.min(to, from + 160));
    }

    static boolean isBlank(char c) {
        return c == ' ' || Character.isWhitespace(c) || c == '\u00a0' || c == '\ufeff';
    }

    /** Returns where the last sentence before a place starts. */
    static int sentenceStart(String text, int from, int end) {
        for (int at = end - 2; at > from + 1; at--) {
            char c = text.charAt(at - 1);
            boolean closed = ".!?".indexOf(c == '”' ? text.charAt(at - 2) : c) >= 0;
            if (!closed || !isBlank(text.charAt(at))) {
                continue;
            }
            int start = at;
            while (start < end && isBlank(text.charAt(start))) {
                start++;
            }
            if (Character.isUpperCase(text.charAt(start))
                    || "“‘_".indexOf(text.charAt(start)) >= 0) {
                return start;
            }
        }
        return from;
    }
}
