package org.stillroom.ingredients;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.stillroom.ingredients.spelling.Words;

/** Finds phrases in running words, whatever their number, hyphens and articles. */
final class Phrases<T> {

    private static final int LONGEST = 5;

    /** No phrase reaches over a stop. */
    private static final Pattern CLAUSES = Pattern.compile("[.;:!?()]\\s");

    private final Map<String, List<T>> byKey = new HashMap<>();

    /** What a phrase stands for, with the words of it that were found. */
    record Found<T>(T what, String words) {}

    void add(String phrase, T what) {
        byKey.computeIfAbsent(Words.key(Words.of(phrase)), k -> new ArrayList<>()).add(what);
    }

    /** Returns everything that is named, in the order of the text. */
    List<Found<T>> in(String text) {
        List<Found<T>> found = new ArrayList<>();
        for (String clause : CLAUSES.split(text)) {
            collect(Words.of(clause), found);
        }
        return found;
    }

    private void collect(List<String> words, List<Found<T>> found) {
        for (int from = 0; from < words.size(); from++) {
            if (Words.isArticle(words.get(from))) {
                continue;
            }
            StringBuilder key = new StringBuilder();
            for (int to = from; to < words.size() && to < from + LONGEST; to++) {
                Words.append(key, words.get(to));
                String phrase = String.join(" ", words.subList(from, to + 1));
                byKey.getOrDefault(key.toString(), List.of())
                        .forEach(what -> found.add(new Found<>(what, phrase)));
            }
        }
    }
}
