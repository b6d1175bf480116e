package org.stillroom.reading.table;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.model.number.Rational;
import org.stillroom.model.text.Folding;

/**
 * The numbers, sizes and measures of a language other than English, as the grammar has them, and how
 * its numbers are put into figures.
 */
final class Tongue {

    /** English, which the vocabulary of measures itself is written in. */
    static final Tongue ENGLISH = new Tongue();

    private static final String VULGAR = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
    private static final int[][] PARTS = {
        {1, 2}, {1, 3}, {2, 3}, {1, 4}, {3, 4}, {1, 5}, {2, 5}, {3, 5}, {4, 5}, {1, 6}, {5, 6},
        {1, 8}, {3, 8}, {5, 8}, {7, 8}
    };

    private final Map<String, Rational> numbers = new HashMap<>();
    private final Map<String, Rational> fractions = new HashMap<>();
    private final Map<String, String> measures = new HashMap<>();
    private final Map<String, String> sizes = new HashMap<>();
    private final Set<String> articles = new HashSet<>();
    private final Set<String> ands = new HashSet<>();
    private final Set<String> ranges = new HashSet<>();
    private final Set<String> before = new HashSet<>();
    private final Set<String> marks = new HashSet<>();
    private final Set<String> ofs = new HashSet<>();

    private Tongue() {}

    /** Reads the words of “fr”, “de” or “es”; any other language is taken as English. */
    static Tongue of(String language) {
        if (!Set.of("fr", "de", "es").contains(language)) {
            return ENGLISH;
        }
        Tongue tongue = new Tongue();
        String file = "/org/stillroom/reading/grammar/" + language + ".tsv";
        try (InputStream in = Tongue.class.getResourceAsStream(file);
                BufferedReader reader =
                        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            reader.lines()
                    .filter(l -> !l.isBlank() && !l.startsWith("#"))
                    .map(l -> l.split("\t", -1))
                    .forEach(c -> tongue.add(c[0], Folding.foldWord(c[1]), c[2]));
        } catch (IOException e) {
            throw new UncheckedIOException("The vocabulary " + file + " cannot be read", e);
        }
        return tongue;
    }

    private void add(String kind, String form, String value) {
        switch (kind) {
            case "number" -> numbers.put(form, number(value));
            case "fraction" -> fractions.put(form, number(value));
            case "measure" -> {
                measures.putIfAbsent(form, value);
                marks.add(form.split("[ -]")[0]);
            }
            case "of" -> {
                ofs.add(form);
                marks.add(form);
            }
            case "verb" -> marks.add(form);
            case "size" -> sizes.put(form, value);
            case "article", "the" -> articles.add(form);
            case "and" -> ands.add(form);
            case "range" -> ranges.add(form);
            case "about", "full" -> before.add(form);
            default -> {}
        }
    }

    private static Rational number(String value) {
        return Rational.parse(value).orElseThrow();
    }

    /** Words that English has too, and that so tell nothing. */
    private static final Set<String> SHARED =
            Set.of(
                    "a",
                    "an",
                    "as",
                    "or",
                    "on",
                    "in",
                    "die",
                    "den",
                    "per",
                    "six",
                    "part",
                    "parts",
                    "once",
                    "double",
                    "pint",
                    "cube",
                    "cubes",
                    "jigger",
                    "jiggers",
                    "dash",
                    "quart",
                    "l",
                    "g",
                    "gr",
                    "cl",
                    "dl",
                    "kg",
                    "kilo",
                    "siphon",
                    "poisson",
                    "pot",
                    "par",
                    "gross",
                    "grosse",
                    "petit",
                    "centimes",
                    "litre",
                    "litres",
                    "filet",
                    "des",
                    "bouquet",
                    "coup",
                    "cent",
                    "gut",
                    "prise",
                    "medium",
                    "plus",
                    "u",
                    "e",
                    "o",
                    "y",
                    "d'",
                    "l'",
                    "&",
                    "trait",
                    "cafe",
                    "the",
                    "dates",
                    "for",
                    "sal");

