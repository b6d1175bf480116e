package org.stillroom.reading.grammar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.Doubt;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.text.Span;

/**
 * Checks that shares add up to the whole, and proposes which figure was misprinted.
 *
 * <p>A proposal changes one share to the value that makes the sum one; bar fractions come before odd
 * ones. Sums within one sixty-fourth of the whole pass.
 */
final class ShareCheck {

    static final String REASON = "The shares add up to ";
    private static final Rational TOLERANCE = Rational.of(1, 64);
    private static final List<Integer> USUAL = List.of(2, 3, 4, 6, 8, 5, 10, 12, 16);

    private ShareCheck() {}

    static Optional<Doubt> check(List<ReadingLine> lines) {
        List<ReadingLine> shares = lines.stream().filter(ShareCheck::isShare).toList();
        if (shares.size() < 2) {
            return Optional.empty();
        }
        Rational sum =
                shares.stream()
                        .map(l -> l.amount().quantity().orElseThrow())
                        .reduce(Rational.ZERO, Rational::plus);
        Rational gap = Rational.ONE.minus(sum);
        Rational size = gap.signum() < 0 ? gap.negate() : gap;
        if (size.compareTo(TOLERANCE) <= 0) {
            return Optional.empty();
        }
        Span hull = shares.stream().map(ReadingLine::span).reduce(Span::hull).orElseThrow();
        String reason = REASON + sum + ", not to 1" + proposals(shares, gap);
        return Optional.of(new Doubt(reason + ".", hull, 0.9));
    }

    private static boolean isShare(ReadingLine line) {
        return line.kind() != LineKind.ALTERNATIVE
                && line.amount().kind() == Amount.Kind.SHARE
                && line.amount().quantity().filter(q -> q.compareTo(Rational.ONE) < 0).isPresent();
    }

    private static String proposals(List<ReadingLine> shares, Rational gap) {
        record Repair(String words, int rank) {}
        List<Repair> repairs = new ArrayList<>();
        for (ReadingLine line : shares) {
            Rational mended = line.amount().quantity().orElseThrow().plus(gap);
            int rank = USUAL.indexOf(mended.denominator().intValueExact());
            if (mended.signum() > 0 && rank >= 0) {
                repairs.add(new Repair(mended + " " + line.ingredientName(), rank));
            }
        }
        repairs.sort(Comparator.comparingInt(Repair::rank));
        if (repairs.isEmpty()) {
            return gap.signum() > 0 ? "; a line of " + gap + " may be missing" : "";
        }
        List<String> first = repairs.stream().map(Repair::words).limit(3).toList();
        return "; it would with " + String.join(", or with ", first);
    }
}
