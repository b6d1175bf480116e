package org.stillroom.reading.spec;

import java.util.List;
import java.util.Optional;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.ReadingLine;

/**
 * What share of the whole the lines of a recipe have that are given in shares, per cents or parts.
 *
 * <p>“Two parts of rum, one of lime” is two thirds and one third: parts are shares of their sum.
 */
final class Shares {

    private static final Rational HUNDRED = Rational.of(100);
    private static final Rational TWO = Rational.of(2);

    private final Optional<Rational> parts;

    private Shares(Optional<Rational> parts) {
        this.parts = parts;
    }

    /** Looks through the lines of one recipe; one part alone is a share of nothing known. */
    static Shares of(List<ReadingLine> lines) {
        List<Rational> numbers =
                lines.stream().filter(Shares::isInParts).flatMap(l -> number(l).stream()).toList();
        boolean otherwise =
                lines.stream()
                        .anyMatch(l -> l.amount().kind() == Amount.Kind.SHARE || isPerCent(l));
        return new Shares(
                numbers.size() < 2 || otherwise
                        ? Optional.empty()
                        : numbers.stream().reduce(Rational::plus));
    }

    /** Returns the share of a line, if its words give one. */
    Optional<Rational> of(ReadingLine line) {
        if (line.amount().kind() == Amount.Kind.SHARE) {
            return line.amount().quantity();
        }
        if (isPerCent(line)) {
            return number(line).map(n -> n.dividedBy(HUNDRED));
        }
        return isInParts(line)
                ? parts.flatMap(all -> number(line).map(n -> n.dividedBy(all)))
                : Optional.empty();
    }

    private static boolean isPerCent(ReadingLine line) {
        return line.measure().equals("per cent");
    }

    private static boolean isInParts(ReadingLine line) {
        boolean poured = line.kind() == LineKind.MEASURED || line.kind() == LineKind.TOP;
        return poured
                && line.measure().equals("part")
                && number(line).filter(n -> n.signum() > 0).isPresent();
    }

    /** Returns the number of a line, the middle of a range. */
    private static Optional<Rational> number(ReadingLine line) {
        Amount amount = line.amount();
        return amount.quantity()
                .map(
                        low ->
                                amount.quantityMax()
                                        .map(high -> low.plus(high).dividedBy(TWO))
                                        .orElse(low));
    }
}
