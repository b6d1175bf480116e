package org.stillroom.drift.trend;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class TheilSenTests {

    @Test
    void aStraightLineHasItsSlopeAndOneOutlierDoesNotBendIt() {
        double[] t = {0, 1, 2, 3, 4};
        assertEquals(2, TheilSen.fit(t, new double[] {1, 3, 5, 7, 9}).slope(), 1e-12);
        TheilSen bent = TheilSen.fit(t, new double[] {1, 3, 50, 7, 9});
        assertEquals(2, bent.slope(), 1e-12);
    }

    /** With five values the limits are the outermost slopes: coverage 1 − 2/5! (arithmetic). */
    @Test
    void withFiveValuesTheLimitsAreTheWholeRange() {
        double[] t = {0, 1, 2, 3, 4};
        TheilSen fit = TheilSen.fit(t, new double[] {0, 1, 5, 4, 9});
        assertEquals(-1, fit.low(), 1e-12);
        assertEquals(5, fit.high(), 1e-12);
        assertEquals(1 - 2.0 / 120, fit.coverage(), 1e-12);
    }

    /** The limits hold the true slope at least as often as they say, to sampling error. */
    @ParameterizedTest
    @ValueSource(ints = {5, 8, 12, 20})
    void theLimitsHoldTheTrueSlope(int n) {
        long seed = 500L + n;
        SplittableRandom random = new SplittableRandom(seed);
        int held = 0;
        int rounds = 2_000;
        double[] t = IntStream.range(0, n).asDoubleStream().toArray();
        double coverage = 0;
        for (int round = 0; round < rounds; round++) {
            double[] v =
                    IntStream.range(0, n)
                            .mapToDouble(i -> 3 * i + 9 * random.nextDouble())
                            .toArray();
            TheilSen fit = TheilSen.fit(t, v);
            coverage = fit.coverage();
            held += fit.low() <= 3 && 3 <= fit.high() ? 1 : 0;
        }
        assertTrue(coverage >= 0.95, "coverage " + coverage);
        assertEquals(coverage, (double) held / rounds, 0.02, "seed " + seed);
    }

    @Test
    void oneTimeHasNoSlope() {
        assertThrows(
                IllegalArgumentException.class,
                () -> TheilSen.fit(new double[] {5, 5}, new double[] {1, 2}));
    }

    /** Worked by hand from the definition of Benjamini and Hochberg (1995). */
    @Test
    void severalLooksAreAllowedFor() {
        assertArrayEquals(
                new double[] {0.04, 0.05333333333, 0.05333333333, 0.5},
                FalseDiscovery.adjust(0.01, 0.04, 0.03, 0.5),
                1e-9);
    }
}
