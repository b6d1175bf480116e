package org.stillroom.ingredients.spelling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/**
 * Finds the names that a misspelt or misprinted name may stand for.
 *
 * <p>Names are blocked by the pairs of letters in their coarse form ({@link SpellingRules}); the
 * few that share most pairs are compared by weighted edit distance and by the Jaro–Winkler
 * similarity (W. E. Winkler, Proceedings of the Section on Survey Research Methods, American
 * Statistical Association, 1990, 354–359).
 */
public final class NearNames {

    private static final int COMPARED = 160;
    private static final double LEAST = 0.70;

    private final SpellingRules rules;
    private final EditCost costs;
    private final JaroWinklerSimilarity winkler = new JaroWinklerSimilarity();
    private final String[] keys;
    private final int[] pairCounts;
    private final Map<Integer, int[]> blocks;

    /**
     * A name near the one that was asked for.
     *
     * @param key its key
     * @param likeness 0 to 1
     */
    public record Near(String key, double likeness) {}

    /** Indexes names given by their keys. */
    public NearNames(List<String> keys, SpellingRules rules, EditCost costs) {
        this.rules = rules;
        this.costs = costs;
        this.keys = keys.toArray(String[]::new);
        this.pairCounts = new int[this.keys.length];
        Map<Integer, List<Integer>> lists = new HashMap<>();
        for (int i = 0; i < this.keys.length; i++) {
            Set<Integer> pairs = pairs(rules.skeleton(this.keys[i]));
            pairCounts[i] = pairs.size();
            for (int pair : pairs) {
                lists.computeIfAbsent(pair, p -> new ArrayList<>()).add(i);
            }
        }
        this.blocks = new HashMap<>();
        lists.forEach(
                (pair, list) ->
                        blocks.put(pair, list.stream().mapToInt(Integer::intValue).toArray()));
    }

    /** Returns up to a number of near names, the nearest first; ties in order of their letters. */
    public List<Near> to(String key, int atMost) {
        List<Near> near = new ArrayList<>();
        for (int i : block(key)) {
            double likeness = likeness(key, keys[i]);
            if (likeness >= LEAST) {
                near.add(new Near(keys[i], likeness));
            }
        }
        near.sort(Comparator.comparingDouble(Near::likeness).reversed().thenComparing(Near::key));
        return near.size() > atMost ? List.copyOf(near.subList(0, atMost)) : List.copyOf(near);
    }

    /** Returns how alike two keys are, 0 to 1. */
    public double likeness(String a, String b) {
        int longer = Math.max(a.length(), b.length());
        double edits = costs.between(a, b, 0.4 * longer);
        double byEdits = 1 - edits / longer;
        if (byEdits < 0.6) {
            return 0;
        }
        double coarse = rules.skeleton(a).equals(rules.skeleton(b)) ? 0.04 : 0;
        return Math.min(0.999, 0.75 * byEdits + 0.25 * winkler.apply(a, b) + coarse);
    }

    private int[] block(String key) {
        Set<Integer> pairs = pairs(rules.skeleton(key));
        int[] shared = new int[keys.length];
        List<Integer> touched = new ArrayList<>();
        for (int pair : pairs) {
            for (int i : blocks.getOrDefault(pair, new int[0])) {
                if (shared[i]++ == 0) {
                    touched.add(i);
                }
            }
        }
        long[] ranked = new long[touched.size()];
        for (int n = 0; n < ranked.length; n++) {
            int i = touched.get(n);
            double dice = 2.0 * shared[i] / (pairs.size() + pairCounts[i]);
            ranked[n] = ((long) ((1 - dice) * 1_000_000) << 32) | i;
        }
        Arrays.sort(ranked);
        int[] best = new int[Math.min(COMPARED, ranked.length)];
        for (int n = 0; n < best.length; n++) {
            best[n] = (int) ranked[n];
        }
        return best;
    }

    private static Set<Integer> pairs(String form) {
        Set<Integer> pairs = new HashSet<>();
        char last = ' ';
        for (int i = 0; i <= form.length(); i++) {
            char c = i < form.length() ? form.charAt(i) : ' ';
            pairs.add(last << 16 | c);
            last = c;
        }
        return pairs;
    }
}
