package org.stillroom.model.text;

import java.text.Normalizer;
import java.util.Arrays;

/**
 * Folds printed words into a plain form for comparing and parsing, and keeps the way back.
 *
 * <p>Long s, ligatures, diacritics, capitals, curly quotes, dashes, soft hyphens, words divided at a
 * line's end and runs of white space are folded. Numbers are not: vulgar fractions, the fraction
 * slash and apothecaries' signs stay as printed, because a compatibility folding would turn “1½”
 * into eleven halves (Unicode Standard Annex 15, compatibility decomposition of U+00BD).
 */
public final class Folding {

    private Folding() {}

    /** Returns the folded form of a text. */
    public static FoldedText fold(String printed) {
        Builder out = new Builder(printed.length());
        int place = 0;
        int i = 0;
        while (i < printed.length()) {
            int c = printed.codePointAt(i);
            int size = Character.charCount(c);
            int joined = joinedHyphen(printed, i, c);
            if (joined > 0) {
                place += printed.codePointCount(i, i + joined);
                i += joined;
                continue;
            }
            if (Character.isWhitespace(c) || c == 0xA0 || c == 0x202F || c == 0x2009) {
                out.space(place);
            } else {
                append(out, c, place);
            }
            place++;
            i += size;
        }
        return out.build();
    }

    /** Returns the folded form of a word or phrase alone. */
    public static String foldWord(String printed) {
        return fold(printed.strip()).folded();
    }

    /** Returns how many UTF-16 units a hyphen at a line's end and its line feed take, or 0. */
    private static int joinedHyphen(String text, int at, int c) {
        if (c == 0xAD) {
            return 1;
        }
        if (c != '-' && c != 0x2010 && c != 0xAC) {
            return 0;
        }
        if (at == 0 || !Character.isLetter(text.charAt(at - 1))) {
            return 0;
        }
        int i = at + 1;
        while (i < text.length() && (text.charAt(i) == ' ' || text.charAt(i) == '\t')) {
            i++;
        }
        if (i >= text.length() || text.charAt(i) != '\n') {
            return 0;
        }
        i++;
        while (i < text.length() && (text.charAt(i) == ' ' || text.charAt(i) == '\t')) {
            i++;
        }
        boolean goesOn = i < text.length() && Character.isLowerCase(text.charAt(i));
        return goesOn && c != '-' ? i - at : 0;
    }

    private static void append(Builder out, int c, int place) {
        String plain = special(c);
        if (!plain.isEmpty()) {
            out.add(plain, place);
            return;
        }
        if (c < 0x80) {
            out.add((char) (c >= 'A' && c <= 'Z' ? c + 32 : c), place);
            return;
        }
        if (Character.isLetter(c)) {
            String decomposed = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFD);
            for (int i = 0; i < decomposed.length(); ) {
                int d = decomposed.codePointAt(i);
                i += Character.charCount(d);
                if (Character.getType(d) != Character.NON_SPACING_MARK) {
                    out.add(Character.toString(Character.toLowerCase(d)), place);
                }
            }
        } else if (Character.getType(c) != Character.NON_SPACING_MARK) {
            out.add(Character.toString(c), place);
        }
    }

    private static String special(int c) {
        return switch (c) {
            case 0x17F -> "s";
            case 0xE6, 0xC6 -> "ae";
            case 0x153, 0x152 -> "oe";
            case 0xDF -> "ss";
            case 0xFB00 -> "ff";
            case 0xFB01 -> "fi";
            case 0xFB02 -> "fl";
            case 0xFB03 -> "ffi";
            case 0xFB04 -> "ffl";
            case 0xFB05, 0xFB06 -> "st";
            case 0xF8, 0xD8 -> "o";
            case 0x2018, 0x2019, 0x201B, 0x2032 -> "'";
            case 0x201C, 0x201D, 0x201E, 0x201F -> "\"";
            case 0x2010, 0x2011 -> "-";
            case 0x2012, 0x2013 -> "–";
            default -> "";
        };
    }

    /** Collects folded characters with their printed places. */
    private static final class Builder {
        private final StringBuilder folded;
        private int[] starts;
        private int[] ends;

        Builder(int capacity) {
            folded = new StringBuilder(capacity);
            starts = new int[Math.max(8, capacity)];
            ends = new int[starts.length];
        }

        void add(String characters, int place) {
            for (int i = 0; i < characters.length(); i++) {
                add(characters.charAt(i), place);
            }
        }

        void add(char character, int place) {
            int at = folded.length();
            if (at == starts.length) {
                starts = Arrays.copyOf(starts, at * 2);
                ends = Arrays.copyOf(ends, at * 2);
            }
            folded.append(character);
            starts[at] = place;
            ends[at] = place + 1;
        }

        void space(int place) {
            int last = folded.length() - 1;
            if (last >= 0 && folded.charAt(last) == ' ') {
                ends[last] = place + 1;
            } else {
                add(' ', place);
            }
        }

        FoldedText build() {
            int n = folded.length();
            return new FoldedText(
                    folded.toString(), Arrays.copyOf(starts, n), Arrays.copyOf(ends, n));
        }
    }
}
