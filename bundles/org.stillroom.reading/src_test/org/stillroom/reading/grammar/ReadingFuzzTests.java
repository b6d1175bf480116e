package org.stillroom.reading.grammar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.stillroom.model.number.Rational;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.Folding;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;
import org.stillroom.reading.Reader;

/**
 * Reads spoilt books: the miniature books of the tests with seeded changes, and nonsense.
 *
 * <p>The system property {@code stillroom.fuzz} sets the number of inputs.
 */
class ReadingFuzzTests {

    private static final int INPUTS = Integer.getInteger("stillroom.fuzz", 150);
    private static final Reader READER = Reader.standard();
    private static final Vocabulary WORDS = Vocabulary.of("en");

    private static final List<String> BOOKS =
            List.of(
                    "bar-cards.txt",
                    "bold-markdown.md",
                    "centred.txt",
                    "colons.txt",
                    "dashes.txt",
                    "italic-side-heads.txt",
                    "long-s.txt",
                    "numbered-lists.txt",
                    "running-prose.txt",
                    "scanned-noise.txt",
                    "sentence-case.txt",
                    "terse-capitals.txt");

    /** What scanners, keyboards and file systems put into texts. */
    private static final String[] NOISE = {
        "½",
        "⅔",
        "1/0",
        "0/0",
        "℥",
        "ʒiv",
        "\u0000",
        "\u0007",
        "\r",
        "\n",
        "\n\n",
        "\t",
        "🍋",
        "𝟙",
        "e\u0301",
        "\u200B",
        "\uFEFF",
        "\u202E",
        "ſ",
        "ﬁ",
        "¬",
        "\u00AD",
        "-\n",
        "—",
        "...",
        "{12}",
        "[Pg 3]",
        "%",
        "^",
        "}",
        "|",
        "’",
        "\"",
        "do.",
        "ditto",
        "same",
        "each",
        "of",
        "Half",
        "½ do.",
        "99999999999999999999",
        "1-2",
        "3 or 4",
        "½½",
        "٣",
        "Ⅳ",
        "not",
        "See No. 1",
        "as above"
    };

    /** Letters that scanners confuse. */
    private static final String[][] CONFUSED = {
        {"l", "1"},
        {"o", "0"},
        {"h", "b"},
        {"m", "rn"},
        {"e", "c"},
        {"s", "f"},
        {"½", "%"},
        {" ", ""}
    };

