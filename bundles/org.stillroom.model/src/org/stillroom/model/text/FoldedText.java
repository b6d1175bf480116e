package org.stillroom.model.text;

/**
 * A text in its folded form, with the way back to the words as printed.
 *
 * <p>Offsets on both sides count code points of the text that was folded, starting at {@code
 * origin} in the source. The map is monotone: every folded code point knows the printed span that
 * it came from.
 */
public final class FoldedText {

    private final String folded;
    private final int[] starts;
    private final int[] ends;

    /**
     * Makes a folded text.
     *
     * @param folded the folded characters, all in the basic plane or counted by UTF-16 unit
     * @param starts for each UTF-16 unit of {@code folded} the printed place where it starts
     * @param ends for each UTF-16 unit of {@code folded} the printed place where it ends
     */
    FoldedText(String folded, int[] starts, int[] ends) {
        this.folded = folded;
        this.starts = starts;
        this.ends = ends;
    }

    /** Returns the folded characters. */
    public String folded() {
        return folded;
    }

    /**
     * Returns the printed span of a stretch of the folded characters.
     *
     * @param from first UTF-16 unit of {@link #folded()}
     * @param to first UTF-16 unit after it
     */
    public Span toPrinted(int from, int to) {
        if (folded.isEmpty()) {
            return new Span(0, 0);
        }
        if (from == to) {
            int place = from < starts.length ? starts[from] : ends[ends.length - 1];
            return new Span(place, place);
        }
        return new Span(starts[from], ends[to - 1]);
    }

    /** Returns the UTF-16 unit of {@link #folded()} that covers, or follows, a printed place. */
    public int toFolded(int printed) {
        int low = 0;
        int high = starts.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (ends[middle] <= printed) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    @Override
    public String toString() {
        return folded;
    }
}
