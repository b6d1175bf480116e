package org.stillroom.reading.reference;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.stillroom.reading.cut.TitleKey;

/** Tells which ingredients may stand for one another when only one of the two is named. */
final class Categories {

    private static final Set<String> STRONG = Set.of("spirit", "wine", "malt");
    private static final Categories HOUSE = load();

    private final Map<String, String> byWord;

    private Categories(Map<String, String> byWord) {
        this.byWord = Map.copyOf(byWord);
    }

    static Categories house() {
        return HOUSE;
    }

    /** Returns the category of a name, by its last word that has one. */
    Optional<String> of(String name) {
        String folded = name.replace('ç', 'c').replace('’', '\'');
        String[] words = folded.split("[ ,]+");
        if (folded.contains("ginger ale") || folded.contains("soda water")) {
            return Optional.of("fizz");
        }
        for (int i = words.length - 1; i >= 0; i--) {
            String category = byWord.get(words[i]);
            if (category != null) {
                return Optional.of(category);
            }
        }
        return Optional.empty();
    }

    /** Tells whether one category may take the place of another. */
    static boolean alike(String a, String b) {
        return a.equals(b);
    }

    /** Tells whether a category is the drink's strength: spirit, wine, malt liquor. */
    static boolean isStrong(String category) {
        return STRONG.contains(category);
    }

    /** Tells how well two names agree, 0 where they do not, 3 where they are the same words. */
    static int agreement(String asked, String there) {
        Set<String> a = words(asked);
        Set<String> b = words(there);
        if (a.isEmpty() || b.isEmpty()) {
            return 0;
        }
        if (a.equals(b)) {
            return 3;
        }
        if (b.containsAll(a) || a.containsAll(b)) {
            return 2;
        }
        String head = last(asked);
        return !head.isEmpty() && b.contains(head) && head.equals(last(there)) ? 1 : 0;
    }

    private static Set<String> words(String name) {
        Set<String> all = new java.util.TreeSet<>(TitleKey.of(name.replace('-', ' ')).words());
        List.of("fresh", "fine", "good", "best", "old", "half", "juice", "rind", "little")
                .forEach(
                        w -> {
                            if (all.size() > 1) {
                                all.remove(w);
                            }
                        });
        return all;
    }

    private static String last(String name) {
        String[] all = name.strip().split("[ -]+");
        Set<String> one = TitleKey.of(all[all.length - 1]).words();
        return one.isEmpty() ? "" : one.iterator().next();
    }

    private static Categories load() {
        Map<String, String> words = new HashMap<>();
        try (InputStream in = Categories.class.getResourceAsStream("categories.tsv");
                BufferedReader reader =
                        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                String[] row = line.split("\t");
                if (!line.startsWith("#") && row.length > 1 && !row[0].equals("word")) {
                    words.put(row[0], row[1]);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("The data file categories.tsv cannot be read", e);
        }
        return new Categories(words);
    }
}
