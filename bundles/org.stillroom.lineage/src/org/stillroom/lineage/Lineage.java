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
     * one independent witness. A version that names its source but is worded anew stands for itself:
     * its proportions are its own. A version that is tied between two of one root belongs to that root:
     * whichever it was taken from, it is no new witness.
     */
    public Map<String, String> roots() {
        Map<String, Descent> byId = new HashMap<>();
        descents.forEach(d -> byId.put(d.version().id(), d));
        Map<String, String> roots = new HashMap<>();
        descents.forEach(d -> roots.put(d.version().id(), root(d.version().id(), byId, 0)));
        return Map.copyOf(roots);
    }

    private static String root(String id, Map<String, Descent> byId, int steps) {
        Descent descent = byId.get(id);
        if (descent == null || steps > byId.size()) {
            return id;
        }
        if (descent.parent().isPresent() && descent.candidates().get(0).copied()) {
            return root(descent.parent().get().id(), byId, steps + 1);
        }
        if (descent.standing() == Descent.Standing.TIED && descent.candidates().size() > 1) {
            String first = descent.candidates().get(0).parent().id();
            String second = descent.candidates().get(1).parent().id();
            String root = root(first, byId, steps + 1);
            return root.equals(root(second, byId, steps + 1)) ? root : id;
        }
        return id;
    }
}
