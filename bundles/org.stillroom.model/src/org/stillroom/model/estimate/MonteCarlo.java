package org.stillroom.model.estimate;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Propagates distributions by drawing the unknowns many times (JCGM 101:2008, clause 7).
 *
 * <p>The seed is taken from the estimate's own unknowns, so that the same library gives the same
 * figures on any machine and any number of threads.
 */
public final class MonteCarlo {

    private static final int DEFAULT_DRAWS = 20_000;

    private final int draws;

    /** Makes a propagation with this many draws, at least 1,000. */
    public MonteCarlo(int draws) {
        if (draws < 1000) {
            throw new IllegalArgumentException("At least 1,000 draws are needed, not " + draws);
        }
        this.draws = draws;
    }

    /** Returns a propagation with 20,000 draws. */
    public static MonteCarlo usual() {
        return new MonteCarlo(DEFAULT_DRAWS);
    }

    /** Returns the distribution of an estimate. */
    public Distribution propagate(Estimate estimate) {
        List<Origin> origins = List.copyOf(estimate.origins());
        Map<String, double[]> columns = new HashMap<>();
        origins.forEach(o -> columns.put(o.name(), draw(o)));
        double[] values = estimate.values(o -> columns.get(o.name()), draws);
        return summary(estimate, origins, values);
    }

    /** Returns the draws of one unknown, the same for the same unknown wherever it is used. */
    public double[] draw(Origin origin) {
        SplittableRandom random = new SplittableRandom(seed(origin));
        double[] column = new double[draws];
        for (int n = 0; n < draws; n++) {
            column[n] = Sampler.sample(origin, random);
        }
        return column;
    }

    private static long seed(Origin origin) {
        long seed = 1125899906842597L;
        for (int i = 0; i < origin.name().length(); i++) {
            seed = 31 * seed + origin.name().charAt(i);
        }
        seed = 31 * seed + Double.doubleToLongBits(origin.low());
        seed = 31 * seed + Double.doubleToLongBits(origin.likely());
        return 31 * seed + Double.doubleToLongBits(origin.high());
    }

    private Distribution summary(Estimate estimate, List<Origin> origins, double[] values) {
        double mean = Arrays.stream(values).sum() / draws;
        double square = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum();
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double total = 0;
        double most = 0;
        Optional<Origin> dominant = Optional.empty();
        for (Origin origin : origins) {
            double variance = variance(estimate, origin);
            total += variance;
            if (variance > most) {
                most = variance;
                dominant = Optional.of(origin);
            }
        }
        return new Distribution(
                mean,
                Math.sqrt(square / (draws - 1)),
                quantile(sorted, 0.025),
                quantile(sorted, 0.5),
                quantile(sorted, 0.975),
                dominant,
                total > 0 ? most / total : 0);
    }

    /** Returns the variance by one unknown alone, to first order (JCGM 100:2008, 5.1). */
    private static double variance(Estimate estimate, Origin origin) {
        double u = origin.uncertainty();
        double up = estimate.valueAt(o -> o.equals(origin) ? origin.mean() + u : o.mean());
        double down = estimate.valueAt(o -> o.equals(origin) ? origin.mean() - u : o.mean());
        return (up - down) * (up - down) / 4;
    }

    private static double quantile(double[] sorted, double p) {
        double at = p * (sorted.length - 1);
        int below = (int) at;
        double rest = at - below;
        return below + 1 < sorted.length
                ? sorted[below] * (1 - rest) + sorted[below + 1] * rest
                : sorted[below];
    }
}
