package org.stillroom.drift.trend;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The median of the slopes between all pairs, with limits (Theil 1950; Sen, Journal of the American
 * Statistical Association 63, 1968).
 *
 * @param slope median slope, in units of value a unit of time
 * @param low lower limit
 * @param high upper limit
 * @param coverage how often such limits hold the true slope, 0 to 1; at least 0.95 where there are
 *     values enough, less below five
 */
public record TheilSen(double slope, double low, double high, double coverage) {

    private static final double TAIL = 0.025;

    /**
     * Fits values to their times.
     *
     * <p>The limits are slopes at ranks that the exact distribution of Kendall's S gives (Hollander
     * and Wolfe, Nonparametric Statistical Methods, 9.3).
     *
     * @throws IllegalArgumentException where fewer than two times differ
     */
    public static TheilSen fit(double[] times, double[] values) {
        List<Double> slopes = new ArrayList<>();
        for (int i = 0; i < times.length; i++) {
            for (int j = i + 1; j < times.length; j++) {
                if (times[i] != times[j]) {
                    slopes.add((values[j] - values[i]) / (times[j] - times[i]));
                }
            }
        }
        if (slopes.isEmpty()) {
            throw new IllegalArgumentException("A slope needs two times that differ");
        }
        double[] sorted = slopes.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        int n = times.length;
        Tail tail = n <= MannKendall.EXACT_LIMIT ? exactTail(n) : normalTail(n);
        int rank = Math.min(tail.skip, (sorted.length - 1) / 2);
        return new TheilSen(
                median(sorted), sorted[rank], sorted[sorted.length - 1 - rank], tail.coverage);
    }

    /** How many slopes lie outside either limit, and how often the limits hold the true one. */
    private record Tail(int skip, double coverage) {}

    private static Tail exactTail(int n) {
        int[] ones = new int[n];
        Arrays.fill(ones, 1);
        double[] chances = MannKendall.fallingPairs(ones);
        int skip = 0;
        double below = chances[0];
        while (skip + 1 < chances.length && below + chances[skip + 1] <= TAIL) {
            skip++;
            below += chances[skip];
        }
        return new Tail(skip, 1 - 2 * below);
    }

    private static Tail normalTail(int n) {
        double pairs = n * (n - 1) / 2.0;
        double deviation = Math.sqrt(n * (n - 1.0) * (2 * n + 5) / 18);
        double width = -new NormalDistribution().inverseCumulativeProbability(TAIL) * deviation;
        return new Tail((int) Math.max(0, Math.floor((pairs - width) / 2)), 1 - 2 * TAIL);
    }

    private static double median(double[] sorted) {
        int n = sorted.length;
        return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
    }
}