    /** Returns how many of the words tell that they are of this language. */
    int telling(List<String> words) {
        int telling = 0;
        for (String word : words) {
            boolean ours = isNumber(word) || isBefore(word) || marks.contains(word);
            telling += ours && !SHARED.contains(word) ? 1 : 0;
        }
        return telling;
    }

    /** Returns spellings of measures with their canonical words. */
    Map<String, String> measures() {
        return Map.copyOf(measures);
    }

    boolean isNumber(String word) {
        return numbers.containsKey(word) || fractions.containsKey(word);
    }

    /** Tells whether two words are a part and what joins it to its whole: “quarts de”. */
    boolean isPartOf(String part, String of) {
        boolean joins = ofs.contains(of) || of.equals("d");
        return joins && fractions.containsKey(part);
    }

    /** Tells whether a word stands inside a number: “zwei und ein halb”. */
    boolean isInside(String word) {
        return ands.contains(word) || ranges.contains(word);
    }

    /** Tells whether a word may stand before a measure and is no number. */
    boolean isBefore(String word) {
        return articles.contains(word) || before.contains(word) || sizes.containsKey(word);
    }

    /** Returns words before a measure with numbers in figures and sizes in English. */
    String english(String words) {
        if (this == ENGLISH) {
            return words;
        }
        Figures figures = new Figures();
        List<String> size = new ArrayList<>();
        for (String word : words.strip().split(" +")) {
            if (sizes.containsKey(word)) {
                size.add(sizes.get(word));
            } else if (!word.isEmpty()) {
                figures.take(word);
            }
        }
        return (figures.text() + ' ' + String.join(" ", size)).strip();
    }

    /** Adds up the words of one number, or of the two ends of a range. */
    private final class Figures {
        private final List<String> done = new ArrayList<>();
        private Rational sum = Rational.ZERO;
        private boolean some;
        private boolean and;

        void take(String word) {
            if (ranges.contains(word) || word.matches("[-–—]")) {
                end();
            } else if (ands.contains(word)) {
                and = true;
            } else if (fractions.containsKey(word)) {
                fraction(fractions.get(word));
            } else if (numbers.containsKey(word)) {
                boolean one = and && numbers.get(word).equals(Rational.ONE);
                plus(one ? Rational.ZERO : numbers.get(word));
            } else if (isPlain(word)) {
                plus(plain(word));
            }
        }

        /** “Drei viertel” are a product, “zwei und ein halb” and “1 ½” a sum. */
        private void fraction(Rational part) {
            boolean times = some && !and;
            sum = times ? sum.times(part) : sum.plus(part);
            some = true;
            and = false;
        }

        private void plus(Rational more) {
            sum = sum.plus(more);
            some = true;
        }

        private void end() {
            if (some) {
                done.add(sum.numerator() + "/" + sum.denominator());
            }
            sum = Rational.ZERO;
            some = false;
            and = false;
        }

        String text() {
            end();
            return String.join(" to ", done);
        }
    }

    private static boolean isPlain(String word) {
        return word.matches(
                "\\d{1,6}(?:[.,]\\d{1,4})?(?:[/⁄]\\d{1,3})?[" + VULGAR + "]?|[" + VULGAR + "]");
    }

    private static Rational plain(String word) {
        int at = VULGAR.indexOf(word.charAt(word.length() - 1));
        Rational part = at < 0 ? Rational.ZERO : Rational.of(PARTS[at][0], PARTS[at][1]);
        String digits = at < 0 ? word : word.substring(0, word.length() - 1);
        return digits.isEmpty()
                ? part
                : Rational.parse(digits.replace(',', '.').replace('⁄', '/'))
                        .orElse(Rational.ONE)
                        .plus(part);
    }
}
