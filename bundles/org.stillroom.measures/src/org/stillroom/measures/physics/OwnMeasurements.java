package org.stillroom.measures.physics;

import java.util.Arrays;
import java.util.List;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.estimate.Origin;

/**
 * Measurements of the user's own, such as the juice of their half lemons, with what was known
 * before.
 *
 * <p>Normal model with unknown mean and variance, conjugate prior (normal–inverse-gamma; Gelman et
 * al., Bayesian Data Analysis, section 3.3): the prior mean counts as {@value #PRIOR} measurements
 * and the prior spread as {@value #PRIOR} more degrees of freedom.
 *
 * @param what what was measured (“half a lemon”)
 * @param values the amounts in millilitres or grams, at least one, each more than 0
 * @param dates when, in words, for the reader
 */
public record OwnMeasurements(String what, List<Double> values, String dates) {

    /** How many measurements the published figure stands for; common practice, no source. */
    public static final double PRIOR = 2;

    private static final double TWO_SIGMA = 2;

    /** Keeps the values unchangeable and refuses those that no measurement gives. */
    public OwnMeasurements {
        values = List.copyOf(values);
        if (values.isEmpty() || values.stream().anyMatch(v -> !(v > 0) || v.isInfinite())) {
            throw new IllegalArgumentException(
                    "Measurements of " + what + " must be one or more amounts above 0");
        }
    }

    /**
     * What is believed after the measurements.
     *
     * @param mean the mean
     * @param deviation standard deviation of one such thing
     * @param count how many were measured
     */
    public record Posterior(double mean, double deviation, int count) {}

    /** Returns what is believed after the measurements, from an estimate before them. */
    public Posterior update(Estimate before) {
        double priorMean = before.likely();
        double priorDeviation = (before.high() - before.low()) / (2 * TWO_SIGMA);
        double[] x = values.stream().mapToDouble(Double::doubleValue).toArray();
        int n = x.length;
        double average = Arrays.stream(x).sum() / n;
        double squares = Arrays.stream(x).map(v -> (v - average) * (v - average)).sum();
        double mean = (PRIOR * priorMean + n * average) / (PRIOR + n);
        double gap = average - priorMean;
        double sum =
                PRIOR * priorDeviation * priorDeviation
                        + squares
                        + PRIOR * n / (PRIOR + n) * gap * gap;
        return new Posterior(mean, Math.sqrt(sum / (PRIOR + n)), n);
    }

    /** Returns the amount of the next such thing: mean and two standard deviations around it. */
    public Estimate estimate(Estimate before) {
        Posterior after = update(before);
        double reach = TWO_SIGMA * after.deviation();
        return Estimate.of(
                Origin.pert(
                        what + ", own measurements",
                        Math.max(0, after.mean() - reach),
                        after.mean(),
                        after.mean() + reach));
    }

    /** Returns a sentence for the explanation. */
    public String toText() {
        return values.size() + " own measurements of " + what + ", " + dates;
    }
}
