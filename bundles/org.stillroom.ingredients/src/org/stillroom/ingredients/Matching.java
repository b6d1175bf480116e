package org.stillroom.ingredients;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.stillroom.ingredients.spelling.NearNames;
import org.stillroom.ingredients.spelling.Words;

/** Finds the labels that printed words may be, before time and place are looked at. */
final class Matching {

    private static final int NEAR = 24;

    /** So like that no other order of the words need be tried. */
    private static final double CLEAR = 0.9;

    private static final int MOST_TURNED = 4;

    /** Words that join the parts of a name and may be left out when only the parts count. */
    static final Set<String> JOINTS =
            Set.of(
                    "of", "de", "du", "des", "d", "di", "von", "in", "with", "au", "aux", "a", "la",
                    "le", "les", "l", "del", "the", "an", "al");

    private final Map<String, List<Name>> byKey;
    private final Map<String, List<Name>> byParts;
    private final Abbreviations abbreviations;
    private final NearNames near;
    private final SpellingKnowledge spelling;

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
        /** They are its parts in another order. */
        REORDERED,
        /** They are the label shortened. */
        ABBREVIATED,
        /** They are, without words of praise or preparation. */
        WITHOUT_PRAISE,
        /** They are, but for a slip of type or scanner. */
        MISPRINT,
        /** They are spelt nearly so. */
        NEAR,
        /** They hold the label. */
        PART
    }

    private Matching(
            Map<String, List<Name>> byKey,
            Map<String, List<Name>> byParts,
            Abbreviations abbreviations,
            SpellingKnowledge spelling) {
        this.byKey = byKey;
        this.byParts = byParts;
        this.abbreviations = abbreviations;
        this.spelling = spelling;
        this.near =
                new NearNames(
                        byKey.keySet().stream().sorted().toList(),
                        spelling.rules(),
                        spelling.costs());
    }

    static Matching of(Map<String, List<Label>> labels, SpellingKnowledge spelling) {
        Map<String, List<Name>> byKey = new HashMap<>();
        Map<String, List<Name>> byParts = new HashMap<>();
        Abbreviations abbreviations = new Abbreviations(spelling.contractions());
        new TreeMap<>(labels)
                .forEach(
                        (sense, names) -> {
                            for (Label label : names) {
                                List<String> words = Words.of(label.text());
                                String key = key(label.text(), words);
                                if (key.isEmpty()) {
                                    continue;
                                }
                                Name name = new Name(sense, label);
                                byKey.computeIfAbsent(key, k -> new ArrayList<>()).add(name);
                                byParts.computeIfAbsent(parts(words), k -> new ArrayList<>())
                                        .add(name);
                                abbreviations.add(words, name);
                            }
                        });
        return new Matching(byKey, byParts, abbreviations, spelling);
    }

    /** Returns the key of a name; “thé” is no article, though it is one without its accent. */
    private static String key(String printed, List<String> words) {
        String key = Words.key(words);
        boolean accented = printed.chars().anyMatch(c -> c > 127);
        return key.isEmpty() && accented ? String.join("", words) : key;
    }

    /** Returns the parts of a name in the order of the alphabet, without what joins them. */
    private static String parts(List<String> words) {
        return words.stream()
                .filter(w -> !JOINTS.contains(w))
                .map(Words::singular)
                .sorted()
                .reduce("", (a, b) -> a + ' ' + b);
    }

    /** Returns the labels that a printed name may be; those that are surest only, if any are. */
    List<Hit> hits(String printed) {
        List<String> words = Words.of(printed);
        String key = key(printed, words);
        if (key.isEmpty()) {
            return List.of();
        }
        List<String> plain = words.stream().filter(w -> !spelling.praise().contains(w)).toList();
        List<Supplier<List<Hit>>> sure =
                List.of(
                        () -> exact(key, 1, How.SAME),
                        () -> reordered(words, 0.985),
                        () -> abbreviations.find(printed, 0.97),
                        () -> praised(words, plain));
        for (Supplier<List<Hit>> way : sure) {
            List<Hit> hits = way.get();
            if (!hits.isEmpty()) {
                return hits;
            }
        }
        List<Hit> hits = new ArrayList<>(misprints(key));
        if (plain.size() < words.size() && !plain.isEmpty()) {
            hits.addAll(near(Words.key(plain), 0.99));
        }
        hits.addAll(near(key, 1));
        turned(printed, words, hits);
        hits.addAll(inside(plain.isEmpty() ? words : plain));
        return hits;
    }

    private List<Hit> praised(List<String> words, List<String> plain) {
        if (plain.isEmpty() || plain.size() == words.size()) {
            return List.of();
        }
        List<Hit> hits = exact(Words.key(plain), 0.97, How.WITHOUT_PRAISE);
        return hits.isEmpty() ? reordered(plain, 0.955) : hits;
    }

    private List<Hit> reordered(List<String> words, double likeness) {
        return byParts.getOrDefault(parts(words), List.of()).stream()
                .map(name -> new Hit(name, likeness, How.REORDERED))
                .toList();
    }

    private List<Hit> exact(String key, double likeness, How how) {
        return byKey.getOrDefault(key, List.of()).stream()
                .map(name -> new Hit(name, likeness, how))
                .toList();
    }

    private List<Hit> misprints(String key) {
        List<Hit> hits = new ArrayList<>();
        for (String mended : spelling.misprints().mended(key)) {
            hits.addAll(exact(mended, 0.95, How.MISPRINT));
        }
        return hits;
    }

    private List<Hit> near(String key, double factor) {
        List<Hit> hits = new ArrayList<>();
        for (NearNames.Near one : near.to(key, NEAR)) {
            byKey.get(one.key())
                    .forEach(n -> hits.add(new Hit(n, one.likeness() * factor, How.NEAR)));
        }
        return hits;
    }

    /** Adds what is near to the words in another order, where nothing was near as they stand. */
    private void turned(String printed, List<String> words, List<Hit> hits) {
        double best = hits.stream().mapToDouble(Hit::likeness).max().orElse(0);
        int n = words.size();
        if (best >= CLEAR || n < 2 || n > MOST_TURNED) {
            return;
        }
        int comma = printed.indexOf(',');
        int before = comma < 0 ? 0 : Words.of(printed.substring(0, comma)).size();
        for (int at = 1; at < n; at++) {
            if (before == 0 || at == before) {
                List<String> order = new ArrayList<>(words.subList(at, n));
                order.addAll(words.subList(0, at));
                hits.addAll(near(Words.key(order), before == 0 ? 0.955 : 0.985));
            }
        }
    }

    /** Labels that stand whole within the words; the longest, and among equals the last, first. */
    private List<Hit> inside(List<String> words) {
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
