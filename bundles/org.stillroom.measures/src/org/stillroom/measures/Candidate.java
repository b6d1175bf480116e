package org.stillroom.measures;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.stillroom.measures.knowledge.Authority;

/**
 * A statement that takes part in finding an amount.
 *
 * @param authority the statement, with an amount
 * @param weight how much it counts, 0 or more
 * @param why why so much
 */
record Candidate(Authority authority, double weight, String why) {

    private static final double NEAR = 0.05;

    double low() {
        return authority.content().orElseThrow().low().toDouble();
    }

    double likely() {
        return authority.content().orElseThrow().likely().toDouble();
    }

    double high() {
        return authority.content().orElseThrow().high().toDouble();
    }

    Candidate times(double factor) {
        return new Candidate(authority, weight * factor, why);
    }

    /**
     * Returns the value that most of the weight near the middle of the weight stands for: of the
     * values within five per cent of the weighted median, the one stated with most weight.
     */
    static double likeliest(List<Candidate> candidates) {
        double median = quantile(candidates, Candidate::likely, 0.5);
        SortedMap<Double, Double> weights = new TreeMap<>();
        candidates.stream()
                .filter(c -> c.weight() > 0 && Math.abs(c.likely() / median - 1) <= NEAR)
                .forEach(c -> weights.merge(c.likely(), c.weight(), Double::sum));
        return weights.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(median);
    }

    /**
     * Returns the value below which this part of the weight lies; always a value that somebody
     * stated, never one between two.
     */
    static double quantile(
            List<Candidate> candidates, ToDoubleFunction<Candidate> value, double part) {
        List<Candidate> sorted =
                candidates.stream()
                        .filter(c -> c.weight() > 0)
                        .sorted(Comparator.comparingDouble(value))
                        .toList();
        double total = sorted.stream().mapToDouble(Candidate::weight).sum();
        double sum = 0;
        for (Candidate candidate : sorted) {
            sum += candidate.weight();
            if (sum >= part * total * (1 - 1e-12)) {
                return value.applyAsDouble(candidate);
            }
        }
        return value.applyAsDouble(sorted.getLast());
    }
}
