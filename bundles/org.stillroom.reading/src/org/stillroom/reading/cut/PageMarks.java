package org.stillroom.reading.cut;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Tells the furniture of a printed page (numbers, running heads, rules, pictures) from its words.
 *
 * <p>Works line by line with bounded looking ahead.
 */
final class PageMarks {

    private static final int LONGEST_LABEL = 40;
    private static final Pattern LABEL_START =
            Pattern.compile("(?i)^[\\s\\[({|*—–_-]*+(?:pg|page|p)?[.:]?\\s*+");
    private static final Pattern LABEL_END = Pattern.compile("[\\s\\])}|*—–_.-]++$");

    private PageMarks() {}

    /** Tells whether a line, given by UTF-16 units, is furniture and nothing else. */
    static boolean isNoise(String text, int from, int to, java.util.Set<String> runningHeads) {
        int start = from;
        int end = to;
        while (start < end && isBlank(text.charAt(start))) {
            start++;
        }
        while (end > start && isBlank(text.charAt(end - 1))) {
            end--;
        }
        if (end - start > 90 || start == end) {
            return false;
        }
        String line = text.substring(start, end);
        return isRule(line)
                || line.startsWith("[Illustration")
                || label(line).isPresent()
                || numberedCapitals(line)
                        .filter(w -> isSetOff(line) || runningHeads.contains(w))
                        .isPresent();
    }

    private static boolean isBlank(char c) {
        return Character.isWhitespace(c) || c == '\u00a0';
    }

    private static boolean isRule(String line) {
        return line.chars().allMatch(c -> "-—–_*=~.·•+# \t".indexOf(c) >= 0);
    }

    /**
     * Returns the page number of a line that is only a page number: “12”, “— 12 —”, “{12}”, “[Pg
     * 12]”, “[ 12 ]”, “Page 12”, “xii”.
     */
    static Optional<String> label(String line) {
        if (line.length() > LONGEST_LABEL) {
            return Optional.empty();
        }
        String core =
                LABEL_END.matcher(LABEL_START.matcher(line).replaceFirst("")).replaceFirst("");
        boolean bare = core.length() == line.length();
        if (core.isEmpty() || core.length() > 6) {
            return Optional.empty();
        }
        boolean digits = core.chars().allMatch(c -> c >= '0' && c <= '9') && core.length() <= 4;
        boolean roman = core.chars().allMatch(c -> "ivxlc".indexOf(c) >= 0);
        return digits || roman && (!bare || core.length() > 1)
                ? Optional.of(core)
                : Optional.empty();
    }

    /**
     * Returns the words of a line in capitals with a page number at one end, as running heads are
     * printed, or nothing where it is no such line.
     */
    static Optional<String> numberedCapitals(String line) {
        int from = 0;
        int to = line.length();
        if (line.chars().noneMatch(Character::isDigit)) {
            return Optional.empty();
        }
        while (from < to && "[( 0123456789])\t".indexOf(line.charAt(from)) >= 0) {
            from++;
        }
        while (to > from && "[( 0123456789])\t".indexOf(line.charAt(to - 1)) >= 0) {
            to--;
        }
        boolean stopped = from > 0 && line.endsWith(".");
        while (stopped && to > from && line.charAt(to - 1) == '.') {
            to--;
        }
        String words = line.substring(from, to);
        boolean numbered =
                line.substring(0, from).chars().anyMatch(Character::isDigit)
                        || line.substring(to).chars().anyMatch(Character::isDigit);
        boolean capitals =
                words.length() > 3
                        && words.chars().anyMatch(Character::isLetter)
                        && words.chars().noneMatch(Character::isLowerCase);
        boolean leaders = words.endsWith("..") || words.endsWith(". .");
        boolean counted = words.endsWith("NO.") || words.endsWith("No.");
        boolean listed = words.startsWith(".") || words.startsWith("-") || words.startsWith("—");
        return numbered && capitals && !leaders && !counted && !listed
                ? Optional.of(words)
                : Optional.empty();
    }

    /** Tells whether a line of numbered capitals sets its number far off or in brackets. */
    static boolean isSetOff(String line) {
        String bare = line.strip();
        return bare.contains("    ")
                || bare.contains("\t")
                || bare.startsWith("[")
                || bare.endsWith("]");
    }
}
