package org.stillroom.measures.book;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds the statements by which one measure leads to another, the fewest that will do. */
final class Chain {

    private final List<Equation> equations;

    Chain(List<Equation> equations) {
        this.equations = equations;
    }

    List<Equation> between(String from, String to) {
        Map<String, Equation> reachedBy = new HashMap<>();
        Map<String, String> before = new HashMap<>();
        Deque<String> open = new ArrayDeque<>(List.of(from));
        before.put(from, from);
        while (!open.isEmpty() && !before.containsKey(to)) {
            String at = open.poll();
            for (Equation e : equations) {
                String next = other(e, at);
                if (!next.isEmpty() && before.putIfAbsent(next, at) == null) {
                    reachedBy.put(next, e);
                    open.add(next);
                }
            }
        }
        List<Equation> path = new ArrayList<>();
        for (String at = to; reachedBy.containsKey(at); at = before.get(at)) {
            path.add(0, reachedBy.get(at));
        }
        return path;
    }

    private static String other(Equation e, String name) {
        if (e.one().name().equals(name)) {
            return e.other().name();
        }
        return e.other().name().equals(name) ? e.one().name() : "";
    }
}
