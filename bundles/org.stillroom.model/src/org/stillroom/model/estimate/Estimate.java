package org.stillroom.model.estimate;

import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.stillroom.model.number.Rational;

/**
 * An amount that is known within limits, as a formula over named unknowns.
 *
 * <p>Because the formula is kept, two lines that share an unknown wineglass have an exact ratio
 * though neither volume is known. Limits are found at the corners of the box of the unknowns, which
 * is exact for any formula that is linear-fractional in each unknown (sums, multiples, products of
 * different unknowns, and quotients of these); with more than {@value #CORNERS} unknowns plain
 * interval arithmetic is used, which is never too narrow.
 */
public final class Estimate {

    /** The most unknowns whose corners are tried one by one. */
    private static final int CORNERS = 12;

    private final Formula formula;
    private final SortedMap<String, Origin> origins;
    private final double low;
    private final double likely;
    private final double high;

    private Estimate(Formula formula) {
        this.formula = formula;
        this.origins = new TreeMap<>();
        formula.collect(origins);
        this.likely = formula.value(Origin::likely);
        double[] limits = origins.size() <= CORNERS ? corners() : formula.interval();
        this.low = Math.min(limits[0], likely);
        this.high = Math.max(limits[1], likely);
    }

    /** Returns an amount that is known exactly. */
    public static Estimate exact(Rational value) {
        return new Estimate(new Formula.Constant(value.toDouble()));
    }

    /** Returns an amount that is known exactly. */
    public static Estimate exact(double value) {
        return new Estimate(new Formula.Constant(value));
    }

    /** Returns the amount of one unknown. */
    public static Estimate of(Origin origin) {
        return new Estimate(new Formula.Unknown(origin));
    }

    /** Returns the sum. */
    public Estimate plus(Estimate other) {
        return new Estimate(new Formula.Sum(formula, other.formula));
    }

    /** Returns the difference. */
    public Estimate minus(Estimate other) {
        return plus(other.times(-1));
    }

    /** Returns the product. */
    public Estimate times(Estimate other) {
        return new Estimate(new Formula.Product(formula, other.formula));
    }

    /** Returns a multiple. */
    public Estimate times(Rational factor) {
        return times(factor.toDouble());
    }

    /** Returns a multiple. */
    public Estimate times(double factor) {
        return new Estimate(new Formula.Product(new Formula.Constant(factor), formula));
    }

    /** Returns the quotient; the other must not be able to be 0. */
    public Estimate dividedBy(Estimate other) {
        return new Estimate(new Formula.Quotient(formula, other.formula));
    }

    /** Returns the least reasonable value. */
    public double low() {
        return low;
    }

    /** Returns the value where every unknown has its likely value. */
    public double likely() {
        return likely;
    }

    /** Returns the greatest reasonable value. */
    public double high() {
        return high;
    }

    /** Tells whether nothing about it is unknown. */
    public boolean isExact() {
        return origins.isEmpty() || low == high;
    }

    /** Returns the unknowns, by name. */
    public SortedSet<Origin> origins() {
        return new TreeSet<>(origins.values());
    }

    /** Returns the value where each unknown has the value that the function gives it. */
    public double valueAt(ToDoubleFunction<Origin> draw) {
        return formula.value(draw);
    }

    private double[] corners() {
        Origin[] all = origins.values().toArray(Origin[]::new);
        double[] limits = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int corner = 0; corner < 1 << all.length; corner++) {
            int bits = corner;
            double value =
                    formula.value(
                            origin -> {
                                int i = indexOf(all, origin);
                                return (bits >> i & 1) == 0 ? origin.low() : origin.high();
                            });
            limits[0] = Math.min(limits[0], value);
            limits[1] = Math.max(limits[1], value);
        }
        return limits;
    }

    private static int indexOf(Origin[] all, Origin origin) {
        int i = 0;
        while (!all[i].name().equals(origin.name())) {
            i++;
        }
        return i;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Estimate that && formula.equals(that.formula);
    }

    @Override
    public int hashCode() {
        return formula.hashCode();
    }

    @Override
    public String toString() {
        return isExact() ? Double.toString(likely) : likely + " (" + low + "–" + high + ")";
    }
}
