package org.stillroom.reading.table;

import java.util.Optional;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Size;

/**
 * An amount, or a bare number, in folded words.
 *
 * @param kind what it is
 * @param low how many
 * @param high the upper end of a range, or the same
 * @param size a word about size
 * @param word the canonical word of measure, empty for a bare number
 * @param counted whether a number or an article stands before the measure
 * @param start where it starts in the folded words
 * @param end where it ends
 */
record Item(
        Kind kind,
        Rational low,
        Rational high,
        Optional<Size> size,
        String word,
        boolean counted,
        int start,
        int end) {

    /** What stands there. */
    enum Kind {
        /** So many of a measure. */
        AMOUNT,
        /** A number without a measure. */
        NUMBER,
        /** So many times what was said before: “half as much”, “the same”. */
        TIMES,
        /** So many of the measure of the row above: “4 do.”. */
        DITTO
    }

    /** Returns this number as so many of a measure. */
    Item of(String measure) {
        return new Item(Kind.AMOUNT, low, high, size, measure, true, start, end);
    }

    /** Returns an amount so many times as large. */
    Item times(Rational factor) {
        return new Item(
                kind, low.times(factor), high.times(factor), size, word, counted, start, end);
    }
}
