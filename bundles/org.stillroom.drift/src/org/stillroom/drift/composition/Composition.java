package org.stillroom.drift.composition;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.spec.Role;

/**
 * What one version is made of, as amounts that can be compared with one another.
 *
 * @param parts the parts by family
 */
public record Composition(SortedMap<String, Part> parts) {

    /** Keeps the parts in a map of its own. */
    public Composition {
        parts = Collections.unmodifiableSortedMap(new TreeMap<>(parts));
    }

    /** Returns the composition of these parts; parts of one family are added up. */
    public static Composition of(Collection<Part> parts) {
        SortedMap<String, Part> map = new TreeMap<>();
        parts.forEach(p -> map.merge(p.family(), p, Part::plus));
        return new Composition(map);
    }

    /** Returns the amount of all parts together. */
    public Estimate total() {
        return sum(List.copyOf(parts.values())).orElseThrow();
    }

    /**
     * Returns a role's share of the whole, or nothing where the role does not occur.
     *
     * <p>The quotient keeps the unknowns of both: a share is sure where every line is measured with
     * the same unknown glass.
     */
    public Optional<Estimate> share(Role role) {
        List<Part> in = parts.values().stream().filter(p -> p.role() == role).toList();
        return sum(in).map(s -> s.dividedBy(total()));
    }

    /**
     * Returns the Aitchison distance on the ingredients that both have, by likely amounts, or
     * nothing where there are fewer than two.
     */
    public Optional<Double> distance(Composition other) {
        List<String> both = parts.keySet().stream().filter(other.parts::containsKey).toList();
        if (both.size() < 2) {
            return Optional.empty();
        }
        return Optional.of(Simplex.distance(likely(both), other.likely(both)));
    }

    private double[] likely(List<String> families) {
        return families.stream().mapToDouble(f -> parts.get(f).amount().likely()).toArray();
    }

    /** Returns the labels of the ingredients that the other does not have. */
    public List<String> without(Composition other) {
        return parts.entrySet().stream()
                .filter(e -> !other.parts.containsKey(e.getKey()))
                .map(Map.Entry::getValue)
                .map(Part::label)
                .sorted()
                .toList();
    }

    private static Optional<Estimate> sum(List<Part> parts) {
        return parts.stream().map(Part::amount).reduce(Estimate::plus);
    }
}
