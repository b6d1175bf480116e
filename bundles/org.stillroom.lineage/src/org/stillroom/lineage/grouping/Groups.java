package org.stillroom.lineage.grouping;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.stillroom.model.progress.Progress;

/**
 * Puts versions into groups by the mean likeness to what a group already holds.
 *
 * <p>A mean over the group, not the nearest member, so that a chain of small steps does not join
 * what has nothing in common. Versions are taken in a fixed order, and groups that turn out alike
 * are joined at the end, so that the order in which files are found does not matter.
 */
final class Groups {

    /** Members that a mean is taken over; a group of hundreds is no surer than one of these. */
    private static final int SAMPLE = 12;

    /** A key that more groups than this share tells nothing. */
    private static final int COMMON = 60;

    private static final int RARE_STRETCHES = 6;

    private final Likeness likeness;
    private final Links links;
    private final Map<String, List<Group>> byKey = new HashMap<>();
    private final List<Group> groups = new ArrayList<>();
    private final Map<Integer, Integer> stretches = new HashMap<>();

    /** A group with its members in the order they came. */
    static final class Group {
        private final List<Traits> members = new ArrayList<>();
        private final Set<String> keys = new LinkedHashSet<>();

        List<Traits> members() {
            return List.copyOf(members);
        }
    }

    Groups(Likeness likeness, Links links) {
        this.likeness = likeness;
        this.links = links;
    }

    List<Group> group(List<Traits> all, Progress progress) {
        for (Traits t : all) {
            for (int stretch : t.wording().values()) {
                stretches.merge(stretch, 1, Integer::sum);
            }
        }
        for (Traits t : all) {
            progress.check();
            place(t);
            progress.step(1);
        }
        joinAlike(progress);
        return groups.stream().filter(g -> !g.members.isEmpty()).toList();
    }

    private void place(Traits t) {
        Set<String> keys = keys(t);
        Group best = null;
        double most = Likeness.THRESHOLD;
        for (Group group : candidates(keys)) {
            double mean = links.forced(t, group.members()) ? 2 : mean(t, group);
            if (links.forbidden(t, group.members)) {
                continue;
            }
            if (mean >= most && (best == null || mean > most)) {
                best = group;
                most = mean;
            }
        }
        for (Group group : links.mustHold(t, groups)) {
            best = group;
        }
        if (best == null) {
            best = new Group();
            groups.add(best);
        }
        best.members.add(t);
        for (String key : keys) {
            if (best.keys.add(key)) {
                byKey.computeIfAbsent(key, k -> new ArrayList<>()).add(best);
            }
        }
    }

    private Set<Group> candidates(Set<String> keys) {
        Set<Group> found = new LinkedHashSet<>();
        for (String key : keys) {
            List<Group> some = byKey.getOrDefault(key, List.of());
            if (some.size() <= COMMON || key.startsWith("=")) {
                found.addAll(some);
            }
        }
        return found;
    }

    /** Returns the keys of the name and the rarest stretches of the wording. */
    private Set<String> keys(Traits t) {
        Set<String> keys = new LinkedHashSet<>(t.keys());
        java.util.Arrays.stream(t.wording().values())
                .boxed()
                .filter(s -> stretches.get(s) > 1)
                .sorted(
                        Comparator.comparing((Integer s) -> stretches.get(s))
                                .thenComparing(Comparator.naturalOrder()))
                .limit(RARE_STRETCHES)
                .forEach(s -> keys.add("#" + s));
        return keys;
    }

    private double mean(Traits t, Group group) {
        int size = group.members.size();
        int step = Math.max(1, size / SAMPLE);
        double sum = 0;
        int count = 0;
        for (int i = 0; i < size && count < SAMPLE; i += step) {
            sum += likeness.between(t, group.members.get(i));
            count++;
        }
        return sum / count;
    }

    private void joinAlike(Progress progress) {
        Map<Integer, Set<Integer>> near = new TreeMap<>();
        Map<Group, Integer> numbers = new HashMap<>();
        for (int i = 0; i < groups.size(); i++) {
            numbers.put(groups.get(i), i);
        }
        for (int i = 0; i < groups.size(); i++) {
            for (Group other : candidates(groups.get(i).keys)) {
                int j = numbers.get(other);
                if (j > i) {
                    near.computeIfAbsent(i, k -> new java.util.TreeSet<>()).add(j);
                }
            }
        }
        for (Map.Entry<Integer, Set<Integer>> pair : near.entrySet()) {
            progress.check();
            for (int j : pair.getValue()) {
                join(groups.get(pair.getKey()), groups.get(j));
            }
        }
    }

    private void join(Group into, Group from) {
        if (into.members.isEmpty() || from.members.isEmpty()) {
            return;
        }
        for (Traits t : from.members) {
            if (links.forbidden(t, into.members)) {
                return;
            }
        }
        double sum = 0;
        int step = Math.max(1, from.members.size() / SAMPLE);
        int count = 0;
        for (int i = 0; i < from.members.size() && count < SAMPLE; i += step) {
            sum += mean(from.members.get(i), into);
            count++;
        }
        if (sum / count >= Likeness.THRESHOLD) {
            into.members.addAll(from.members);
            from.members.clear();
        }
    }
}
