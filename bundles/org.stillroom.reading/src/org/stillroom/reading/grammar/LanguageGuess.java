package org.stillroom.reading.grammar;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.stillroom.model.text.Folding;

/**
 * Tells the language of a passage by its commonest small words.
 *
 * <p>The book's own language, or English where none is declared, is assumed unless another language
 * has clearly more of such words: two more than English, four more than a declared language.
 */
public final class LanguageGuess {

    private static final Map<String, Set<String>> SMALL_WORDS =
            Map.of(
                    "en",
                            Set.of(
                                    "the", "of", "and", "with", "a", "into", "in", "it", "to",
                                    "add", "one", "two", "half", "fill", "ice", "glass", "is",
                                    "then", "well", "an", "or"),
                    "fr",
                            Set.of(
                                    "le",
                                    "la",
                                    "les",
                                    "de",
                                    "du",
                                    "des",
                                    "un",
                                    "une",
                                    "et",
                                    "dans",
                                    "avec",
                                    "au",
                                    "aux",
                                    "verre",
                                    "sucre",
                                    "faites",
                                    "versez",
                                    "ajoutez",
                                    "glace",
                                    "sur",
                                    "deux",
                                    "en",
                                    "eau",
                                    "par",
                                    "cuilleree",
                                    "d'eau",
                                    "que",
                                    "mettez",
                                    "remplir"),
                    "de",
                            Set.of(
                                    "der", "die", "das", "und", "mit", "ein", "eine", "einen", "in",
                                    "dem", "den", "zu", "auf", "man", "loffel", "zucker", "wasser",
                                    "glas", "eis", "von", "zwei", "wird", "gieszt", "giesst", "gut",
                                    "nach", "liter", "saft", "einer"),
                    "es",
                            Set.of(
                                    "el",
                                    "la",
                                    "los",
                                    "las",
                                    "de",
                                    "del",
                                    "y",
                                    "con",
                                    "un",
                                    "una",
                                    "en",
                                    "se",
                                    "azucar",
                                    "agua",
                                    "vaso",
                                    "copa",
                                    "hielo",
                                    "cucharada",
                                    "por",
                                    "dos",
                                    "al",
                                    "sirvase",
                                    "agreguese",
                                    "gotas",
                                    "jugo",
                                    "limon",
                                    "unas",
                                    "medio"));

    /** How much of a passage is looked at, and at how many places of a book. */
    private static final int LONGEST = 1_200;

    private static final int PLACES = 24;

    private static final int FEWEST = 6;
    private static final double CLEAR = 1.3;
    private static final int LEAD_OVER_ENGLISH = 2;
    private static final int LEAD_OVER_DECLARED = 4;

    private LanguageGuess() {}

    /**
     * Returns the language of a passage: “en”, “fr”, “de”, “es”, or the declared one.
     *
     * @param declared the language that the book declares
     */
    public static String of(String passage, Optional<String> declared) {
        Map<String, Integer> hits = new HashMap<>();
        count(passage.length() > LONGEST ? passage.substring(0, LONGEST) : passage, hits);
        String best = declared.orElse("en");
        int lead = best.equals("en") ? LEAD_OVER_ENGLISH : LEAD_OVER_DECLARED;
        int most = hits.getOrDefault(best, 0) + lead - 1;
        for (String language : Knowledge.LANGUAGES) {
            if (hits.getOrDefault(language, 0) > most) {
                best = language;
                most = hits.get(language);
            }
        }
        return best;
    }

    /**
     * Returns the language that a whole book is in, unless too few small words tell it.
     *
     * @param text the book's words
     */
    public static Optional<String> ofBook(String text) {
        Map<String, Integer> hits = new HashMap<>();
        places(text).forEach(place -> count(place, hits));
        return Knowledge.LANGUAGES.stream()
                .max(Comparator.comparingInt(l -> hits.getOrDefault(l, 0)))
                .filter(l -> hits.getOrDefault(l, 0) >= FEWEST)
                .filter(l -> clearlyMost(l, hits));
    }

    private static boolean clearlyMost(String language, Map<String, Integer> hits) {
        return hits.entrySet().stream()
                .filter(e -> !e.getKey().equals(language))
                .allMatch(e -> e.getValue() * CLEAR < hits.get(language));
    }

    /** Returns the languages that parts of a book are in, beside English. */
    public static Set<String> foreign(String text, Optional<String> declared) {
        Set<String> languages = new TreeSet<>();
        places(text).forEach(place -> languages.add(of(place, declared)));
        languages.remove("en");
        languages.retainAll(Knowledge.LANGUAGES);
        return languages;
    }

    /** Returns places spread evenly over a book. */
    private static List<String> places(String text) {
        int step = Math.max(LONGEST, text.length() / PLACES);
        return IntStream.iterate(0, at -> at < text.length(), at -> at + step)
                .mapToObj(at -> text.substring(at, Math.min(text.length(), at + LONGEST)))
                .toList();
    }

    private static void count(String passage, Map<String, Integer> hits) {
        for (String word : Folding.foldWord(passage).split("[^a-z']+")) {
            SMALL_WORDS.forEach(
                    (language, words) -> {
                        if (words.contains(word)) {
                            hits.merge(language, 1, Integer::sum);
                        }
                    });
        }
    }
}
