package org.stillroom.reading.cut;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A printed title, its number and its words kept apart.
 *
 * @param number the number before it as printed, without “No.” and stop
 * @param words the title without number, mark-up and closing stop, white space folded
 * @param start UTF-16 index where the words start
 * @param end UTF-16 index where they end
 */
record TitleText(Optional<String> number, String words, int start, int end) {

    /** The signs by which transcribers mark italics, bold, small capitals and other faces. */
    static final String SIGNS = "_*=+~$";

    private static final Pattern REMARK =
            Pattern.compile(
                    "(?i)(?:(?:as|use|serve|in|see|from|with|to be|for) |.*\\b(?:price|glass)\\b)");

    private static final Pattern MONEY = Pattern.compile("\\d+([c¢]|/[\\d-]*|[sd]\\.?)|[$£]\\d.*");

    /** Returns the title that stands between two UTF-16 indexes of a text. */
    static TitleText of(String text, int from, int to) {
        return of(text, from, to, false);
    }

    /** Returns the title of a heading, which may be counted by parts (“7.1 Negus”). */
    static TitleText of(String text, int from, int to, boolean marked) {
        int start = skipMarkup(text, from, to);
        int afterNumber = numberEnd(text, start, to);
        if (marked && (afterNumber == start || Character.isDigit(text.charAt(afterNumber)))) {
            afterNumber = partsEnd(text, start, to);
        }
        Optional<String> number = Optional.empty();
        if (afterNumber > start) {
            number = Optional.of(plainNumber(text.substring(start, afterNumber)));
            start = skipMarkup(text, afterNumber, to);
        }
        int leaders = leaders(text, start, to);
        int end = closed(text, start, beforePrice(text, start, leaders));
        int remark = remark(text, start, end, marked);
        end = remark < end ? closed(text, start, remark) : end;
        if (isQuoted(text, start, end)) {
            start++;
            end = closed(text, start, end - 1);
        }
        return new TitleText(number, plain(text, start, end), start, end);
    }

    private static int closed(String text, int start, int to) {
        int end = to;
        while (end > start && isClosing(text, start, end)) {
            end--;
        }
        return end;
    }

    /** Tells whether quotation marks stand round the whole title and nowhere else. */
    private static boolean isQuoted(String text, int start, int end) {
        if (end - start < 4) {
            return false;
        }
        char open = text.charAt(start);
        char close = text.charAt(end - 1);
        boolean pair = open == '“' && close == '”' || open == '"' && close == '"';
        return pair
                && count(text, start + 1, end - 1, '“') + count(text, start + 1, end - 1, '"') == 0;
    }

    /**
     * Returns where a remark in brackets that closes a title starts (“(Use small bar glass.)”), or
     * the end. Words that follow without a stop belong to the title, unless they say how or for whom.
     */
    private static int remark(String text, int start, int end, boolean marked) {
        char close = end > start ? text.charAt(end - 1) : ' ';
        if (close != ')' && close != ']') {
            return end;
        }
        int open = text.lastIndexOf(close == ')' ? '(' : '[', end - 1);
        int before = open;
        while (before > start && Lines.isBlank(text.charAt(before - 1))) {
            before--;
        }
        boolean said = before > start + 2;
        boolean stopped = said && ".,:_*=".indexOf(text.charAt(before - 1)) >= 0;
        return stopped
                        || said
                                && !marked
                                && REMARK.matcher(text.substring(open + 1, end)).lookingAt()
                ? before
                : end;
    }

    /** Returns where leaders (“....”) start, or the end. */
    private static int leaders(String text, int start, int to) {
        for (int at = start + 1; at + 4 <= to; at++) {
            if (text.startsWith("....", at)) {
                return at;
            }
        }
        return to;
    }

    /** Returns words without mark-up, their white space folded. */
    private static String plain(String text, int start, int end) {
        StringBuilder words = new StringBuilder(end - start);
        for (int i = start; i < end; i++) {
            char c = text.charAt(i);
            boolean blank = Character.isWhitespace(c);
            if (c == '\n' && isBroken(text, i, end)) {
                continue;
            }
            if (blank && !words.isEmpty() && words.charAt(words.length() - 1) != ' ') {
                words.append(' ');
            } else if (!blank && "_*=+~".indexOf(c) < 0) {
                words.append(c);
            }
        }
        return words.toString().strip();
    }

    /** Tells whether a hyphen parts a word at the end of this line. */
    private static boolean isBroken(String text, int at, int end) {
        return at > 1
                && text.charAt(at - 1) == '-'
                && Character.isLetter(text.charAt(at - 2))
                && at + 1 < end
                && Character.isLetter(text.charAt(at + 1));
    }

