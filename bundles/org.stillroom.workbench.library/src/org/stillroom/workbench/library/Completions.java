package org.stillroom.workbench.library;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.stillroom.ingredients.Candidate;
import org.stillroom.ingredients.Sense;
import org.stillroom.inquiry.Knowledge;
import org.stillroom.measures.knowledge.MeasureWord;
import org.stillroom.model.source.Circumstances;

/**
 * Words that a form completes.
 *
 * @param ingredients names of the thesaurus, sorted
 * @param measures words of measure, sorted
 * @param meanings what a name may mean then and there, likeliest first
 */
record Completions(
        List<String> ingredients, List<String> measures, Function<String, List<Sense>> meanings) {
    private static final int MOST = 12;
    private static final int MOST_MEANINGS = 8;

    /** Returns the words that are known, and what names mean in a book. */
    static Completions of(Knowledge knowledge, Circumstances where) {
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
                        .toList(),
                name ->
                        knowledge.thesaurus().find(name, where).stream()
                                .map(Candidate::sense)
                                .distinct()
                                .limit(MOST_MEANINGS)
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
