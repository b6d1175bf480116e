package org.stillroom.lineage.names;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The words in drinks' names that say little, read from the file beside the class. */
final class NameWords {

    private static final String FILE = "data/name-words.tsv";

    /** Loaded on first use, once, and never changed. */
    private static final class Holder {
        static final Map<String, Entry> WORDS = load();
    }

    private record Entry(double weight, Optional<String> drinkClass) {}

    private NameWords() {}

    /** Returns how much a folded word counts, 0 to 1. */
    static double weight(String word) {
        Entry entry = Holder.WORDS.get(word);
        return entry == null ? 1 : entry.weight;
    }

    /** Returns the kind of drink that a folded word stands for. */
    static Optional<String> drinkClass(String word) {
        Entry entry = Holder.WORDS.get(word);
        return entry == null ? Optional.empty() : entry.drinkClass;
    }

    private static Map<String, Entry> load() {
        try (InputStream in = NameWords.class.getResourceAsStream(FILE)) {
            List<String> lines =
                    new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
            Map<String, Entry> words = new HashMap<>();
            for (String line : lines) {
                if (line.startsWith("#") || line.startsWith("word\t")) {
                    continue;
                }
                String[] cells = line.split("\t", -1);
                Optional<String> drinkClass = Optional.of(cells[2]).filter(c -> !c.isEmpty());
                words.put(cells[0], new Entry(Double.parseDouble(cells[1]), drinkClass));
            }
            return Map.copyOf(words);
        } catch (IOException e) {
            throw new UncheckedIOException(FILE + " cannot be read", e);
        }
    }
}
