package org.stillroom.ingredients;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.stillroom.ingredients.spelling.Words;
import org.stillroom.model.text.Folding;

/**
 * Finds the names that a name shortened with full stops stands for: “Fr. verm.”, “cort. aurant.”,
 * “W. I. lime juice”.
 */
final class Abbreviations {

    private static final Pattern BLANKS = Pattern.compile("[\\s\\-]+|(?<=\\.)(?=\\p{L})");

    private final Map<Integer, List<Entry>> byCount = new HashMap<>();

    private final Map<String, Set<String>> contractions;

    Abbreviations(Map<String, Set<String>> contractions) {
        this.contractions = contractions;
    }

    private record Entry(List<String> words, Matching.Name name) {}

    void add(List<String> whole, Matching.Name name) {
        List<String> words = whole.stream().filter(w -> !Matching.JOINTS.contains(w)).toList();
        if (words.isEmpty()) {
            return;
        }
        byCount.computeIfAbsent(words.size(), k -> new ArrayList<>()).add(new Entry(words, name));
    }

    /** Returns the labels of as many words of which the printed ones are beginnings. */
    List<Matching.Hit> find(String printed, double likeness) {
        if (printed.indexOf('.') < 0) {
            return List.of();
        }
        List<String> words = new ArrayList<>();
        List<Boolean> shortened = new ArrayList<>();
        for (String piece : BLANKS.split(Folding.foldWord(printed))) {
            for (String word : Words.split(piece)) {
                if (piece.endsWith(".") || !Matching.JOINTS.contains(word)) {
                    words.add(word);
                    shortened.add(piece.endsWith("."));
                }
            }
        }
        if (words.isEmpty()) {
            return List.of();
        }
        List<Matching.Hit> hits = new ArrayList<>();
        for (Entry entry : byCount.getOrDefault(words.size(), List.of())) {
            if (isShortFor(words, shortened, entry.words())) {
                hits.add(new Matching.Hit(entry.name(), likeness, Matching.How.ABBREVIATED));
            }
        }
        return hits;
    }

    private boolean isShortFor(List<String> words, List<Boolean> shortened, List<String> whole) {
        for (int i = 0; i < words.size(); i++) {
            boolean fits =
                    shortened.get(i)
                            ? whole.get(i).startsWith(words.get(i))
                                    || contractions
                                            .getOrDefault(words.get(i), Set.of())
                                            .contains(whole.get(i))
                            : Words.singular(whole.get(i)).equals(Words.singular(words.get(i)));
            if (!fits) {
                return false;
            }
        }
        return true;
    }
}
