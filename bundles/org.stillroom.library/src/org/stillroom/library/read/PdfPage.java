package org.stillroom.library.read;

import java.util.ArrayList;
import java.util.List;

/**
 * The words of one page of a PDF file, line by line.
 *
 * @param lines its lines
 * @param pictured whether it holds a picture
 */
record PdfPage(List<Line> lines, boolean pictured) {

    /**
     * Words set in one manner.
     *
     * @param text the words
     * @param size size of the letters in points, to the half
     */
    record Run(String text, double size, boolean italic, boolean bold) {}

    /**
     * A line.
     *
     * @param paragraph whether it starts a paragraph
     * @param runs its words
     */
    record Line(boolean paragraph, List<Run> runs) {

        Line(boolean paragraph) {
            this(paragraph, new ArrayList<>());
        }

        /** Returns its words. */
        String text() {
            StringBuilder text = new StringBuilder();
            runs.forEach(r -> text.append(r.text()));
            return text.toString().strip();
        }

        /** Returns the size of its largest letters, or 0 where it has none. */
        double size() {
            return runs.stream().mapToDouble(Run::size).max().orElse(0);
        }
    }

    /** Tells whether it has no words. */
    boolean isBlank() {
        return lines.stream().allMatch(l -> l.text().isEmpty());
    }
}
