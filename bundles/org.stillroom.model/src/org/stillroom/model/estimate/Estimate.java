package org.stillroom.model.estimate;

import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.stillroom.model.number.Rational;

/**
 * An amount that is known within limits, as a formula over named unknowns.
 *
 * <p>Because the formula is kept, two lines that share an unknown wineglass have an exact ratio
 * though neither volume is known. Its limits are those of the {@link Envelope}: no draw of the
 * unknowns lies outside, and they are exact for sums, multiples, products of different unknowns, and
 * quotients of these.
 */
public final class Estimate {

    private final Formula formula;
    private final double likely;

    /** Found when first asked for; the same for every thread that finds it. */
    private volatile Limits limits;

    /** The unknowns with the least and the greatest value that they allow. */
    private record Limits(SortedMap<String, Origin> origins, double low, double high) {}

    private Estimate(Formula formula) {
        this.formula = formula;
        this.likely = formula.value(Origin::likely);
    }

    private Limits limits() {
        Limits known = limits;
        if (known == null) {
            SortedMap<String, Origin> origins = new TreeMap<>();
            formula.collect(origins);
            double[] ends = new Envelope(formula, List.copyOf(origins.values())).ends();
            known = new Limits(origins, Math.min(ends[0], likely), Math.max(ends[1], likely));
            limits = known;
        }
        return known;
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
        return limits().low();
    }

    /** Returns the value where every unknown has its likely value. */
    public double likely() {
        return likely;
    }

    /** Returns the greatest reasonable value. */
    public double high() {
        return limits().high();
    }

    /** Tells whether nothing about it is unknown. */
    public boolean isExact() {
        return limits().origins().isEmpty() || low() == high();
    }

    /** Returns the unknowns, by name. */
    public SortedSet<Origin> origins() {
        return new TreeSet<>(limits().origins().values());
    }

    /** Returns the value where each unknown has the value that the function gives it. */
    public double valueAt(ToDoubleFunction<Origin> draw) {
        return formula.value(draw);
    }

    /** Returns the values of many draws, given the draws of each unknown. */
    double[] values(Function<Origin, double[]> draws, int count) {
        return formula.values(draws, count);
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
        return isExact() ? Double.toString(likely) : likely + " (" + low() + "–" + high() + ")";
    }
}
