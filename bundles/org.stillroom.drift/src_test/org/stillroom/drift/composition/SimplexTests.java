package org.stillroom.drift.composition;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Formulas of Aitchison, The Statistical Analysis of Compositional Data (1986). */
final class SimplexTests {

    /** Worked by hand: √(2/3) · ln 2. */
    @Test
    void aDoubledPartOfThreeLiesThisFarFromEqualParts() {
        double distance = Simplex.distance(new double[] {2, 1, 1}, new double[] {1, 1, 1});
        assertEquals(Math.sqrt(2.0 / 3) * Math.log(2), distance, 1e-12);
        assertEquals(0.565952303, distance, 1e-9);
    }

    /** Worked by hand: ln 2.5 / √2. */
    @Test
    void twoToOneLiesThisFarFromFiveToOne() {
        double distance = Simplex.distance(new double[] {2, 1}, new double[] {5, 1});
        assertEquals(0.647915390, distance, 1e-9);
    }

    /** With two parts the balance is the distance from equal parts, with a sign. */
    @Test
    void aBalanceOfTwoPartsIsTheirLogRatioOverRootTwo() {
        double balance = Simplex.balance(new double[] {5}, new double[] {2});
        assertEquals(Math.log(2.5) / Math.sqrt(2), balance, 1e-12);
    }

    @Test
    void aPartOfNothingIsRefusedAndNeverReplaced() {
        assertThrows(IllegalArgumentException.class, () -> Simplex.clr(1, 0));
        assertThrows(IllegalArgumentException.class, () -> Simplex.closure());
        assertThrows(
                IllegalArgumentException.class,
                () -> Simplex.distance(new double[] {1, 1}, new double[] {1, 1, 1}));
    }

    /** The distance in centred log-ratios is the one over all pairs of log-ratios. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void bothFormsOfTheDistanceAgreeAndScaleDoesNotMatter(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 100; round++) {
            int parts = 2 + random.nextInt(7);
            double[] x = random.doubles(parts, 0.01, 10).toArray();
            double[] y = random.doubles(parts, 0.01, 10).toArray();
            double pairs = 0;
            for (int i = 0; i < parts; i++) {
                for (int j = 0; j < parts; j++) {
                    double d = Math.log(x[i] / x[j]) - Math.log(y[i] / y[j]);
                    pairs += d * d;
                }
            }
            double expected = Math.sqrt(pairs / (2 * parts));
            String message = "seed " + seed + ", round " + round;
            assertEquals(expected, Simplex.distance(x, y), 1e-12 + 1e-12 * expected, message);
            double[] scaled = Arrays.stream(x).map(v -> 7.3 * v).toArray();
            assertEquals(expected, Simplex.distance(scaled, y), 1e-9, message);
            assertEquals(expected, Simplex.distance(y, x), 1e-9, message);
            assertEquals(1, Arrays.stream(Simplex.closure(x)).sum(), 1e-12, message);
            assertArrayEquals(Simplex.clr(x), Simplex.clr(scaled), 1e-9, message);
        }
    }
}
