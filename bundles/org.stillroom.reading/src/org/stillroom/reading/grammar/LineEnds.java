package org.stillroom.reading.grammar;

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

    private final SourceText printed;
    private final FoldedText folded;
    private final int width;

    LineEnds(SourceText printed, FoldedText folded) {
        this.printed = printed;
        this.folded = folded;
        int widest = 0;
        for (int i = 1; i <= printed.lineCount(); i++) {
            widest = Math.max(widest, printed.line(i).length());
        }
        this.width = widest;
    }

    /** Tells whether the blank at a unit of the folded text ends a phrase. */
    boolean breaksAt(int unit) {
        if (printed.lineCount() < 2) {
            return false;
        }
        Span blank = folded.toPrinted(unit, unit + 1);
        int line = printed.lineAt(blank.start());
        int next = printed.lineAt(blank.end());
        if (line == next) {
            return false;
        }
        if (next - line > 1) {
            return true;
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
        return fits && fresh || width < 44 && fresh;
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
