package org.stillroom.library.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.stillroom.model.source.Mark;
import org.stillroom.model.text.Span;

/** Collects words, one block a line with blank lines between, and marks; places are code points. */
final class BlockText {

    private static final int LOOK = 4096;

    private final TimeBudget budget;
    private final StringBuilder text = new StringBuilder();
    private final List<Mark> marks = new ArrayList<>();
    private int places;
    private int waiting;
    private boolean blank;
    private boolean freshCell;
    private String page = "";
    private int pageStart = -1;

    /** Makes a collector that gives up when the time is over. */
    BlockText(TimeBudget budget) {
        this.budget = budget;
    }

    /** Returns the place that the next word will stand at. */
    int place() {
        return places + (text.isEmpty() ? 0 : waiting > 0 ? waiting : blank ? 1 : 0);
    }

    /** Adds words; white space folds into one blank. */
    void words(String characters) {
        for (int i = 0; i < characters.length(); ) {
            int c = characters.codePointAt(i);
            i += Character.charCount(c);
            if (Character.isWhitespace(c) || c == 0xA0) {
                blank = true;
            } else {
                word(c);
            }
        }
    }

    /** Adds words whose line ends hold. */
    void lines(String characters) {
        int from = 0;
        for (int end = characters.indexOf('\n'); end >= 0; end = characters.indexOf('\n', from)) {
            words(characters.substring(from, end));
            lineEnd();
            from = end + 1;
        }
        words(characters.substring(from));
    }

    /**
     * Adds raised words. A raised figure after a figure is a part of its own: “1” and a raised “1”
     * before “/2” are one and a half, and a note’s number does not add to an amount.
     */
    void raised(String characters) {
        if (!characters.isEmpty() && isDigit(characters.charAt(0)) && endsWithDigit()) {
            blank = true;
        }
        words(characters);
    }

    /** Starts the number above the line of a built-up fraction. */
    void numerator() {
        if (endsWithDigit()) {
            blank = true;
        }
    }

    private boolean endsWithDigit() {
        return waiting == 0 && !blank && !text.isEmpty() && isDigit(text.charAt(text.length() - 1));
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private void word(int c) {
        if (!text.isEmpty() && waiting > 0) {
            text.append("\n".repeat(waiting));
            places += waiting;
        } else if (!text.isEmpty() && blank) {
            text.append(' ');
            places++;
        }
        waiting = 0;
        blank = false;
        freshCell = false;
        if (pageStart < 0) {
            pageStart = places;
        }
        text.appendCodePoint(c);
        places++;
        if (places % LOOK == 0) {
            budget.gained(LOOK);
            budget.check();
        }
    }

    /** Ends the line; two line ends leave a blank line. At the start of a cell it does nothing. */
    void breakLine(int lineEnds) {
        if (!freshCell) {
            waiting = Math.max(waiting, lineEnds);
        }
    }

    /** Adds a line end to those that are waiting; more than two are no more than two. */
    void lineEnd() {
        breakLine(Math.min(2, waiting + 1));
    }

    /** Starts a cell of a row: its first paragraph goes on in the row's line. */
    void openCell() {
        blank = true;
        freshCell = true;
    }

    /** Ends a cell: what follows stands in the same line. */
    void closeCell() {
        if (!freshCell) {
            waiting = 0;
        }
        blank = true;
        freshCell = false;
    }

    /** Starts a page of this label with the next word; a label that stands already goes on. */
    void page(String label) {
        if (!label.equals(page)) {
            closePage();
            page = label;
        }
    }

    /** Tells whether words were added since a place. */
    boolean hasWordsSince(int place) {
        return places > place;
    }

    private void closePage() {
        if (!page.isEmpty() && pageStart >= 0) {
            marks.add(new Mark(Mark.Kind.PAGE, page, new Span(pageStart, places)));
        }
        page = "";
        pageStart = -1;
    }

    /** Marks the words since a place, if there are any. */
    void mark(Mark.Kind kind, String label, int start) {
        int from = kind == Mark.Kind.EMPHASIS ? wordFrom(start) : start;
        if (from < places) {
            marks.add(new Mark(kind, label, new Span(from, places)));
        }
    }

    /** Returns the place of the first word since a place: no blank is emphasised. */
    private int wordFrom(int start) {
        if (start >= places) {
            return start;
        }
        int at = text.offsetByCodePoints(text.length(), start - places);
        return Character.isWhitespace(text.charAt(at)) ? start + 1 : start;
    }

    /** Adds what another one collected, as a block of its own. */
    void block(BlockText other) {
        if (other.text.isEmpty()) {
            return;
        }
        breakLine(1);
        int start = place();
        lines(other.text());
        for (Mark mark : other.marks()) {
            Span span = mark.span();
            marks.add(
                    new Mark(
                            mark.kind(),
                            mark.label(),
                            new Span(start + span.start(), start + span.end())));
        }
        breakLine(1);
    }

    /** Returns the words. */
    String text() {
        return text.toString();
    }

    /** Returns the marks in the order of their places, the last page closed. */
    List<Mark> marks() {
        closePage();
        marks.sort(Comparator.comparing(Mark::span).thenComparing(Mark::kind));
        return marks;
    }
}
