package org.stillroom.benchmarks;

import java.util.Arrays;
import java.util.Locale;

/** The figures that a benchmark prints: one line each, so that two runs can be compared by eye. */
public final class Figures {

    private Figures() {}

    /** Prints one figure with its unit. */
    public static void print(String name, double value, String unit) {
        System.out.printf(Locale.ROOT, "%-44s %14.3f %s%n", name, value, unit);
    }

    /** Prints the share of {@code part} in {@code whole}, with both. */
    public static void printShare(String name, long part, long whole) {
        double share = whole == 0 ? 0 : 100.0 * part / whole;
        System.out.printf(Locale.ROOT, "%-44s %13.2f%% (%d of %d)%n", name, share, part, whole);
    }

    /**
     * The value below which the given share of all values lies, by the nearest rank.
     *
     * @param share from 0 to 1
     * @throws IllegalArgumentException if there are no values
     */
    public static double percentile(double[] values, double share) {
        if (values.length == 0) {
            throw new IllegalArgumentException("no values to rank");
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int rank = (int) Math.ceil(share * sorted.length);
        return sorted[Math.max(0, rank - 1)];
    }
}
