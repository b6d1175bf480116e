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
        Set<String> replaced = new HashSet<>();
        decisions.forEach(d -> d.replaces().ifPresent(replaced::add));
        for (Assertion decision : decisions) {
            if (!decision.kind().equals("drink") || replaced.contains(decision.id())) {
                continue;
            }
            String a = decision.value("a").orElse("");
            String b = decision.value("b").orElse("");
            switch (decision.value("action").orElse("")) {
                case "same" -> decide(same, different, a, b);
                case "different" -> decide(different, same, a, b);
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

    /** Of two decisions about one pair the later one holds. */
    private static void decide(
            Map<String, Set<String>> pairs, Map<String, Set<String>> others, String a, String b) {
        pairs.computeIfAbsent(a, k -> new HashSet<>()).add(b);
        pairs.computeIfAbsent(b, k -> new HashSet<>()).add(a);
        others.getOrDefault(a, new HashSet<>()).remove(b);
        others.getOrDefault(b, new HashSet<>()).remove(a);
    }

    /** Tells whether a person said of some of the one and some of the other that they differ. */
    boolean forbidden(List<Traits> some, List<Traits> others) {
        return !different.isEmpty() && some.stream().anyMatch(t -> forbidden(t, others));
    }

    /** Tells whether a person said of some of the one and some of the other that they are one. */
    boolean forced(List<Traits> some, List<Traits> others) {
        return !same.isEmpty() && some.stream().anyMatch(t -> forced(t, others));
    }

    /** Tells whether a person said anything of a version. */
    boolean mentions(Traits t) {
        return same.containsKey(t.version().id()) || different.containsKey(t.version().id());
    }

    boolean forced(Traits t, List<Traits> members) {
        return linked(same, t, members);
    }

    boolean forbidden(Traits t, List<Traits> members) {
        return linked(different, t, members);
    }

    private static boolean linked(Map<String, Set<String>> pairs, Traits t, List<Traits> members) {
        Set<String> others = pairs.getOrDefault(t.version().id(), Set.of());
        return !others.isEmpty()
                && members.stream().anyMatch(m -> others.contains(m.version().id()));
    }
}
