package org.stillroom.reading.grammar;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
        String start = passage.length() > 1200 ? passage.substring(0, 1200) : passage;
        for (String word : Folding.foldWord(start).split("[^a-z']+")) {
            SMALL_WORDS.forEach(
                    (language, words) -> {
                        if (words.contains(word)) {
                            hits.merge(language, 1, Integer::sum);
                        }
                    });
        }
        String best = declared.orElse("en");
        int lead = declared.isPresent() ? LEAD_OVER_DECLARED : LEAD_OVER_ENGLISH;
        int most = hits.getOrDefault(best, 0) + lead - 1;
        for (String language : Knowledge.LANGUAGES) {
            if (hits.getOrDefault(language, 0) > most) {
                best = language;
                most = hits.get(language);
            }
        }
        return best;
    }
}
