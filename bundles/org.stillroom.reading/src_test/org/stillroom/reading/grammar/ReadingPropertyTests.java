package org.stillroom.reading.grammar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/** What holds of every text, tried on random ones; the seed is printed with a failure. */
final class ReadingPropertyTests {

    private static final RecipeReader READER = RecipeReader.standard();
    private static final int ROUNDS = 3000;
    private static final String[] WORDS = {
        "one",
        "two",
        "half",
        "a",
        "the",
        "of",
        "and",
        "or",
        "½",
        "1",
        "1-2",
        "1/0",
        "0",
        "⅓",
        "℥ij",
        "ʒss",
        "jigger",
        "wine-glass",
        "dashes",
        "lemons",
        "juice",
        "rind",
        "rum",
        "gin",
        "ice",
        "fill",
        "with",
        "up",
        "two-thirds",
        "full",
        "shake",
        "strain",
        "into",
        "cocktail-glass",
        ",",
        ".",
        ";",
        "(",
        ")",
        "\n",
        "\n\n",
        "—",
        "to",
        "taste",
        "grate",
        "nutmeg",
        "on",
        "top",
        "equal",
        "parts",
        "each",
        "same",
        "quantity",
        "ditto",
        "without",
        "dozen",
        "{93}",
        "[Pg 9]",
        "_large_",
        "ſugar",
        "gum- ",
        "’s",
        "%",
        "|/2",
        "l/2",
        "99999999999999999999",
        "1,000",
        "🍸",
        "é",
        "\u00AD",
        "-",
        "–",
        "for",
        "six",
        "persons",
        "\t",
        "3ij",
        "O",
        "ij",
        "aa",
        "no."
    };

    private static String words(Random random) {
        StringBuilder text = new StringBuilder();
        int length = random.nextInt(40);
        for (int i = 0; i < length; i++) {
            text.append(WORDS[random.nextInt(WORDS.length)]);
            text.append(random.nextInt(8) == 0 ? "" : " ");
        }
        return text.toString();
    }

    private static Reading read(String words, int before) {
        SourceText text = SourceText.of("🍸é ".repeat(before) + words + " END");
        int start = 3 * before;
        Span body = new Span(start, text.length() - 4);
        Witness witness =
                new Witness(
                        "book",
                        1,
                        Optional.empty(),
                        "",
                        new Span(0, 0),
                        body,
                        body,
                        Optional.empty());
        Reading reading = READER.read(text, witness, Circumstances.UNKNOWN);
        check(text, body, reading);
        return reading;
    }

    private static void check(SourceText text, Span body, Reading reading) {
        List<Span> taken = new ArrayList<>();
        for (ReadingLine line : reading.lines()) {
            assertTrue(body.contains(line.span()), "span inside the body");
            assertEquals(text.slice(line.span()), line.text());
            line.amountSpan().ifPresent(s -> assertTrue(body.contains(s)));
            line.ingredient().ifPresent(i -> assertTrue(body.contains(i.span())));
            if (line.kind() != LineKind.ALTERNATIVE) {
                assertTrue(taken.stream().noneMatch(s -> s.overlaps(line.span())), "disjoint");
                taken.add(line.span());
            }
        }
        reading.steps()
                .forEach(
                        s -> {
                            assertTrue(body.contains(s.span()));
                            s.lines()
                                    .forEach(n -> assertTrue(n >= 0 && n < reading.lines().size()));
                        });
        reading.doubts().forEach(d -> assertTrue(body.contains(d.span())));
        reading.vessels().forEach(v -> assertTrue(body.contains(v.span())));
    }

    @Test
    void noTextThrowsAndSpansStayInsideAndApart() {
        for (int seed = 0; seed < ROUNDS; seed++) {
            String words = words(new Random(seed));
            try {
                read(words, seed % 3);
            } catch (RuntimeException | AssertionError e) {
                throw new AssertionError("seed " + seed + ": “" + words + "”", e);
            }
        }
    }

    @Test
    void lineEndsDoNotMatter() {
        for (int seed = 0; seed < 300; seed++) {
            String words = words(new Random(seed));
            Reading unix = read(words, 0);
            Reading windows = read(words.replace("\n", "\r\n"), 0);
            assertEquals(unix.lines(), windows.lines(), "seed " + seed);
            assertEquals(unix.steps(), windows.steps(), "seed " + seed);
        }
    }

    @Test
    void theLocaleDoesNotMatter() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.ROOT);
            Reading root = read("FILL with ICE, TWO DASHES of GIN, 1½ JIGGERS RUM", 0);
            Locale.setDefault(Locale.forLanguageTag("tr"));
            Reading turkish = read("FILL with ICE, TWO DASHES of GIN, 1½ JIGGERS RUM", 0);
            assertEquals(root, turkish);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void severalThreadsReadTheSame() {
        List<String> texts = new ArrayList<>();
        for (int seed = 0; seed < 400; seed++) {
            texts.add(words(new Random(seed)));
        }
        List<Reading> alone = texts.stream().map(t -> read(t, 0)).toList();
        List<Reading> together = texts.parallelStream().map(t -> read(t, 0)).toList();
        assertEquals(alone, together);
    }
}
