package org.stillroom.lineage.grouping;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.model.assertion.Assertion;

/**
 * What a person decided about which versions are one drink.
 *
 * @param same for each version those that are the same drink
 * @param different for each version those that are another drink
 * @param names for a version the name that its drink is to bear
 */
record Links(
        Map<String, Set<String>> same,
        Map<String, Set<String>> different,
        Map<String, String> names) {

    static Links of(List<Assertion> decisions) {
        Map<String, Set<String>> same = new HashMap<>();
        Map<String, Set<String>> different = new HashMap<>();
        Map<String, String> names = new HashMap<>();
        for (Assertion decision : decisions) {
            if (!decision.kind().equals("drink")) {
                continue;
            }
            String a = decision.value("a").orElse("");
            String b = decision.value("b").orElse("");
            switch (decision.value("action").orElse("")) {
                case "same" -> both(same, a, b);
                case "different" -> both(different, a, b);
                case "name" ->
                        decision.value("version")
                                .ifPresent(v -> names.put(v, decision.value("name").orElse("")));
                default -> {
                    // a decision of a later version of the program is left alone
                }
            }
        }
        return new Links(same, different, names);
    }

    private static void both(Map<String, Set<String>> pairs, String a, String b) {
        pairs.computeIfAbsent(a, k -> new HashSet<>()).add(b);
        pairs.computeIfAbsent(b, k -> new HashSet<>()).add(a);
    }

    boolean forced(Traits t, List<Traits> members) {
        return linked(same, t, members);
    }

    boolean forbidden(Traits t, List<Traits> members) {
        return linked(different, t, members);
    }

    private static boolean linked(
            Map<String, Set<String>> pairs, Traits t, List<Traits> members) {
        Set<String> others = pairs.getOrDefault(t.version().id(), Set.of());
        return !others.isEmpty()
                && members.stream().anyMatch(m -> others.contains(m.version().id()));
    }

    /** Returns the group that a version must join because a person said so; none or one. */
    List<Groups.Group> mustHold(Traits t, List<Groups.Group> groups) {
        if (!same.containsKey(t.version().id())) {
            return List.of();
        }
        return groups.stream().filter(g -> forced(t, g.members())).limit(1).toList();
    }
}
