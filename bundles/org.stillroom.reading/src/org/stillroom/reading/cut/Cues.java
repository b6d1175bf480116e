package org.stillroom.reading.cut;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.stillroom.model.source.Section;
import org.stillroom.reading.grammar.VocabularyRow;

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
    static final int CHORE = 1024;

    /** What a title names that is neither drunk nor eaten: ink, blacking, a liniment. */
    static final int HOUSEHOLD = 1 << 14;

    /** The past form of an order: “is strained”, “are added”. */
    static final int PARTICIPLE = 2048;

    private static final Map<String, Integer> KINDS =
            Map.ofEntries(
                    Map.entry("measure", MEASURE),
                    Map.entry("number", NUMBER),
                    Map.entry("verb", VERB),
                    Map.entry("ingredient", INGREDIENT),
                    Map.entry("vessel", VESSEL),
                    Map.entry("qualifier", QUALIFIER),
                    Map.entry("narrative", NARRATIVE),
                    Map.entry("reference", REFERENCE),
                    Map.entry("drink", DRINK),
                    Map.entry("label", LABEL),
                    Map.entry("chore", CHORE),
                    Map.entry("household", HOUSEHOLD),
                    Map.entry("participle", PARTICIPLE));

    /** Which classes of a language's vocabulary tell the same as which cues. */
    private static final Map<String, Integer> CLASSES =
            Map.of(
                    "measure", MEASURE,
                    "number", NUMBER,
                    "fraction", NUMBER,
                    "verb", VERB,
                    "fill-verb", VERB,
                    "head", INGREDIENT,
                    "substance", INGREDIENT,
                    "countable", INGREDIENT,
                    "vessel", VESSEL);

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

    /**
     * Returns these cues with the words of other languages, as the grammar has them.
     *
     * @param languages codes such as “fr”; English is there already
     */
    Cues with(Collection<String> languages) {
        Map<String, Integer> more = new HashMap<>(words);
        for (String language : languages) {
            for (VocabularyRow row : VocabularyRow.of(language)) {
                int kind = CLASSES.getOrDefault(row.kind(), 0);
                if (kind != 0 && row.form().length() > 1 && row.form().indexOf(' ') < 0) {
                    more.merge(row.form(), kind, (a, b) -> a | b);
                    more.putIfAbsent(row.form().replace("sz", "ss"), kind);
                    if (kind == MEASURE || kind == INGREDIENT) {
                        more.putIfAbsent(plural(row.form()), kind);
                    }
                }
            }
        }
        return new Cues(more, headings);
    }

    /** Returns the kinds of a folded word, or of the last part of a compound, as a set of bits. */
    int kinds(String word) {
        int kinds = words.getOrDefault(word, 0);
        int elided = kinds == 0 ? word.indexOf('\'') : -1;
        if (elided == 1 || elided == 2) {
            return words.getOrDefault(word.substring(elided + 1), 0);
        }
        int dash = kinds == 0 ? word.lastIndexOf('-') : -1;
        if (dash > 0) {
            int joined = words.getOrDefault(word.replace("-", ""), 0);
            return joined | words.getOrDefault(word.substring(dash + 1), 0);
        }
        return kinds;
    }

    /** Tells whether a folded word is a cue of a kind. */
    boolean is(String word, int kind) {
        return (kinds(word) & kind) != 0;
    }

    /** Returns what a folded heading stands over, where it is one of the known ones. */
    Optional<Section.Kind> heading(String folded) {
        String words = closeUp(folded);
        return headings.stream()
                .filter(e -> begins(words, e.getKey()))
                .max((a, b) -> Integer.compare(a.getKey().length(), b.getKey().length()))
                .map(Map.Entry::getValue);
    }

    /** Returns words whose letters are spaced out (“p a r t”) closed up. */
    private static String closeUp(String heading) {
        if (heading.length() < 5 || heading.charAt(1) != ' ' || heading.charAt(3) != ' ') {
            return heading;
        }
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < heading.length(); i++) {
            boolean between =
                    heading.charAt(i) == ' '
                            && i > 0
                            && i + 1 < heading.length()
                            && heading.charAt(i - 1) != ' '
                            && (i < 2 || heading.charAt(i - 2) == ' ')
                            && (i + 2 >= heading.length()
                                    || !Character.isLetter(heading.charAt(i + 2)));
            out.append(between ? "" : heading.charAt(i));
        }
        return out.toString().strip();
    }

    private static boolean begins(String heading, String words) {
        if (words.startsWith("*")) {
            return heading.contains(words.substring(1));
        }
        return heading.startsWith(words)
                && (heading.length() == words.length()
                        || !Character.isLetterOrDigit(heading.charAt(words.length())));
    }

    private static Cues load() {
        Map<String, Integer> words = new HashMap<>();
        for (String[] row : rows("cues.tsv")) {
            int kind = KINDS.get(row[1]);
            words.merge(row[0], kind, (a, b) -> a | b);
            if (kind == VERB) {
                participles(row[0]).forEach(p -> words.merge(p, PARTICIPLE, (a, b) -> a | b));
            }
            if (kind == MEASURE || kind == INGREDIENT || kind == VESSEL || kind == DRINK) {
                words.merge(plural(row[0]), kind, (a, b) -> a | b);
            }
        }
        List<Map.Entry<String, Section.Kind>> headings = new ArrayList<>();
        for (String[] row : rows("headings.tsv")) {
            String kind = row[1].toUpperCase(Locale.ROOT);
            headings.add(Map.entry(row[0], Section.Kind.valueOf(kind)));
        }
        return new Cues(words, headings);
    }

    /** Returns the regular past forms that a verb may have; one of them exists. */
    private static List<String> participles(String verb) {
        char last = verb.charAt(verb.length() - 1);
        return switch (last) {
            case 'e' -> List.of(verb + "d");
            case 'y' -> List.of(verb + "ed", verb.substring(0, verb.length() - 1) + "ied");
            default -> List.of(verb + "ed", verb + last + "ed");
        };
    }

    private static String plural(String word) {
        boolean hisses =
                word.endsWith("s")
                        || word.endsWith("sh")
                        || word.endsWith("ch")
                        || word.endsWith("x");
        return word + (hisses ? "es" : "s");
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
