package org.stillroom.lineage.score;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How well a grouping agrees with a true one.
 *
 * <p>Pairwise and B³ scores rank groupings differently, so both are given (Bagga and Baldwin 1998;
 * Hubert and Arabie 1985 for the adjusted Rand index; Rosenberg and Hirschberg 2007 for V).
 *
 * @param pairPrecision of the pairs put together, how many belong together
 * @param pairRecall of the pairs that belong together, how many are
 * @param bCubedPrecision mean share of an item's group that belongs with it
 * @param bCubedRecall mean share of what belongs with an item that is in its group
 * @param adjustedRand adjusted Rand index, 1 for perfect agreement, about 0 by chance
 * @param v harmonic mean of homogeneity and completeness
 */
public record ClusterScores(
        double pairPrecision,
        double pairRecall,
        double bCubedPrecision,
        double bCubedRecall,
        double adjustedRand,
        double v) {

    /**
     * Compares two groupings of the same items, given as a group's name for each item.
     *
     * @throws IllegalArgumentException where the numbers of items differ or there is none
     */
    public static ClusterScores of(List<String> truth, List<String> found) {
        if (truth.size() != found.size() || truth.isEmpty()) {
            throw new IllegalArgumentException(
                    "Two groupings of the same items are needed, not of "
                            + truth.size()
                            + " and "
                            + found.size());
        }
        Map<String, Integer> trueSizes = sizes(truth);
        Map<String, Integer> foundSizes = sizes(found);
        Map<List<String>, Integer> cells = new HashMap<>();
        for (int i = 0; i < truth.size(); i++) {
            cells.merge(List.of(truth.get(i), found.get(i)), 1, Integer::sum);
        }
        double n = truth.size();
        double together = pairs(cells.values());
        double truePairs = pairs(trueSizes.values());
        double foundPairs = pairs(foundSizes.values());
        double expected = n > 1 ? truePairs * foundPairs / (n * (n - 1) / 2) : 0;
        double most = (truePairs + foundPairs) / 2;
        double precision = 0;
        double recall = 0;
        for (Map.Entry<List<String>, Integer> cell : cells.entrySet()) {
            double c = cell.getValue();
            precision += c * c / foundSizes.get(cell.getKey().get(1));
            recall += c * c / trueSizes.get(cell.getKey().get(0));
        }
        return new ClusterScores(
                share(together, foundPairs),
                share(together, truePairs),
                precision / n,
                recall / n,
                most == expected ? 1 : (together - expected) / (most - expected),
                v(cells, trueSizes, foundSizes, n));
    }

    /** Returns the harmonic mean of pairwise precision and recall. */
    public double pairF1() {
        return harmonic(pairPrecision, pairRecall);
    }

    /** Returns the harmonic mean of B³ precision and recall. */
    public double bCubedF1() {
        return harmonic(bCubedPrecision, bCubedRecall);
    }

    private static double v(
            Map<List<String>, Integer> cells,
            Map<String, Integer> trueSizes,
            Map<String, Integer> foundSizes,
            double n) {
        double ofTruth = entropy(trueSizes.values(), n);
        double ofFound = entropy(foundSizes.values(), n);
        double both = entropy(cells.values(), n);
        double homogeneity = ofTruth == 0 ? 1 : 1 - (both - ofFound) / ofTruth;
        double completeness = ofFound == 0 ? 1 : 1 - (both - ofTruth) / ofFound;
        return harmonic(homogeneity, completeness);
    }

    private static double entropy(Collection<Integer> sizes, double n) {
        return sizes.stream().mapToDouble(s -> -s / n * Math.log(s / n)).sum();
    }

    private static Map<String, Integer> sizes(List<String> groups) {
        Map<String, Integer> sizes = new HashMap<>();
        groups.forEach(g -> sizes.merge(g, 1, Integer::sum));
        return sizes;
    }

    private static double pairs(Collection<Integer> sizes) {
        return sizes.stream().mapToDouble(s -> s * (s - 1.0) / 2).sum();
    }

    private static double share(double part, double whole) {
        return whole == 0 ? 1 : part / whole;
    }

    private static double harmonic(double a, double b) {
        return a + b == 0 ? 0 : 2 * a * b / (a + b);
    }
}
