package org.stillroom.drift.trend;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Allows for several looks at one body of data (Benjamini and Hochberg, Journal of the Royal
 * Statistical Society B 57, 1995).
 */
public final class FalseDiscovery {

    private FalseDiscovery() {}

    /** Returns the adjusted probabilities, in the order of those given. */
    public static double[] adjust(double... p) {
        List<Integer> order =
                IntStream.range(0, p.length)
                        .boxed()
                        .sorted(Comparator.comparingDouble(i -> p[i]))
                        .toList();
        double[] adjusted = new double[p.length];
        double least = 1;
        for (int rank = p.length; rank >= 1; rank--) {
            int i = order.get(rank - 1);
            least = Math.min(least, p[i] * p.length / rank);
            adjusted[i] = least;
        }
        return adjusted;
    }
}
