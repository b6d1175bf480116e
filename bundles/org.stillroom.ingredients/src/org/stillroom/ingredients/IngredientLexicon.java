package org.stillroom.ingredients;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.stillroom.ingredients.spelling.Words;

/**
 * Finds the longest name of an ingredient that starts at a word of a folded text.
 *
 * <p>Plural endings, hyphens, blanks inside a name and articles do not matter; misspellings are
 * found only where the thesaurus lists them. Names of other languages than the text’s are left out,
 * but for Latin and French, which English books use; so are common words that are names in one trade
 * alone (“bark”).
 */
public final class IngredientLexicon {

    private static final int PREFIX = 2;
    private static final Set<String> COUNTED =
            Set.of(
                    "lump", "lumps", "piece", "pieces", "slice", "slices", "sprig", "sprigs",
                    "bunch", "cube", "cubes", "pinch", "stick", "sticks", "blade", "blades",
                    "block", "leaf", "bottle", "scoop", "knob", "knobs", "square", "squares",
                    "race", "races", "cake", "branch", "quarter", "wedge", "strip", "dish", "cone",
                    "hunk", "chunk", "print", "pat", "nut", "walnut", "pod", "pods", "quill",
                    "quills", "bouquet");
    private static final Set<String> READ_EVERYWHERE = Set.of("en", "la", "fr");

    private final Map<String, List<String>> sensesByKey;
    private final Set<String> prefixes;
    private final int mostWords;

    private IngredientLexicon(Map<String, List<String>> sensesByKey, int mostWords) {
        this.sensesByKey = sensesByKey;
        this.mostWords = mostWords;
        this.prefixes = new HashSet<>();
        sensesByKey.keySet().forEach(k -> prefixes.add(prefix(k)));
    }

    /**
     * A name that was found.
     *
     * @param senses ids of the senses that the name may have, in the order of the thesaurus;
     *     {@link Thesaurus#find} ranks them for a time and place
     * @param tokens how many words of the text it takes
     */
    public record Match(List<String> senses, int tokens) {

        /** Keeps the list unchangeable. */
        public Match {
            senses = List.copyOf(senses);
        }
    }

    static IngredientLexicon of(Map<String, List<Label>> labels, String language) {
        Map<String, LinkedHashSet<String>> senses = new HashMap<>();
        int most = 1;
        for (Map.Entry<String, List<Label>> sense : labels.entrySet()) {
            for (Label label : sense.getValue()) {
                List<String> words = Words.of(label.text());
                String key = Words.key(words);
                if (key.isEmpty() || !isRead(label, language) || isMeasured(words)) {
                    continue;
                }
                senses.computeIfAbsent(key, k -> new LinkedHashSet<>()).add(sense.getKey());
                most = Math.max(most, words.size());
            }
        }
        Map<String, List<String>> byKey = new HashMap<>();
        senses.forEach((key, ids) -> byKey.put(key, List.copyOf(ids)));
        return new IngredientLexicon(byKey, most);
    }

    /** “Lump of sugar” is a measure and a name to the reader, not a name. */
    private static boolean isMeasured(List<String> words) {
        return words.size() > 2 && words.get(1).equals("of") && COUNTED.contains(words.get(0));
    }

    /** Names that mean an ingredient in one trade alone are too common words to be looked for. */
    private static boolean isRead(Label label, String text) {
        return label.validity().trades().isEmpty()
                && (label.language().equals(text) || READ_EVERYWHERE.contains(label.language()));
    }

    /**
     * Returns the longest name that starts at a word.
     *
     * @param tokens words as {@link org.stillroom.model.text.Folding} folds them; a token that holds
     *     a hyphen may stand for several words, punctuation alone ends a name
     * @param at the word to start at; an article starts no name
     */
    public Optional<Match> match(List<String> tokens, int at) {
        StringBuilder key = new StringBuilder(32);
        List<String> best = List.of();
        int taken = 0;
        for (int n = 0; n < mostWords + 2 && at + n < tokens.size(); n++) {
            String token = tokens.get(at + n);
            boolean article = Words.isArticle(token);
            if (article && n == 0 || !append(key, token)) {
                break;
            }
            if (n == 0 && !prefixes.contains(prefix(key.toString()))) {
                break;
            }
            List<String> found = article ? null : sensesByKey.get(key.toString());
            if (found != null) {
                best = found;
                taken = n + 1;
            }
        }
        return taken == 0 ? Optional.empty() : Optional.of(new Match(best, taken));
    }

    private static boolean append(StringBuilder key, String token) {
        boolean letters = true;
        for (int i = 0; i < token.length(); i++) {
            letters &= Character.isLetter(token.charAt(i));
        }
        if (letters) {
            Words.append(key, token);
            return !token.isEmpty();
        }
        List<String> words = Words.split(token);
        words.forEach(w -> Words.append(key, w));
        return !words.isEmpty();
    }

    private static String prefix(String key) {
        return key.length() <= PREFIX ? key : key.substring(0, PREFIX);
    }

    /** Returns how many different names it knows. */
    public int size() {
        return sensesByKey.size();
    }

    /** Returns every name that starts at one of the words, each as long as it can be. */
    List<Match> all(List<String> words) {
        List<Match> all = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            match(words, i).ifPresent(all::add);
        }
        return all;
    }
}
