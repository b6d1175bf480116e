package org.stillroom.drift.trend;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Tests whether values rise or fall with time, by signs alone (Mann, Econometrica 13, 1945; Kendall,
 * Rank Correlation Methods, 1948).
 *
 * @param s how many pairs rise less how many fall
 * @param p two-sided probability of an S at least as far from 0, where the values stand in any order
 * @param method how the probability was found
 */
public record MannKendall(int s, double p, Method method) {

    /** How a probability was found. */
    public enum Method {
        /** All orders counted. */
        EXACT,
        /** Many orders drawn, from a fixed seed. */
        DRAWN,
        /** The normal approximation with corrections for ties and continuity. */
        NORMAL
    }

    static final int EXACT_LIMIT = 60;
    private static final int ENUMERATION_LIMIT = 8;
    private static final int DRAWS = 100_000;
    private static final long SEED = 18_840_511L;

    /**
     * Tests values against their times.
     *
     * <p>Where no two times are equal the distribution of S is exact up to 60 values: equal values
     * are counted by Gaussian multinomial coefficients. Where times are equal too, up to 8 values
     * are put in every order, and more of them in 100,000 drawn orders.
     *
     * @throws IllegalArgumentException where there are fewer than two values or the numbers differ
     */
    public static MannKendall test(double[] times, double[] values) {
        if (times.length != values.length || times.length < 2) {
            throw new IllegalArgumentException(
                    "Two or more values, each with a time, are needed, not "
                            + values.length
                            + " with "
                            + times.length);
        }
        int s = statistic(times, values);
        boolean timesDiffer = Arrays.stream(times).distinct().count() == times.length;
        int n = times.length;
        if (timesDiffer && n <= EXACT_LIMIT) {
            return new MannKendall(s, exact(values, s), Method.EXACT);
        }
        if (n <= ENUMERATION_LIMIT) {
            return new MannKendall(s, enumerated(times, values, s), Method.EXACT);
        }
        return n <= EXACT_LIMIT
                ? new MannKendall(s, drawn(times, values, s), Method.DRAWN)
                : new MannKendall(s, normal(times, values, s), Method.NORMAL);
    }

    /** Returns S: the number of pairs that rise with time less the number that fall. */
    public static int statistic(double[] times, double[] values) {
        int s = 0;
        for (int i = 0; i < times.length; i++) {
            for (int j = i + 1; j < times.length; j++) {
                s += (int) (Math.signum(times[j] - times[i]) * Math.signum(values[j] - values[i]));
            }
        }
        return s;
    }

    /**
     * Returns the probability of each number of falling pairs, from 0, for values of which these
     * many are equal to one another.
     *
     * <p>The generating function is the Gaussian multinomial coefficient (MacMahon 1913).
     */
    static double[] fallingPairs(int... groups) {
        BigInteger[] orders = {BigInteger.ONE};
        int placed = 0;
        for (int group : groups) {
            for (int i = 1; i <= group; i++) {
                orders = over(times(orders, placed + i), i);
            }
            placed += group;
        }
        BigDecimal all =
                new BigDecimal(Arrays.stream(orders).reduce(BigInteger::add).orElseThrow());
        return Arrays.stream(orders)
                .mapToDouble(
                        o -> new BigDecimal(o).divide(all, MathContext.DECIMAL64).doubleValue())
                .toArray();
    }

    /** Returns a polynomial times 1 + q + … + q^(terms − 1). */
    private static BigInteger[] times(BigInteger[] a, int terms) {
        BigInteger[] product = new BigInteger[a.length + terms - 1];
        BigInteger window = BigInteger.ZERO;
        for (int k = 0; k < product.length; k++) {
            window = k < a.length ? window.add(a[k]) : window;
            window = k >= terms ? window.subtract(a[k - terms]) : window;
            product[k] = window;
        }
        return product;
    }

    /** Returns a polynomial divided by (1 − q^terms)/(1 − q), which must divide it. */
    private static BigInteger[] over(BigInteger[] a, int terms) {
        BigInteger[] quotient = new BigInteger[a.length - terms + 1];
        for (int k = 0; k < quotient.length; k++) {
            BigInteger value = k == 0 ? a[0] : a[k].subtract(a[k - 1]);
            quotient[k] = k >= terms ? value.add(quotient[k - terms]) : value;
        }
        return quotient;
    }

    private static double exact(double[] values, int s) {
        int[] groups = groups(values);
        double[] chances = fallingPairs(groups);
        int pairs = chances.length - 1;
        double p = 0;
        for (int falling = 0; falling <= pairs; falling++) {
            if (Math.abs(pairs - 2 * falling) >= Math.abs(s)) {
                p += chances[falling];
            }
        }
        return Math.min(1, p);
    }

    private static int[] groups(double[] values) {
        Map<Double, Integer> counts = new TreeMap<>();
        Arrays.stream(values).forEach(v -> counts.merge(v, 1, Integer::sum));
        return counts.values().stream().mapToInt(Integer::intValue).toArray();
    }

    private static double enumerated(double[] times, double[] values, int s) {
        long[] counts = new long[2];
        permute(times, values.clone(), 0, Math.abs(s), counts);
        return (double) counts[0] / counts[1];
    }

    private static void permute(double[] times, double[] values, int at, int s, long[] counts) {
        if (at == values.length) {
            counts[1]++;
            counts[0] += Math.abs(statistic(times, values)) >= s ? 1 : 0;
            return;
        }
        for (int i = at; i < values.length; i++) {
            swap(values, at, i);
            permute(times, values, at + 1, s, counts);
            swap(values, at, i);
        }
    }

    private static void swap(double[] values, int i, int j) {
        double held = values[i];
        values[i] = values[j];
        values[j] = held;
    }

    /** Returns (1 + orders as extreme)/(1 + orders drawn), which is never too small. */
    private static double drawn(double[] times, double[] values, int s) {
        SplittableRandom random = new SplittableRandom(SEED);
        double[] shuffled = values.clone();
        int extreme = 0;
        for (int d = 0; d < DRAWS; d++) {
            for (int i = shuffled.length - 1; i > 0; i--) {
                swap(shuffled, i, random.nextInt(i + 1));
            }
            extreme += Math.abs(statistic(times, shuffled)) >= Math.abs(s) ? 1 : 0;
        }
        return (1.0 + extreme) / (1.0 + DRAWS);
    }

    /** Variance with ties in both: Kendall, Rank Correlation Methods, chapter 4. */
    private static double normal(double[] times, double[] values, int s) {
        double n = times.length;
        double[] t = sums(groups(values));
        double[] u = sums(groups(times));
        double variance =
                (n * (n - 1) * (2 * n + 5) - t[2] - u[2]) / 18
                        + t[1] * u[1] / (9 * n * (n - 1) * (n - 2))
                        + t[0] * u[0] / (2 * n * (n - 1));
        if (variance <= 0) {
            return 1;
        }
        double z = Math.max(0, Math.abs(s) - 1) / Math.sqrt(variance);
        return Math.min(1, 2 * new NormalDistribution().cumulativeProbability(-z));
    }

    /** Returns Σ t(t−1), Σ t(t−1)(t−2) and Σ t(t−1)(2t+5). */
    private static double[] sums(int[] groups) {
        double[] sums = new double[3];
        for (double t : groups) {
            sums[0] += t * (t - 1);
            sums[1] += t * (t - 1) * (t - 2);
            sums[2] += t * (t - 1) * (2 * t + 5);
        }
        return sums;
    }
}