    /** Returns where a price after leaders, a gap or a blank starts (“.... 1/6”, “35c”), or the end. */
    private static int beforePrice(String text, int start, int to) {
        int at = to;
        while (at > start && " \t.".indexOf(text.charAt(at - 1)) >= 0) {
            at--;
        }
        int end = at;
        boolean digit = false;
        while (at > start
                && end - at < 7
                && "0123456789/cds¢$£-.".indexOf(text.charAt(at - 1)) >= 0) {
            digit |= Character.isDigit(text.charAt(at - 1));
            at--;
        }
        int words = at;
        while (words > start && " \t.".indexOf(text.charAt(words - 1)) >= 0) {
            words--;
        }
        boolean leaders = at - words >= 4;
        String price = text.substring(at, end);
        boolean money = digit && MONEY.matcher(price).matches();
        return digit && words > start && words < at && (leaders || money) ? words : to;
    }

    private static boolean isClosing(String text, int start, int end) {
        char c = text.charAt(end - 1);
        if (c == ')' || c == ']') {
            return text.lastIndexOf(c == ')' ? '(' : '[', end) < start;
        }
        if (c == '”' || c == '"') {
            return count(text, start, end, '“') + count(text, start, end, '"') < 2;
        }
        return Character.isWhitespace(c) || ".,:;—–-_*#=~+$|".indexOf(c) >= 0;
    }

    private static int count(String text, int start, int end, char sought) {
        int n = 0;
        for (int i = start; i < end; i++) {
            n += text.charAt(i) == sought || text.charAt(i) == '”' && sought == '“' ? 1 : 0;
        }
        return n;
    }

    /** A dollar sign before a letter marks a face; before a figure it is money. */
    private static boolean isDollar(String text, int at, int to) {
        return text.charAt(at) == '$' && at + 1 < to && Character.isLetter(text.charAt(at + 1));
    }

    static int skipMarkup(String text, int from, int to) {
        int at = from;
        while (at < to
                && (Character.isWhitespace(text.charAt(at))
                        || "#*_—–-=~+.".indexOf(text.charAt(at)) >= 0
                        || isDollar(text, at, to))) {
            at++;
        }
        if (at < to && (text.charAt(at) == '“' || text.charAt(at) == '"')) {
            char close = text.charAt(at) == '“' ? '”' : '"';
            int closing = text.indexOf(close, at + 1);
            if (closing < 0 || closing >= to) {
                return skipMarkup(text, at + 1, to);
            }
        }
        return at;
    }

    /**
     * Returns where a number of a recipe ends (“12.”, “No. 4.—”, “(7)”, “XII.”), or the start where
     * there is none.
     */
    static int numberEnd(String text, int start, int to) {
        int at = start;
        boolean open = at < to && (text.charAt(at) == '(' || text.charAt(at) == '[');
        at += open ? 1 : 0;
        boolean no = false;
        if (at + 1 < to
                && (text.charAt(at) == 'N' || text.charAt(at) == 'n')
                && (text.charAt(at + 1) == 'o' || text.charAt(at + 1) == 'O')) {
            int next = at + 2;
            while (next < to && (text.charAt(next) == '.' || text.charAt(next) == ' ')) {
                next++;
            }
            no = next < to && Character.isDigit(text.charAt(next));
            at = no ? next : at;
        } else if (at < to && (text.charAt(at) == '§' || text.charAt(at) == '№')) {
            at++;
            while (at < to && text.charAt(at) == ' ') {
                at++;
            }
            no = true;
        }
        int digits = at;
        while (at < to && at - digits < 5 && Character.isDigit(text.charAt(at))) {
            at++;
        }
        if (at == digits) {
            at = romanEnd(text, digits, to);
        }
        if (at == digits || at >= to) {
            return start;
        }
        if (at < to
                && (text.charAt(at) == 'a' || text.charAt(at) == 'b')
                && at + 1 < to
                && ".)".indexOf(text.charAt(at + 1)) >= 0) {
            at++;
        }
        char c = text.charAt(at);
        boolean closed = c == '.' || c == ')' || c == ']' || c == ':' || c == '—' || c == '–';
        if (c == '-') {
            closed = at + 1 < to && (text.charAt(at + 1) == '-' || text.charAt(at + 1) == ' ');
        }
        if (!closed && !(no && Character.isWhitespace(c))) {
            return start;
        }
        while (at < to && ".):]—–- ".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        return at;
    }

    private static int partsEnd(String text, int start, int to) {
        int at = start;
        while (at < to && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        boolean counted = at > start && at < to && text.charAt(at) == ' ';
        return counted && Character.isDigit(text.charAt(start)) ? at + 1 : start;
    }

    private static int romanEnd(String text, int start, int to) {
        int at = start;
        while (at < to && at - start < 8 && "IVXLC".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        boolean alone = at < to && text.charAt(at) == '.';
        return alone && at > start ? at : start;
    }

    private static String plainNumber(String printed) {
        String number = printed.replaceAll("(?i)^\\W*no[. ]+", "");
        return number.replaceAll("^[^0-9A-Za-z]+|[^0-9A-Za-z]+$", "");
    }
}
