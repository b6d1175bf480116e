package org.stillroom.library.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.stillroom.model.source.Mark;
import org.stillroom.model.text.Span;

/** Collects words, one block a line with blank lines between, and marks; places are code points. */
final class BlockText {

    private final StringBuilder text = new StringBuilder();
    private final List<Mark> marks = new ArrayList<>();
    private int places;
    private int waiting;
    private boolean blank;
    private String page = "";
    private int pageStart;

    /** Returns the place that the next word will stand at. */
    int place() {
        return places + (text.isEmpty() ? 0 : waiting > 0 ? waiting : blank ? 1 : 0);
    }

    /** Adds words; white space folds into one blank. */
    void words(String characters) {
        characters
                .codePoints()
                .forEach(
                        c -> {
                            if (Character.isWhitespace(c) || c == 0xA0) {
                                blank = true;
                            } else {
                                word(c);
                            }
                        });
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
        text.appendCodePoint(c);
        places++;
    }

    /** Ends the line; two line ends leave a blank line. */
    void breakLine(int lineEnds) {
        waiting = Math.max(waiting, lineEnds);
    }

    /** Starts a page of this label. */
    void page(String label) {
        closePage();
        page = label;
        pageStart = place();
    }

    private void closePage() {
        if (!page.isEmpty() && places > pageStart) {
            marks.add(new Mark(Mark.Kind.PAGE, page, new Span(pageStart, places)));
        }
        page = "";
    }

    /** Marks the words since a place, if there are any. */
    void mark(Mark.Kind kind, String label, int start) {
        if (start < places) {
            marks.add(new Mark(kind, label, new Span(start, places)));
        }
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
