package org.stillroom.lineage.grouping;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    /** A stretch of more versions than this, and than the share below, is a formula of the trade. */
    private static final int FORMULA = 25;

    private static final double FORMULA_SHARE = 0.01;

    /** Groups that a version is held against closely. */
    private static final int CLOSE = 16;

    /** A group of more members than this is not looked at again. */
    private static final int SETTLED = 40;

    /** What a group is ahead by for having a version already: others must be clearly likelier. */
    private static final double STAY = 0.1;

    private final Likeness likeness;
    private final Links links;
    private final Map<String, List<Group>> byKey = new HashMap<>();
    private final List<Group> groups = new ArrayList<>();
    private final Map<Integer, Integer> stretches = new HashMap<>();
    private final Map<Traits, Set<String>> keysOf = new IdentityHashMap<>();

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

    List<Group> group(List<Traits> given, Progress progress) {
        for (Traits t : given) {
            for (int stretch : t.wording().values()) {
                stretches.merge(stretch, 1, Integer::sum);
            }
        }
        double most = Math.max(FORMULA, FORMULA_SHARE * given.size());
        List<Traits> all =
                given.stream()
                        .map(t -> t.with(t.wording().where(s -> stretches.get(s) <= most)))
                        .toList();
        for (Traits t : all) {
            progress.check();
            place(t);
            progress.step(1);
        }
        refine(all, progress);
        joinAlike(progress);
        joinSame();
        return groups.stream().filter(g -> !g.members.isEmpty()).toList();
    }

    private void place(Traits t) {
        Set<String> keys = keys(t);
        Group best = best(t, keys, null).orElseGet(this::fresh);
        add(t, keys, best);
    }

    private Group fresh() {
        Group group = new Group();
        groups.add(group);
        return group;
    }

    private void add(Traits t, Set<String> keys, Group group) {
        group.members.add(t);
        for (String key : keys) {
            if (group.keys.add(key)) {
                byKey.computeIfAbsent(key, k -> new ArrayList<>()).add(group);
            }
        }
    }

    /** Returns the likeliest group for a version, its own before others that are no likelier. */
    private Optional<Group> best(Traits t, Set<String> keys, Group own) {
        Group best = null;
        double most = Likeness.THRESHOLD;
        for (Group group : nearest(t, keys, own)) {
            List<Traits> others =
                    group == own
                            ? group.members.stream().filter(m -> m != t).toList()
                            : group.members;
            if (others.isEmpty() || links.forbidden(t, others)) {
                continue;
            }
            double mean = links.forced(t, others) ? 2 : mean(t, others);
            mean += group == own ? STAY : 0;
            if (mean > most || best == null && mean >= most) {
                best = group;
                most = mean;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Returns its own group, then those whose first member is likest by name and ingredients. */
    private List<Group> nearest(Traits t, Set<String> keys, Group own) {
        List<Group> nearest = new ArrayList<>(candidates(keys));
        nearest.removeIf(g -> g == own || g.members.isEmpty());
        if (nearest.size() > CLOSE && !links.mentions(t)) {
            Map<Group, Double> rough = new IdentityHashMap<>();
            nearest.forEach(g -> rough.put(g, likeness.rough(t, g.members.get(0))));
            nearest.sort(Comparator.comparingDouble(g -> -rough.get(g)));
            nearest = new ArrayList<>(nearest.subList(0, CLOSE));
        }
        if (own != null) {
            nearest.add(0, own);
        }
        return nearest;
    }

    /** Looks at each version of a small group again, now that all groups are known. */
    private void refine(List<Traits> all, Progress progress) {
        Map<Traits, Group> homes = new IdentityHashMap<>();
        groups.forEach(g -> g.members.forEach(m -> homes.put(m, g)));
        for (Traits t : all) {
            progress.check();
            Group own = homes.get(t);
            if (own.members.size() > SETTLED) {
                continue;
            }
            Group better = best(t, keys(t), own).orElse(own);
            if (better != own) {
                own.members.removeIf(m -> m == t);
                add(t, keys(t), better);
                homes.put(t, better);
            }
        }
    }

    /** Joins the groups of versions that a person said are one drink. */
    private void joinSame() {
        for (Group from : groups) {
            if (from.members.stream().noneMatch(links::mentions)) {
                continue;
            }
            for (Group into : groups) {
                boolean said =
                        into != from
                                && !into.members.isEmpty()
                                && links.forced(from.members, into.members)
                                && !links.forbidden(from.members, into.members);
                if (said) {
                    into.members.addAll(from.members);
                    from.members.clear();
                }
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
        return keysOf.computeIfAbsent(t, this::worked);
    }

    private Set<String> worked(Traits t) {
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

    /**
     * Returns the mean likeness to a group. Where one member has the very wording, it counts half:
     * what was copied from it belongs with it though older members were worded otherwise.
     */
    private double mean(Traits t, List<Traits> members) {
        int size = members.size();
        int step = Math.max(1, size / SAMPLE);
        double sum = 0;
        double copied = 0;
        int count = 0;
        for (int i = 0; i < size && count < SAMPLE; i += step) {
            Traits member = members.get(i);
            double like = likeness.between(t, member);
            sum += like;
            count++;
            if (like > copied && Likeness.isCopied(t, member)) {
                copied = like;
            }
        }
        double mean = sum / count;
        return Math.max(mean, (mean + copied) / 2);
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
        if (links.forbidden(from.members, into.members)) {
            return;
        }
        double sum = 0;
        int step = Math.max(1, from.members.size() / SAMPLE);
        int count = 0;
        for (int i = 0; i < from.members.size() && count < SAMPLE; i += step) {
            sum += mean(from.members.get(i), into.members);
            count++;
        }
        if (sum / count >= Likeness.THRESHOLD) {
            into.members.addAll(from.members);
            from.members.clear();
        }
    }
}
