package org.stillroom.reading.cut;

import org.stillroom.model.text.SourceText;

/**
 * The furniture of printed pages that stands between the words of a recipe: page numbers, running
 * heads, rules, pictures.
 */
public final class Furniture {

    private Furniture() {}

    /**
     * Returns a text in which furniture is blank and every other code point stands where it stood.
     *
     * @return the same text where there is none
     */
    public static SourceText blank(SourceText text) {
        String words = text.toString();
        Lines lines = new Lines(words);
        Listing listing = new Listing(lines, lines.count());
        StringBuilder out = null;
        for (int i = 0; i < lines.count(); i++) {
            int from = lines.start(i);
            int to = lines.end(i);
            boolean noise = from < to && PageMarks.isNoise(words, from, to, listing.runningHeads());
            for (int at = from; at < to; at++) {
                int end = noise ? to : labelEnd(words, at, to);
                if (end > at) {
                    out = out == null ? new StringBuilder(words) : out;
                    blank(out, words, at, end);
                    at = end - 1;
                }
            }
        }
        return out == null ? text : SourceText.of(out.toString());
    }

    /** A pair of surrogates is one code point and becomes one blank of the same two units. */
    private static void blank(StringBuilder out, String words, int from, int to) {
        for (int i = from; i < to; i++) {
            if (!Character.isSurrogate(words.charAt(i))) {
                out.setCharAt(i, ' ');
            }
        }
    }

    /** Returns where a page number in braces or brackets that starts here ends, or the place. */
    private static int labelEnd(String text, int at, int to) {
        char c = text.charAt(at);
        if (c != '{' && c != '[') {
            return at;
        }
        int close = at + 1;
        int limit = Math.min(to, at + 13);
        while (close < limit && text.charAt(close) != (c == '{' ? '}' : ']')) {
            close++;
        }
        if (close >= limit) {
            return at;
        }
        String inside = text.substring(at, close + 1);
        boolean marked = c == '{' || inside.startsWith("[p") || inside.startsWith("[P");
        return marked && PageMarks.label(inside).isPresent() ? close + 1 : at;
    }
}
