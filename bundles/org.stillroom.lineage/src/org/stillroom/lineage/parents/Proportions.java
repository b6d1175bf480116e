package org.stillroom.lineage.parents;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/**
 * Whether two texts have the same proportions, though in other measures or another size.
 *
 * @param alike ingredients whose amounts stand in the commonest ratio, that one included
 * @param bits evidence of copying in bits, below 0 where the proportions differ
 */
record Proportions(int alike, double bits) {

    /** Amounts within this of one another, as a logarithm, are the same: a rounded conversion. */
    private static final double SAME = 0.06;

    /** How often two independent recipes have the same proportion of two ingredients. */
    private static final double USUAL = 0.35;

    private static final double KEPT = 0.85;
    private static final int FEWEST = 3;

    static Proportions between(Map<String, Double> earlier, Map<String, Double> later) {
        List<Double> ratios = new ArrayList<>();
        for (Map.Entry<String, Double> e : earlier.entrySet()) {
            Double other = later.get(e.getKey());
            if (other != null) {
                ratios.add(Math.log(other / e.getValue()));
            }
        }
        if (ratios.size() < FEWEST) {
            return new Proportions(0, Double.NEGATIVE_INFINITY);
        }
        Collections.sort(ratios);
        int most = 0;
        for (double centre : ratios) {
            int near = (int) ratios.stream().filter(r -> Math.abs(r - centre) <= SAME).count();
            most = Math.max(most, near);
        }
        double agree = Math.log(KEPT / USUAL) / Math.log(2);
        double differ = Math.log((1 - KEPT) / (1 - USUAL)) / Math.log(2);
        return new Proportions(most, (most - 1) * agree + (ratios.size() - most) * differ);
    }
}
