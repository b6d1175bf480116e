package org.stillroom.workbench.library;

import java.util.List;
import java.util.Locale;
import org.stillroom.ingredients.Sense;
import org.stillroom.inquiry.Knowledge;
import org.stillroom.measures.knowledge.MeasureWord;

/**
 * Words that a form completes.
 *
 * @param ingredients names of the thesaurus, sorted
 * @param measures words of measure, sorted
 */
record Completions(List<String> ingredients, List<String> measures) {
    private static final int MOST = 12;

    static Completions of(Knowledge knowledge) {
        return new Completions(
                knowledge.thesaurus().senses().values().stream()
                        .map(Sense::label)
                        .map(l -> l.toLowerCase(Locale.ROOT))
                        .distinct()
                        .sorted()
                        .toList(),
                knowledge.measures().words().all().stream()
                        .map(MeasureWord::word)
                        .distinct()
                        .sorted()
                        .toList());
    }

    /** Returns names that begin with the words, then those with a word that does. */
    List<String> ingredients(String typed) {
        String words = typed.strip().toLowerCase(Locale.ROOT);
        if (words.isEmpty()) {
            return List.of();
        }
        return java.util.stream.Stream.concat(
                        ingredients.stream().filter(i -> i.startsWith(words)),
                        ingredients.stream().filter(i -> i.contains(" " + words)))
                .distinct()
                .limit(MOST)
                .toList();
    }
}
