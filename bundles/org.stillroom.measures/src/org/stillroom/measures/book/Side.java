package org.stillroom.measures.book;

import java.util.Optional;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Size;

/**
 * One side of a statement such as “4 gills = 1 pint”.
 *
 * @param low how many, more than 0
 * @param high the upper end of a range, or the same
 * @param size a word about size beside the measure (“large”)
 * @param word the canonical word of measure
 */
public record Side(Rational low, Rational high, Optional<Size> size, String word) {

    /** Refuses nothing, less than nothing and a range upside down. */
    public Side {
        if (low.signum() <= 0 || high.compareTo(low) < 0) {
            throw new IllegalArgumentException("So many measures are more than none: " + low);
        }
    }

    /** Returns a side of so many measures without a word about size. */
    public static Side of(Rational number, String word) {
        return new Side(number, number, Optional.empty(), word);
    }

    /** Returns the measure with its size, as one name. */
    String name() {
        return name(size, word);
    }

    static String name(Optional<Size> size, String word) {
        return size.map(s -> s.word() + " ").orElse("") + word;
    }
}
