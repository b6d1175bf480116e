package org.stillroom.lineage;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How the versions of a drink descend from one another.
 *
 * @param drink the drink
 * @param descents one for each version, in the drink's order
 */
public record Lineage(Drink drink, List<Descent> descents) {

    /** Keeps the descents as an unchangeable list. */
    public Lineage {
        descents = List.copyOf(descents);
    }

    /**
     * Returns for each version's id the id of the version at the root of its line of copies.
     *
     * <p>Reprints and versions taken from another lead up to it; all versions of one root count as
     * one independent witness.
     */
    public Map<String, String> roots() {
        Map<String, String> parents = new HashMap<>();
        descents.forEach(
                d -> d.parent().ifPresent(p -> parents.put(d.version().id(), p.id())));
        Map<String, String> roots = new HashMap<>();
        for (Descent d : descents) {
            String at = d.version().id();
            for (int steps = 0; parents.containsKey(at) && steps <= descents.size(); steps++) {
                at = parents.get(at);
            }
            roots.put(d.version().id(), at);
        }
        return Map.copyOf(roots);
    }
}