    private static String book(int number) {
        String name = BOOKS.get(number % BOOKS.size());
        try (InputStream in =
                Objects.requireNonNull(
                        Reader.class.getResourceAsStream("cut/books/" + name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(name, e);
        }
    }

    private static String input(int seed) {
        Random random = new Random(seed);
        StringBuilder text = new StringBuilder(seed % 10 == 9 ? nonsense(random) : book(seed));
        int changes = 1 + random.nextInt(40);
        for (int i = 0; i < changes && text.length() > 2; i++) {
            change(text, random);
        }
        return text.toString();
    }

    private static String nonsense(Random random) {
        StringBuilder text = new StringBuilder();
        int length = random.nextInt(3000);
        while (text.length() < length) {
            int c = random.nextInt(Character.MAX_CODE_POINT + 1);
            boolean half = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
            text.appendCodePoint(half || random.nextInt(3) == 0 ? ' ' + random.nextInt(96) : c);
        }
        return text.toString();
    }

    private static void change(StringBuilder text, Random random) {
        int at = place(text, random);
        switch (random.nextInt(7)) {
            case 0 -> text.insert(at, NOISE[random.nextInt(NOISE.length)]);
            case 1 -> text.delete(at, place(text, random, at, 30));
            case 2 -> text.insert(at, text.substring(at, place(text, random, at, 300)));
            case 3 -> confuse(text, random, at);
            case 4 -> text.insert(at, "x".repeat(1 + random.nextInt(3000)));
            case 5 -> text.delete(at, place(text, random, at, 400));
            default -> text.insert(at, " " + NOISE[random.nextInt(NOISE.length)] + " ");
        }
    }

    private static void confuse(StringBuilder text, Random random, int from) {
        String[] pair = CONFUSED[random.nextInt(CONFUSED.length)];
        int at = text.indexOf(pair[0], from);
        if (at >= 0) {
            text.replace(at, at + pair[0].length(), pair[1]);
        }
    }

    /** Returns a place that divides no pair of surrogates. */
    private static int place(StringBuilder text, Random random) {
        return whole(text, random.nextInt(text.length()));
    }

    private static int place(StringBuilder text, Random random, int from, int most) {
        return whole(text, Math.min(text.length(), from + random.nextInt(most)));
    }

    private static int whole(StringBuilder text, int at) {
        boolean inside = at > 0 && at < text.length() && Character.isLowSurrogate(text.charAt(at));
        return inside ? at - 1 : at;
    }

    private static List<Reading> read(String text) {
        Source source =
                new Source("book", Bibliography.titled("book"), SourceText.of(text), List.of(), "");
        List<Reading> readings = READER.read(source, List.of(), Progress.SILENT).readings();
        readings.forEach(r -> check(source.text(), r));
        return readings;
    }

    private static void check(SourceText text, Reading reading) {
        Span all = text.span();
        assertTrue(all.contains(reading.witness().span()), "the recipe lies inside the text");
        List<Span> taken = new ArrayList<>();
        for (ReadingLine line : reading.lines()) {
            assertTrue(all.contains(line.span()), "the line lies inside the text");
            line.ingredient().ifPresent(i -> assertTrue(all.contains(i.span())));
            line.amountSpan().ifPresent(s -> assertTrue(all.contains(s)));
            if (line.kind() != LineKind.ALTERNATIVE) {
                assertTrue(taken.stream().noneMatch(line.span()::overlaps), "lines stand apart");
                taken.add(line.span());
            }
        }
        if (reading.reference().isEmpty()) {
            reading.lines().forEach(l -> assertTrue(isPrinted(l, text), () -> shown(l)));
        }
        reading.steps().forEach(s -> assertTrue(all.contains(s.span())));
        reading.doubts().forEach(d -> assertTrue(all.contains(d.span())));
    }

    /** Tells whether the number of a line stands on the page, or needs no sign there. */
    private static boolean isPrinted(ReadingLine line, SourceText text) {
        boolean understood =
                line.amount().quantity().isEmpty()
                        || line.amount().quantity().get().equals(Rational.ONE);
        if (understood) {
            return true;
        }
        return line.amountSpan().map(text::slice).filter(ReadingFuzzTests::tellsNumber).isPresent();
    }

    private static boolean tellsNumber(String printed) {
        String joined = printed.replaceAll("-\\R", "");
        String folded = Folding.fold(joined).folded();
        boolean sign =
                folded.codePoints()
                                .anyMatch(c -> Character.isDigit(c) || Character.getType(c) == 11)
                        || printed.contains("%");
        if (sign) {
            return true;
        }
        for (String word : folded.replaceAll("[℥ʒ℈℔♏]", " ").split("[^\\p{L}]+")) {
            boolean number =
                    Set.of("number", "fraction", "multiple", "latin", "times", "part-full").stream()
                                    .anyMatch(k -> WORDS.has(k, word))
                            || WORDS.likeNumber(word).isPresent()
                            || WORDS.cut(word, WORDS::knows) > 0
                            || Roman.parse(word).isPresent()
                            || word.startsWith("o") && Roman.parse(word.substring(1)).isPresent();
            if (number) {
                return true;
            }
        }
        return WORDS.table("times").has(folded.split(" ")[0]) || folded.contains("parts full");
    }

    private static String shown(ReadingLine line) {
        return "no number on the page for " + line.amount() + " in “" + line.text() + "”";
    }

    @Test
    void spoiltBooksAreReadWithoutFault() {
        IntStream.range(0, INPUTS)
                .parallel()
                .forEach(
                        seed -> {
                            try {
                                read(input(seed));
                            } catch (RuntimeException | AssertionError e) {
                                throw new AssertionError("seed " + seed, e);
                            }
                        });
    }

    @Test
    void lineEndsOfSpoiltBooksDoNotMatter() {
        for (int seed = 0; seed < INPUTS / 10; seed++) {
            String text = input(seed).replace("\r", "");
            List<String> unix = words(read(text));
            assertEquals(unix, words(read(text.replace("\n", "\r\n"))), "seed " + seed);
            assertEquals(unix, words(read(text.replace("\n", "\r"))), "seed " + seed);
        }
    }

    @Test
    void neitherThreadsNorLocaleMatter() {
        List<List<String>> alone =
                IntStream.range(0, INPUTS / 10).mapToObj(s -> words(read(input(s)))).toList();
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            List<List<String>> together =
                    IntStream.range(0, INPUTS / 10)
                            .parallel()
                            .mapToObj(s -> words(read(input(s))))
                            .toList();
            assertEquals(alone, together);
        } finally {
            Locale.setDefault(before);
        }
    }

    /** What was read, line by line, without the places, which line ends may move. */
    private static List<String> words(List<Reading> readings) {
        List<String> all = new ArrayList<>();
        for (Reading reading : readings) {
            all.add(reading.witness().title());
            for (ReadingLine line : reading.allLines()) {
                all.add(
                        line.kind()
                                + " "
                                + line.amount()
                                + " "
                                + line.measure()
                                + " "
                                + line.ingredientName()
                                + " "
                                + line.confidence());
            }
            reading.steps().forEach(s -> all.add(s.verb() + s.lines()));
        }
        return all;
    }
}
