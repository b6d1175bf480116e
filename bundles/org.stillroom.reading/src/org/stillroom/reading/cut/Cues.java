package org.stillroom.reading.cut;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.stillroom.model.source.Section;

/** The words by which a recipe, a title and a story are told apart, read from the data files. */
final class Cues {

    static final int MEASURE = 1;
    static final int NUMBER = 2;
    static final int VERB = 4;
    static final int INGREDIENT = 8;
    static final int VESSEL = 16;
    static final int QUALIFIER = 32;
    static final int NARRATIVE = 64;
    static final int REFERENCE = 128;
    static final int DRINK = 256;
    static final int LABEL = 512;

    private static final Map<String, Integer> KINDS =
            Map.of(
                    "measure", MEASURE,
                    "number", NUMBER,
                    "verb", VERB,
                    "ingredient", INGREDIENT,
                    "vessel", VESSEL,
                    "qualifier", QUALIFIER,
                    "narrative", NARRATIVE,
                    "reference", REFERENCE,
                    "drink", DRINK,
                    "label", LABEL);

    private static final Cues HOUSE = load();

    private final Map<String, Integer> words;
    private final List<Map.Entry<String, Section.Kind>> headings;

    private Cues(Map<String, Integer> words, List<Map.Entry<String, Section.Kind>> headings) {
        this.words = Map.copyOf(words);
        this.headings = List.copyOf(headings);
    }

    /** Returns the cues that the program ships. */
    static Cues house() {
        return HOUSE;
    }

    /** Returns the kinds of a folded word as a set of bits, 0 where it is no cue. */
    int kinds(String word) {
        return words.getOrDefault(word, 0);
    }

    /** Tells whether a folded word is a cue of a kind. */
    boolean is(String word, int kind) {
        return (kinds(word) & kind) != 0;
    }

    /** Returns what a folded heading stands over, where it is one of the known ones. */
    Optional<Section.Kind> heading(String folded) {
        return headings.stream()
                .filter(e -> begins(folded, e.getKey()))
                .max((a, b) -> Integer.compare(a.getKey().length(), b.getKey().length()))
                .map(Map.Entry::getValue);
    }

    private static boolean begins(String heading, String words) {
        return heading.startsWith(words)
                && (heading.length() == words.length()
                        || !Character.isLetterOrDigit(heading.charAt(words.length())));
    }

    private static Cues load() {
        Map<String, Integer> words = new HashMap<>();
        for (String[] row : rows("cues.tsv")) {
            int kind = KINDS.get(row[1]);
            words.merge(row[0], kind, (a, b) -> a | b);
            if (kind == MEASURE || kind == INGREDIENT || kind == VESSEL || kind == DRINK) {
                words.merge(row[0] + "s", kind, (a, b) -> a | b);
            }
        }
        List<Map.Entry<String, Section.Kind>> headings = new ArrayList<>();
        for (String[] row : rows("headings.tsv")) {
            String kind = row[1].toUpperCase(Locale.ROOT);
            headings.add(Map.entry(row[0], Section.Kind.valueOf(kind)));
        }
        return new Cues(words, headings);
    }

    private static List<String[]> rows(String file) {
        List<String[]> rows = new ArrayList<>();
        try (InputStream in = Cues.class.getResourceAsStream(file);
                BufferedReader reader =
                        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            boolean header = true;
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                if (line.isBlank() || line.startsWith("#")) {
                    continue;
                }
                if (!header) {
                    rows.add(line.split("\t"));
                }
                header = false;
            }
        } catch (IOException e) {
            throw new UncheckedIOException("The data file " + file + " cannot be read", e);
        }
        return rows;
    }
}
