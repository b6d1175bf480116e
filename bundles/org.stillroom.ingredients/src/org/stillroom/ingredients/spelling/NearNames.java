package org.stillroom.ingredients.spelling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

    /** A longer name with one slip shares most of its pairs of letters anyway. */
    private static final int LONGEST_SLIP = 14;

    /** Letters, blank, digit, anything else. */
    private static final int CLASSES = 29;

    private final SpellingRules rules;
    private final EditCost costs;
    private final JaroWinklerSimilarity winkler = new JaroWinklerSimilarity();
    private final String[] keys;
    private final Map<String, Integer> places = new HashMap<>();
    private final String[] skeletons;
    private final int[] pairCounts;
    private final int[][] blocks = new int[CLASSES * CLASSES][0];

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
        this.skeletons = new String[this.keys.length];
        this.pairCounts = new int[this.keys.length];
        int[] used = new int[blocks.length];
        for (int i = 0; i < this.keys.length; i++) {
            places.put(this.keys[i], i);
            skeletons[i] = rules.skeleton(this.keys[i]);
            int[] pairs = pairs(skeletons[i]);
            pairCounts[i] = pairs.length;
            for (int pair : pairs) {
                if (used[pair] == blocks[pair].length) {
                    blocks[pair] = Arrays.copyOf(blocks[pair], 2 * used[pair] + 4);
                }
                blocks[pair][used[pair]++] = i;
            }
        }
        for (int pair = 0; pair < blocks.length; pair++) {
            blocks[pair] = Arrays.copyOf(blocks[pair], used[pair]);
        }
    }

    /** Returns up to a number of near names, the nearest first; ties in order of their letters. */
    public List<Near> to(String key, int atMost) {
        List<Near> near = new ArrayList<>();
        String coarse = rules.skeleton(key);
        for (int i : candidates(key, coarse)) {
            double likeness = likeness(key, coarse, keys[i], skeletons[i]);
            if (likeness >= LEAST) {
                near.add(new Near(keys[i], likeness));
            }
        }
        near.sort(Comparator.comparingDouble(Near::likeness).reversed().thenComparing(Near::key));
        return near.size() > atMost ? List.copyOf(near.subList(0, atMost)) : List.copyOf(near);
    }

    /** Returns how alike two keys are, 0 to 1. */
    public double likeness(String a, String b) {
        return likeness(a, rules.skeleton(a), b, rules.skeleton(b));
    }

    private double likeness(String a, String coarseA, String b, String coarseB) {
        int longer = Math.max(a.length(), b.length());
        boolean coarse = longer > 3 && coarseA.equals(coarseB);
        double byEdits = 1 - costs.between(a, b, 0.4 * longer) / longer;
        if (byEdits < 0.6 && !coarse) {
            return 0;
        }
        double likeness = 0.75 * byEdits + 0.25 * winkler.apply(a, b);
        return coarse ? Math.min(0.999, Math.max(0.86, likeness + 0.04)) : likeness;
    }

    /** Returns what shares most pairs of letters, and whatever is one slip away. */
    private int[] candidates(String key, String coarse) {
        int[] shared = block(coarse);
        BitSet seen = new BitSet(keys.length);
        for (int i : shared) {
            seen.set(i);
        }
        for (String other : oneSlip(key)) {
            Integer i = places.get(other);
            if (i != null) {
                seen.set(i);
            }
        }
        return seen.stream().toArray();
    }

    /**
     * Returns every spelling with one letter less, more, another or exchanged with its neighbour
     * (the four slips of Damerau 1964).
     */
    private static List<String> oneSlip(String key) {
        List<String> all = new ArrayList<>();
        if (key.length() > LONGEST_SLIP) {
            return all;
        }
        StringBuilder word = new StringBuilder(key.length() + 1);
        for (int at = 0; at <= key.length(); at++) {
            String head = key.substring(0, at);
            String tail = key.substring(at);
            if (!tail.isEmpty()) {
                all.add(head + tail.substring(1));
            }
            if (tail.length() > 1) {
                all.add(head + tail.charAt(1) + tail.charAt(0) + tail.substring(2));
            }
            for (char c = 'a'; c <= 'z'; c++) {
                word.setLength(0);
                all.add(word.append(head).append(c).append(tail).toString());
                if (!tail.isEmpty()) {
                    word.setCharAt(at, c);
                    word.deleteCharAt(at + 1);
                    all.add(word.toString());
                }
            }
        }
        return all;
    }

    /** Returns the names that share most pairs of letters, by Dice’s coefficient. */
    private int[] block(String skeleton) {
        int[] pairs = pairs(skeleton);
        int[] shared = new int[keys.length];
        int[] touched = new int[keys.length];
        int n = 0;
        for (int pair : pairs) {
            for (int i : blocks[pair]) {
                if (shared[i]++ == 0) {
                    touched[n++] = i;
                }
            }
        }
        long[] ranked = new long[n];
        for (int j = 0; j < n; j++) {
            int i = touched[j];
            double dice = 2.0 * shared[i] / (pairs.length + pairCounts[i]);
            ranked[j] = (long) ((1 - dice) * 1_000_000) << 32 | i;
        }
        Arrays.sort(ranked);
        int[] best = new int[Math.min(COMPARED, n)];
        for (int j = 0; j < best.length; j++) {
            best[j] = (int) ranked[j];
        }
        return best;
    }

    /** Returns the different pairs of neighbouring letters, the ends counted as blanks. */
    private static int[] pairs(String form) {
        int[] pairs = new int[form.length() + 1];
        int n = 0;
        int last = 0;
        for (int i = 0; i <= form.length(); i++) {
            int now = i < form.length() ? classOf(form.charAt(i)) : 0;
            int pair = last * CLASSES + now;
            boolean seen = false;
            for (int j = 0; j < n && !seen; j++) {
                seen = pairs[j] == pair;
            }
            if (!seen) {
                pairs[n++] = pair;
            }
            last = now;
        }
        return Arrays.copyOf(pairs, n);
    }

    private static int classOf(char c) {
        if (c >= 'a' && c <= 'z') {
            return c - 'a' + 1;
        }
        return c >= '0' && c <= '9' ? 27 : 28;
    }
}
