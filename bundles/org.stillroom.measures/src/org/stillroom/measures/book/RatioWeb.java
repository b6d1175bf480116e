package org.stillroom.measures.book;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Measures that hang together by ratios: a forest in which each name knows how many of its root it
 * is.
 */
final class RatioWeb {

    private final Map<String, String> parents = new HashMap<>();
    private final Map<String, Ratio> toParent = new HashMap<>();
    private final Set<String> names = new LinkedHashSet<>();

    /** Where a name leads, and how many of that it is. */
    record Rooted(String root, Ratio ratio) {}

    Rooted root(String name) {
        names.add(name);
        String at = name;
        Ratio ratio = Ratio.SAME;
        while (parents.containsKey(at)) {
            ratio = ratio.times(toParent.get(at));
            at = parents.get(at);
        }
        return new Rooted(at, ratio);
    }

    /**
     * Joins two names; one of the first is so many of the second.
     *
     * @return false where what was said before gives another ratio
     */
    boolean join(String one, String other, Ratio ratio) {
        Rooted first = root(one);
        Rooted second = root(other);
        if (first.root().equals(second.root())) {
            return first.ratio().agrees(ratio.times(second.ratio()));
        }
        parents.put(first.root(), second.root());
        toParent.put(first.root(), first.ratio().inverse().times(ratio.times(second.ratio())));
        return true;
    }

    /** Returns how many of the second one of the first is; both must hang together. */
    Ratio between(String one, String other) {
        return root(one).ratio().times(root(other).ratio().inverse());
    }

    /** Returns the names that hang together, group by group, in the order of their mention. */
    List<List<String>> groups() {
        Map<String, List<String>> groups =
                List.copyOf(names).stream()
                        .collect(
                                Collectors.groupingBy(
                                        n -> root(n).root(),
                                        java.util.LinkedHashMap::new,
                                        Collectors.toList()));
        return List.copyOf(groups.values());
    }
}
