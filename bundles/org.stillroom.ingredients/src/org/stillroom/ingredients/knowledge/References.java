package org.stillroom.ingredients.knowledge;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.stillroom.model.explain.Problem;

/** Checks that what rows refer to exists and that no sense is broader than itself. */
final class References {

    private final SortedMap<String, SenseRow> all;
    private final List<Problem> problems;

    References(Knowledge before, Map<String, SenseRow> added, List<Problem> problems) {
        this.all = new TreeMap<>(before.senses());
        this.all.putAll(added);
        this.problems = problems;
    }

    /** Tells whether there is a sense with this id, and reports it where there is none. */
    boolean has(String path, Row row, String id) {
        if (all.containsKey(id)) {
            return true;
        }
        problems.add(
                Problem.error(
                        path,
                        row.line(),
                        id,
                        "There is no sense with this id; the row was left out.",
                        nearest(id)));
        return false;
    }

    private String nearest(String id) {
        String near = Nearest.of(id, all.keySet());
        return near.isEmpty() ? "" : "The nearest id is " + near + ".";
    }

    /** Returns the senses without broader or close senses that do not exist or run in a circle. */
    SortedMap<String, SenseRow> checked(
            SortedMap<String, SenseRow> added, Map<String, String> places) {
        SortedMap<String, SenseRow> sound = new TreeMap<>();
        added.forEach(
                (id, sense) -> {
                    String[] place = places.get(id).split("\n");
                    Row row = new Row(Integer.parseInt(place[1]), Map.of());
                    List<String> broader = existing(place[0], row, sense.broader());
                    List<String> close = existing(place[0], row, sense.close());
                    if (isCyclic(id, broader)) {
                        problems.add(cycle(place[0], row, id, broader));
                        broader = List.of();
                    }
                    SenseRow good = sense.withBroader(broader).withClose(close);
                    sound.put(id, good);
                    all.put(id, good);
                });
        return sound;
    }

    private List<String> existing(String path, Row row, List<String> ids) {
        List<String> good = new ArrayList<>();
        for (String id : ids) {
            if (all.containsKey(id)) {
                good.add(id);
            } else {
                problems.add(
                        Problem.warning(
                                path,
                                row.line(),
                                id,
                                "There is no sense with this id; the sense was read without it.",
                                nearest(id)));
            }
        }
        return good;
    }

    private static Problem cycle(String path, Row row, String id, List<String> broader) {
        return Problem.error(
                path,
                row.line(),
                id + " → " + String.join(";", broader),
                "The sense is broader than itself, by way of its broader senses; it was read"
                        + " without them.",
                "Leave the broader column of one of them empty.");
    }

    private boolean isCyclic(String id, List<String> broader) {
        Set<String> seen = new HashSet<>();
        List<String> open = new ArrayList<>(broader);
        while (!open.isEmpty()) {
            String next = open.removeLast();
            if (next.equals(id)) {
                return true;
            }
            SenseRow sense = all.get(next);
            if (sense != null && seen.add(next)) {
                open.addAll(sense.broader());
            }
        }
        return false;
    }
}
