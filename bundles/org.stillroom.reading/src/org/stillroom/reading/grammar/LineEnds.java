package org.stillroom.reading.grammar;

import java.util.BitSet;
import java.util.Locale;
import java.util.Set;
import org.stillroom.model.text.FoldedText;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/**
 * Tells which ends of printed lines also end a phrase.
 *
 * <p>An empty line does. So does a line that stopped although the next word would have fitted on it:
 * that is how a list is set, while running prose fills its lines.
 */
final class LineEnds {

    /** Words of the four languages after which a phrase goes on. */
    private static final Set<String> HANGING =
            Set.of(
                    "of", "and", "or", "the", "an", "with", "into", "from", "de", "du", "des", "et",
                    "ou", "avec", "und", "oder", "mit", "von", "con", "del", "to", "in", "a", "y",
                    "st.");

    /** Words with a small letter that begin a line of a narrow list. */
    private static final Set<String> OPENING =
            Set.of(
                    "juice", "zest", "rind", "peel", "yolk", "yolks", "white", "whites", "half",
                    "one", "two", "three", "four", "dash", "dashes", "fill", "top", "twist");

    private static final int LONGEST_HANGING = 4;

    private final SourceText printed;
    private final FoldedText folded;
    private final int width;
    private final BitSet listed;

    LineEnds(SourceText printed, FoldedText folded) {
        this.printed = printed;
        this.folded = folded;
        int widest = 0;
        for (int i = 1; i <= printed.lineCount(); i++) {
            widest = Math.max(widest, printed.line(i).length());
        }
        this.width = widest;
        this.listed = listed(printed);
    }

    /** Finds the blocks of lines of which at least half begin with a figure or a bullet. */
    private static BitSet listed(SourceText printed) {
        BitSet listed = new BitSet();
        int first = 1;
        int figures = 0;
        for (int i = 1; i <= printed.lineCount() + 1; i++) {
            String line = i > printed.lineCount() ? "" : printed.slice(printed.line(i)).strip();
            if (!line.isEmpty()) {
                int c = line.codePointAt(0);
                figures += Character.isLetter(c) || c == '(' ? 0 : 1;
                continue;
            }
            if (figures > 1 && figures * 2 >= i - first) {
                listed.set(first, i);
            }
            first = i + 1;
            figures = 0;
        }
        return listed;
    }

    /** Tells whether the blank at a unit of the folded text ends a phrase. */
    boolean breaksAt(int unit) {
        if (printed.lineCount() < 2) {
            return false;
        }
        Span blank = folded.toPrinted(unit, unit + 1);
        int line = printed.lineAt(blank.start());
        int next = printed.lineAt(blank.end());
        if (line == next || hangs(blank.start())) {
            return false;
        }
        if (next - line > 1) {
            return !runsOn(blank);
        }
        Span after = printed.line(next);
        String start = printed.slice(after).strip();
        if (start.isEmpty()) {
            return true;
        }
        int space = start.indexOf(' ');
        int firstWord = space < 0 ? start.length() : space;
        boolean fits = printed.line(line).length() + firstWord + 3 < width;
        int c = start.codePointAt(0);
        boolean fresh = Character.isUpperCase(c) || !Character.isLetter(c);
        String first = start.substring(0, firstWord).toLowerCase(Locale.ROOT);
        boolean opens = width < 44 && OPENING.contains(first) && !wraps(line, c);
        boolean item = opens || listed.get(line) && listed.get(next) && !wraps(line, c);
        return fits && fresh || width < 44 && fresh || item;
    }

    /** A line that is full, or ends in a comma, runs on where the next begins with a small letter. */
    private boolean wraps(int line, int firstOfNext) {
        String text = printed.slice(printed.line(line)).strip();
        boolean full = text.length() > 50 || text.endsWith(",") || text.endsWith("-");
        return full && Character.isLowerCase(firstOfNext);
    }

    /** Tells whether the words before a place cannot end a phrase: “a quarter of”, “with the”. */
    private boolean hangs(int place) {
        int from = Math.max(0, place - LONGEST_HANGING - 1);
        String before = printed.slice(new Span(from, place)).strip();
        int space = Math.max(before.lastIndexOf(' '), before.lastIndexOf('\n'));
        return HANGING.contains(before.substring(space + 1).toLowerCase(Locale.ROOT));
    }

    /** Prose that a page’s end divides runs on with a small letter and no stop before. */
    private boolean runsOn(Span blank) {
        Span rest = new Span(blank.end(), Math.min(printed.length(), blank.end() + 1));
        boolean small =
                !rest.isEmpty() && Character.isLowerCase(printed.slice(rest).codePointAt(0));
        int line = printed.lineAt(blank.start());
        String last = printed.slice(new Span(printed.line(line).start(), blank.start())).strip();
        boolean open = !last.isEmpty() && ".;:!?)".indexOf(last.charAt(last.length() - 1)) < 0;
        return small && open && last.length() * 4 > width * 3;
    }

    /** Tells whether a capital is printed at a unit of the folded text. */
    boolean capitalAt(int unit) {
        Span place = folded.toPrinted(unit, unit + 1);
        if (place.isEmpty()) {
            return false;
        }
        return Character.isUpperCase(printed.slice(place).codePointAt(0));
    }
}
