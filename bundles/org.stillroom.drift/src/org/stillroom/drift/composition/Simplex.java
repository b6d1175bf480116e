package org.stillroom.drift.composition;

import java.util.Arrays;

/**
 * Arithmetic of parts of a whole, of which only the ratios mean anything.
 *
 * <p>After J. Aitchison, The Statistical Analysis of Compositional Data (1986). Every part must be
 * greater than 0; a part that is absent by design is left out, never replaced by a small number,
 * because the distance would then be that number's doing.
 */
public final class Simplex {

    private Simplex() {}

    /**
     * Returns the parts divided by their sum.
     *
     * @throws IllegalArgumentException where there is no part, or one is not positive and finite
     */
    public static double[] closure(double... parts) {
        check(parts);
        double sum = Arrays.stream(parts).sum();
        return Arrays.stream(parts).map(p -> p / sum).toArray();
    }

    /**
     * Returns the centred log-ratios: ln x − mean of ln x.
     *
     * @throws IllegalArgumentException where there is no part, or one is not positive and finite
     */
    public static double[] clr(double... parts) {
        check(parts);
        double mean = Arrays.stream(parts).map(Math::log).average().orElseThrow();
        return Arrays.stream(parts).map(p -> Math.log(p) - mean).toArray();
    }

    /**
     * Returns the Aitchison distance: the Euclidean distance of the centred log-ratios.
     *
     * @throws IllegalArgumentException where the numbers of parts differ, or a part is not positive
     */
    public static double distance(double[] x, double[] y) {
        if (x.length != y.length) {
            throw new IllegalArgumentException(
                    "Two compositions of the same parts are needed, not of "
                            + x.length
                            + " and "
                            + y.length);
        }
        double[] a = clr(x);
        double[] b = clr(y);
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += (a[i] - b[i]) * (a[i] - b[i]);
        }
        return Math.sqrt(sum);
    }

    /**
     * Returns the balance between two groups of parts: √(rs/(r+s)) · ln(g(above)/g(below)), g being
     * the geometric mean (Egozcue and Pawlowsky-Glahn, Mathematical Geology 37, 2005).
     */
    public static double balance(double[] above, double[] below) {
        check(above);
        check(below);
        double r = above.length;
        double s = below.length;
        double up = Arrays.stream(above).map(Math::log).average().orElseThrow();
        double down = Arrays.stream(below).map(Math::log).average().orElseThrow();
        return Math.sqrt(r * s / (r + s)) * (up - down);
    }

    private static void check(double[] parts) {
        if (parts.length == 0) {
            throw new IllegalArgumentException("A composition has at least one part");
        }
        for (double part : parts) {
            if (!(part > 0) || Double.isInfinite(part)) {
                throw new IllegalArgumentException(
                        "A part is greater than 0 and finite, not " + part);
            }
        }
    }
}
