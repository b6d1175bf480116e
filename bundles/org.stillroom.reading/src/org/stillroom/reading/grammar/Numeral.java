package org.stillroom.reading.grammar;

import java.util.List;
import java.util.Optional;
import org.stillroom.model.number.Rational;

/**
 * A number that was read.
 *
 * @param low the number, or the lower end of a range
 * @param high the upper end of a range
 * @param next the token after it
 * @param article whether only an article stands for “one”
 * @param fraction whether it is less than one or was printed as a fraction
 * @param others other readings of the same signs, likeliest first
 * @param doubt why there are others, or empty
 */
record Numeral(
        Rational low,
        Optional<Rational> high,
        int next,
        boolean article,
        boolean fraction,
        List<Rational> others,
        String doubt) {

    static Numeral of(Rational value, int next) {
        boolean fraction = !value.isWhole();
        return new Numeral(value, Optional.empty(), next, false, fraction, List.of(), "");
    }

    static Numeral article(int next) {
        return new Numeral(Rational.ONE, Optional.empty(), next, true, false, List.of(), "");
    }

    Numeral withNext(int later) {
        return new Numeral(low, high, later, article, fraction, others, doubt);
    }

    Numeral to(Numeral upper) {
        boolean either = fraction || upper.fraction;
        if (upper.low.compareTo(low) <= 0) {
            return withNext(upper.next);
        }
        return new Numeral(low, Optional.of(upper.low), upper.next, false, either, others, doubt);
    }

    Numeral times(Rational factor, int later) {
        boolean part = fraction || !factor.isWhole();
        return new Numeral(
                low.times(factor), high.map(factor::times), later, false, part, others, doubt);
    }

    Numeral plus(Rational more, int later) {
        return new Numeral(
                low.plus(more), high.map(more::plus), later, false, fraction, others, doubt);
    }

    Numeral or(Rational other, String why) {
        return new Numeral(low, high, next, article, fraction, List.of(other), why);
    }
}
