package org.stillroom.reading.grammar;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.Size;

/**
 * Number, measure and size as they stand together before or after a name.
 *
 * @param amount how much
 * @param measure the canonical word, or empty while the name must decide between part and whole
 * @param size a word about size
 * @param start first token
 * @param next the token after it
 * @param each whether it holds for each of several names
 * @param others other amounts that the same signs may mean
 * @param hints what to know about how it was read
 */
record Quantity(
        Amount amount,
        String measure,
        Optional<Size> size,
        int start,
        int next,
        boolean each,
        List<Amount> others,
        Set<Hint> hints) {

    static Quantity of(Amount amount, String measure, int start, int next, Hint... hints) {
        Set<Hint> set = EnumSet.noneOf(Hint.class);
        set.addAll(List.of(hints));
        return new Quantity(amount, measure, Optional.empty(), start, next, false, List.of(), set);
    }

    Quantity withNext(int later) {
        return new Quantity(amount, measure, size, start, later, each, others, hints);
    }

    Quantity forEach(int later) {
        return new Quantity(amount, measure, size, start, later, true, others, hints);
    }

    Quantity withMeasure(String word, Optional<Size> newSize, int later) {
        Optional<Size> merged = newSize.or(() -> size);
        return new Quantity(amount, word, merged, start, later, each, others, hints);
    }

    boolean isArticle() {
        return hints.contains(Hint.ARTICLE);
    }

    boolean hasMeasure() {
        return !measure.isEmpty();
    }
}
