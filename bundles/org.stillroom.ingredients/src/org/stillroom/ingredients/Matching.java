package org.stillroom.ingredients;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.stillroom.ingredients.spelling.NearNames;
import org.stillroom.ingredients.spelling.Words;

/** Finds the labels that printed words may be, before time and place are looked at. */
final class Matching {

    private static final int NEAR = 24;

    private final Map<String, List<Name>> byKey;
    private final NearNames near;
    private final Set<String> praise;

    /** A label with its sense. */
    record Name(String sense, Label label) {}

    /**
     * A label that the words may be.
     *
     * @param name the label
     * @param likeness 0 to 1
     * @param how how it was found
     */
    record Hit(Name name, double likeness, How how) {}

    /** How a label was found. */
    enum How {
        /** The words are the label. */
        SAME,
        /** They are, without words of praise or preparation. */
        WITHOUT_PRAISE,
        /** They are spelt nearly so. */
        NEAR,
        /** They hold the label. */
        PART
    }

    private Matching(Map<String, List<Name>> byKey, NearNames near, Set<String> praise) {
        this.byKey = byKey;
        this.near = near;
        this.praise = praise;
    }

    static Matching of(Map<String, List<Label>> labels, SpellingKnowledge spelling) {
        Map<String, List<Name>> byKey = new TreeMap<>();
        labels.forEach(
                (sense, names) -> {
                    for (Label label : names) {
                        String key = Words.key(Words.of(label.text()));
                        if (!key.isEmpty()) {
                            byKey.computeIfAbsent(key, k -> new ArrayList<>())
                                    .add(new Name(sense, label));
                        }
                    }
                });
        NearNames near =
                new NearNames(List.copyOf(byKey.keySet()), spelling.rules(), spelling.costs());
        return new Matching(new HashMap<>(byKey), near, spelling.praise());
    }

    /** Returns the labels that words may be; those that are surest only, if any are sure. */
    List<Hit> hits(List<String> words) {
        String key = Words.key(words);
        if (key.isEmpty()) {
            return List.of();
        }
        List<Hit> same = exact(key, 1, How.SAME);
        if (!same.isEmpty()) {
            return same;
        }
        List<String> plain = words.stream().filter(w -> !praise.contains(w)).toList();
        List<Hit> hits = new ArrayList<>();
        if (plain.size() < words.size() && !plain.isEmpty()) {
            hits.addAll(exact(Words.key(plain), 0.97, How.WITHOUT_PRAISE));
            if (!hits.isEmpty()) {
                return hits;
            }
            hits.addAll(near(Words.key(plain), 0.99));
        }
        hits.addAll(near(key, 1));
        hits.addAll(parts(plain.isEmpty() ? words : plain));
        return hits;
    }

    private List<Hit> exact(String key, double likeness, How how) {
        return byKey.getOrDefault(key, List.of()).stream()
                .map(name -> new Hit(name, likeness, how))
                .toList();
    }

    private List<Hit> near(String key, double factor) {
        List<Hit> hits = new ArrayList<>();
        for (NearNames.Near one : near.to(key, NEAR)) {
            byKey.get(one.key())
                    .forEach(n -> hits.add(new Hit(n, one.likeness() * factor, How.NEAR)));
        }
        return hits;
    }

    /** Labels that stand whole within the words; the longest, and among equals the last, first. */
    private List<Hit> parts(List<String> words) {
        List<Hit> hits = new ArrayList<>();
        int letters = Words.key(words).length();
        for (int from = 0; from < words.size(); from++) {
            for (int to = words.size(); to > from; to--) {
                String key = Words.key(words.subList(from, to));
                boolean whole = to - from == words.size();
                if (whole || key.length() < 3 || !byKey.containsKey(key)) {
                    continue;
                }
                double share = key.length() / (double) letters;
                double last = to == words.size() ? 0.06 : 0;
                hits.addAll(exact(key, 0.6 + 0.25 * share + last, How.PART));
                break;
            }
        }
        hits.sort(Comparator.comparingDouble(Hit::likeness).reversed());
        return hits;
    }
}
