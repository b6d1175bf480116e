package org.stillroom.measures.book;

import org.stillroom.model.number.Rational;

/**
 * How many times one measure is another, exactly or within limits.
 *
 * @param low the least, more than 0
 * @param high the most
 */
public record Ratio(Rational low, Rational high) {

    /** A measure by itself. */
    static final Ratio SAME = new Ratio(Rational.ONE, Rational.ONE);

    /** Returns the ratio of the measures of a statement: how many of the other make one. */
    static Ratio of(Equation e) {
        return new Ratio(
                e.other().low().dividedBy(e.one().high()),
                e.other().high().dividedBy(e.one().low()));
    }

    Ratio times(Ratio more) {
        return new Ratio(low.times(more.low), high.times(more.high));
    }

    Ratio inverse() {
        return new Ratio(Rational.ONE.dividedBy(high), Rational.ONE.dividedBy(low));
    }

    /** Tells whether both can be right at once. */
    boolean agrees(Ratio that) {
        return low.compareTo(that.high) <= 0 && that.low.compareTo(high) <= 0;
    }

    /** Tells whether there are no limits but one value. */
    public boolean isExact() {
        return low.equals(high);
    }

    /** Returns the middle. */
    public Rational middle() {
        return low.plus(high).dividedBy(Rational.of(2));
    }

    @Override
    public String toString() {
        return isExact() ? low.toString() : low + " to " + high;
    }
}
