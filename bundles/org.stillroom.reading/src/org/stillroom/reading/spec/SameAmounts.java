package org.stillroom.reading.spec;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.ReadingLine;

/**
 * Works out amounts that point at another amount: “half that quantity of brandy”, “as much water”.
 *
 * <p>They point at the line before them, or, where that has no number, at the nearest one that has.
 * The words of a line stay as they are; only amount and measure are filled in.
 */
public final class SameAmounts {

    /** The measure of a line whose amount is told by another line. */
    public static final String SAME = "same";

    private SameAmounts() {}

    /** Returns the lines, each amount that points at another one worked out where that is there. */
    public static List<ReadingLine> workedOut(List<ReadingLine> lines) {
        List<ReadingLine> done = new ArrayList<>(lines.size());
        Optional<ReadingLine> last = Optional.empty();
        for (ReadingLine line : lines) {
            ReadingLine clear = line.measure().equals(SAME) ? clear(line, last) : line;
            done.add(clear);
            boolean counts = clear.kind() == LineKind.MEASURED && isMeasured(clear);
            last = counts ? Optional.of(clear) : last;
        }
        return List.copyOf(done);
    }

    private static boolean isMeasured(ReadingLine line) {
        return line.amount().quantity().isPresent() && !line.measure().equals(SAME);
    }

    private static ReadingLine clear(ReadingLine line, Optional<ReadingLine> last) {
        Optional<Rational> factor = line.amount().quantity();
        return last.isEmpty() || factor.isEmpty() ? line : times(line, last.get(), factor.get());
    }

    private static ReadingLine times(ReadingLine line, ReadingLine other, Rational factor) {
        Amount amount =
                new Amount(
                        other.amount().kind(),
                        other.amount().quantity().map(factor::times),
                        other.amount().quantityMax().map(factor::times));
        return new ReadingLine(
                line.text(),
                line.span(),
                line.kind(),
                amount,
                other.measure(),
                other.size(),
                line.ingredient(),
                line.amountSpan(),
                line.confidence(),
                line.alternatives());
    }
}
