package org.stillroom.measures.system;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.stillroom.measures.knowledge.MeasureSystem;
import org.stillroom.model.explain.Explanation;

/**
 * How likely each system of measures is for a book.
 *
 * @param shares probability of each system, together 1
 * @param reason why, one sentence
 * @param explanation the reason with what it rests on
 */
public record SystemPosterior(
        SortedMap<MeasureSystem, Double> shares, String reason, Explanation explanation) {

    /** Keeps the shares unchangeable. */
    public SystemPosterior {
        shares = Collections.unmodifiableSortedMap(new TreeMap<>(shares));
    }

    /** Returns the likeliest system; among equals the first by its id. */
    public MeasureSystem likeliest() {
        return ranked().getFirst().getKey();
    }

    /** Returns the systems, the likeliest first. */
    public List<Map.Entry<MeasureSystem, Double>> ranked() {
        return shares.entrySet().stream()
                .sorted(
                        Map.Entry.<MeasureSystem, Double>comparingByValue(Comparator.reverseOrder())
                                .thenComparing(Map.Entry.comparingByKey()))
                .toList();
    }

    /** Returns the probability of a system, 0 where it is not among them. */
    public double share(String id) {
        return shares.entrySet().stream()
                .filter(e -> e.getKey().id().equals(id))
                .mapToDouble(Map.Entry::getValue)
                .sum();
    }
}
