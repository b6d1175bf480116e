package org.stillroom.drift.trend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.stat.correlation.KendallsCorrelation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class MannKendallTests {

    private static double[] years(int n) {
        return IntStream.range(0, n).mapToDouble(i -> 1800 + 7 * i).toArray();
    }

    /** The least two-sided probability is 2/n! (arithmetic; M. G. Kendall, 1948). */
    @ParameterizedTest
    @CsvSource({"3, 0.3333", "4, 0.0833", "5, 0.0167", "6, 0.0028", "7, 0.0004"})
    void perfectOrderHasTheLeastProbability(int n, double p) {
        MannKendall test = MannKendall.test(years(n), years(n));
        assertEquals(p, test.p(), 0.00005);
        assertEquals(n * (n - 1) / 2, test.s());
        assertEquals(MannKendall.Method.EXACT, test.method());
    }

    /** Hipparchus' tau-b is S over the root of the untied pairs of both, computed independently. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void theStatisticAgreesWithAReferenceLibrary(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 50; round++) {
            int n = 3 + random.nextInt(20);
            double[] x = random.ints(n, 0, 10).asDoubleStream().toArray();
            double[] y = random.ints(n, 0, 10).asDoubleStream().toArray();
            double untied = Math.sqrt((double) untied(x) * untied(y));
            if (untied > 0) {
                double tau = new KendallsCorrelation().correlation(x, y);
                assertEquals(tau * untied, MannKendall.statistic(x, y), 1e-6, "seed " + seed);
            }
        }
    }

    private static int untied(double[] values) {
        int untied = 0;
        for (int i = 0; i < values.length; i++) {
            for (int j = i + 1; j < values.length; j++) {
                untied += values[i] != values[j] ? 1 : 0;
            }
        }
        return untied;
    }

    /** The generating function against putting the values in every order, ties included. */
    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24})
    void countingByPolynomialsAgreesWithEveryOrder(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int n = 3; n <= 7; n++) {
            double[] values = random.ints(n, 0, 4).asDoubleStream().toArray();
            int s = MannKendall.statistic(years(n), values);
            int[] counts = new int[2];
            orders(years(n), values.clone(), 0, s, counts);
            assertEquals(
                    (double) counts[0] / counts[1],
                    MannKendall.test(years(n), values).p(),
                    1e-12,
                    "seed " + seed + ", " + Arrays.toString(values));
        }
    }

    private static void orders(double[] t, double[] v, int at, int s, int[] counts) {
        if (at == v.length) {
            counts[1]++;
            counts[0] += Math.abs(MannKendall.statistic(t, v)) >= Math.abs(s) ? 1 : 0;
            return;
        }
        for (int i = at; i < v.length; i++) {
            double held = v[at];
            v[at] = v[i];
            v[i] = held;
            orders(t, v, at + 1, s, counts);
            v[i] = v[at];
            v[at] = held;
        }
    }

    /** Chance alone is called a trend no oftener than one time in twenty, to sampling error. */
    @ParameterizedTest
    @ValueSource(ints = {5, 6, 7, 8, 9, 10, 11, 12})
    void chanceIsSeldomCalledATrend(int n) {
        SplittableRandom random = new SplittableRandom(1_000L + n);
        int rounds = 10_000;
        int called = 0;
        for (int round = 0; round < rounds; round++) {
            double[] values = random.doubles(n).toArray();
            called += MannKendall.test(years(n), values).p() < 0.05 ? 1 : 0;
        }
        double rate = (double) called / rounds;
        assertTrue(rate <= 0.057, n + " values, seed " + (1_000L + n) + ": " + rate);
        assertTrue(rate >= 0.010, n + " values, seed " + (1_000L + n) + ": " + rate);
    }

    /** Copies counted as if they were witnesses call chance a trend far too often. */
    @Test
    void copiesMustBeCollapsedFirst() {
        SplittableRandom random = new SplittableRandom(60);
        int rounds = 4_000;
        int naive = 0;
        int collapsed = 0;
        for (int round = 0; round < rounds; round++) {
            double[] roots = random.doubles(6).toArray();
            double[] all = new double[15];
            double[] when = years(15);
            for (int i = 0; i < 15; i++) {
                all[i] = roots[i * 6 / 15];
            }
            naive += MannKendall.test(when, all).p() < 0.05 ? 1 : 0;
            collapsed += MannKendall.test(years(6), roots).p() < 0.05 ? 1 : 0;
        }
        assertTrue((double) collapsed / rounds <= 0.06, "collapsed " + collapsed);
        assertTrue((double) naive / rounds > 0.15, "naive " + naive);
    }

    @Test
    void equalTimesAreHandledAndTheNormalFormAgreesWithTheExactOne() {
        double[] t = {1, 1, 2, 2, 3, 3};
        double[] v = {1, 1, 2, 2, 3, 3};
        MannKendall tied = MannKendall.test(t, v);
        assertEquals(MannKendall.Method.EXACT, tied.method());
        assertEquals(12, tied.s());
        // 90 arrangements of three pairs, of which two are in perfect order.
        assertEquals(2.0 / 90, tied.p(), 1e-12);
        SplittableRandom random = new SplittableRandom(3);
        double[] many = random.doubles(61).toArray();
        MannKendall normal = MannKendall.test(years(61), many);
        assertEquals(MannKendall.Method.NORMAL, normal.method());
        double[] fewer = Arrays.copyOf(many, 60);
        MannKendall exact = MannKendall.test(years(60), fewer);
        assertEquals(MannKendall.Method.EXACT, exact.method());
        double z = (Math.abs(exact.s()) - 1) / Math.sqrt(60 * 59 * 125 / 18.0);
        double expected =
                2
                        * new org.hipparchus.distribution.continuous.NormalDistribution()
                                .cumulativeProbability(-z);
        assertEquals(expected, exact.p(), 0.01);
    }

    @Test
    void oneValueIsRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> MannKendall.test(new double[] {1}, new double[] {1}));
    }
}
