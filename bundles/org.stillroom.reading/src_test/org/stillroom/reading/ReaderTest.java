package org.stillroom.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.number.Rational;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.Anchor;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/** Decisions about cuts and lines, and what holds for the reading of any text. */
class ReaderTest {

    private static final Reader READER = Reader.standard();

    private static final String BOOK =
            """
            ANCHOR COCKTAIL.

            Two dashes of bitters, one jigger of gin, one pony of vermouth. Stir with ice and strain.

            BALLAST SOUR.

            One jigger of rum, the juice of half a lemon, {12} one spoonful of sugar. Shake with ice.

            CAPSTAN CUP.

            One bottle of claret, one glass of sherry, two lemons sliced. Ice, and serve.
            """;

    private static Source source(String text) {
        return new Source(
                "book.md", Bibliography.titled("book"), SourceText.of(text), List.of(), "");
    }

    private static BookReading read(Assertion... decisions) {
        return READER.read(source(BOOK), List.of(decisions), Progress.SILENT);
    }

    private static Assertion decision(String kind, String words, String... values) {
        int at = BOOK.indexOf(words);
        Anchor anchor = Anchor.of(SourceText.of(BOOK), new Span(at, at + words.length()));
        Map<String, String> all = new TreeMap<>();
        for (int i = 0; i < values.length; i += 2) {
            all.put(values[i], values[i + 1]);
        }
        return new Assertion(
                "1-" + words.hashCode(),
                "2026-01-01T00:00:00Z",
                "A. Reader",
                kind,
                "book.md",
                Optional.of(anchor),
                new TreeMap<>(all),
                Optional.empty());
    }

    private static List<String> titles(BookReading reading) {
        return reading.readings().stream().map(r -> r.witness().title()).toList();
    }

    @Test
    void readsEveryRecipe() {
        BookReading reading = read();
        assertEquals(List.of("ANCHOR COCKTAIL", "BALLAST SOUR", "CAPSTAN CUP"), titles(reading));
        assertTrue(reading.problems().isEmpty());
        assertTrue(reading.readings().stream().noneMatch(r -> r.lines().isEmpty()));
    }

    @Test
    void aPageNumberInsideARecipeIsNoPartOfALine() {
        Reading sour = read().readings().get(1);
        assertTrue(
                sour.lines().stream()
                        .noneMatch(
                                l ->
                                        l.ingredientName().contains("12")
                                                || l.amount()
                                                        .quantity()
                                                        .filter(Rational.of(12)::equals)
                                                        .isPresent()),
                sour.lines().toString());
    }

    @Test
    void aRecipeCanBeTakenOut() {
        BookReading reading = read(decision("cut", "BALLAST SOUR", "action", "not-a-recipe"));
        assertEquals(List.of("ANCHOR COCKTAIL", "CAPSTAN CUP"), titles(reading));
        assertEquals(2, reading.readings().get(1).witness().ordinal());
        assertTrue(
                reading.sections().stream()
                        .anyMatch(
                                s ->
                                        reading.source()
                                                .text()
                                                .slice(s.span())
                                                .startsWith("BALLAST")));
    }

    @Test
    void twoRecipesCanBeJoined() {
        BookReading reading = read(decision("cut", "BALLAST SOUR", "action", "join"));
        assertEquals(List.of("ANCHOR COCKTAIL", "CAPSTAN CUP"), titles(reading));
        Span joined = reading.readings().get(0).witness().span();
        assertTrue(reading.source().text().slice(joined).endsWith("Shake with ice."));
    }

    @Test
    void aRecipeCanBeSplit() {
        BookReading reading =
                read(
                        decision(
                                "cut",
                                "one glass of sherry",
                                "action",
                                "split",
                                "title",
                                "Sherry Cup"));
        assertEquals(
                List.of("ANCHOR COCKTAIL", "BALLAST SOUR", "CAPSTAN CUP", "Sherry Cup"),
                titles(reading));
    }

    @Test
    void wordsCanBeMadeARecipe() {
        BookReading reading =
                read(
                        decision("cut", "BALLAST SOUR", "action", "not-a-recipe"),
                        decision(
                                "cut",
                                "one spoonful of sugar. Shake with ice.",
                                "action",
                                "recipe",
                                "title",
                                "Sugar"));
        assertEquals(List.of("ANCHOR COCKTAIL", "Sugar", "CAPSTAN CUP"), titles(reading));
    }

    @Test
    void aLineCanBeCorrected() {
        BookReading reading =
                read(
                        decision(
                                "line",
                                "one jigger of gin",
                                "quantity",
                                "1 1/2",
                                "measure",
                                "pony",
                                "ingredient",
                                "Old Tom gin"));
        ReadingLine line =
                reading.readings().get(0).lines().stream()
                        .filter(l -> l.ingredientName().equals("old tom gin"))
                        .findFirst()
                        .orElseThrow();
        assertEquals(Optional.of(Rational.of(3, 2)), line.amount().quantity());
        assertEquals("pony", line.measure());
        assertEquals(1, line.confidence().probability());
    }

    @Test
    void aCorrectionWhoseWordsAreGoneIsAProblem() {
        Assertion lost =
                new Assertion(
                        "9",
                        "2026-01-01T00:00:00Z",
                        "A. Reader",
                        "line",
                        "book.md",
                        Optional.of(new Anchor("nine pots of tar", "", "", new Span(5, 21))),
                        new TreeMap<>(Map.of("quantity", "2")),
                        Optional.empty());
        BookReading reading = READER.read(source(BOOK), List.of(lost), Progress.SILENT);
        assertEquals(1, reading.problems().size());
        assertEquals(read().readings(), reading.readings());
    }

    @Test
    void aDecisionTakenBackDoesNotHold() {
        Assertion cut = decision("cut", "BALLAST SOUR", "action", "not-a-recipe");
        Assertion back =
                new Assertion(
                        "2",
                        "2026-01-02T00:00:00Z",
                        "A. Reader",
                        Assertion.TAKEN_BACK,
                        "book.md",
                        Optional.empty(),
                        new TreeMap<>(),
                        Optional.of(cut.id()));
        assertEquals(3, read(cut, back).readings().size());
    }

    @Test
    void aPastedRecipeIsRead() {
        Reading titled =
                READER.readRecipe(
                        "Anchor Cocktail\n1 jigger gin\n2 dashes bitters", Circumstances.UNKNOWN);
        assertEquals("Anchor Cocktail", titled.witness().title());
        assertEquals(2, titled.lines().size(), titled.lines().toString());
        Reading bare = READER.readRecipe("1 jigger gin\n2 dashes bitters", Circumstances.UNKNOWN);
        assertEquals(2, bare.lines().size(), bare.lines().toString());
    }

    @Test
    void theWorkCanBeEnded() {
        Progress ended =
                new Progress() {
                    @Override
                    public void begin(String task, int steps) {
                        // not of interest here
                    }

                    @Override
                    public void step(int steps) {
                        // not of interest here
                    }

                    @Override
                    public boolean isCancelled() {
                        return true;
                    }
                };
        assertThrows(
                CancellationException.class, () -> READER.read(source(BOOK), List.of(), ended));
    }

    @Test
    void readsAlikeWhateverTheLineEnds() {
        BookReading plain = read();
        BookReading windows =
                READER.read(source(BOOK.replace("\n", "\r\n")), List.of(), Progress.SILENT);
        assertEquals(plain, windows);
    }

    @Test
    void everySpanLiesInsideTheTextWhateverTheTextIs() {
        for (int seed = 0; seed < 150; seed++) {
            Random random = new Random(seed);
            StringBuilder text = new StringBuilder(BOOK);
            for (int i = 0; i < 15; i++) {
                int at = random.nextInt(text.length());
                if (random.nextBoolean()) {
                    text.delete(at, Math.min(text.length() - 1, at + random.nextInt(20)));
                } else {
                    text.insert(
                            at,
                            List.of("½", "\n\n", " the same ", "\ud83c\udf4b", " for ", "{7}")
                                    .get(random.nextInt(6)));
                }
            }
            BookReading reading = READER.read(source(text.toString()), List.of(), Progress.SILENT);
            Span all = reading.source().text().span();
            for (Reading r : reading.readings()) {
                List<ReadingLine> lines = new ArrayList<>(r.lines());
                lines.addAll(r.inherited());
                for (ReadingLine line : lines) {
                    assertTrue(all.contains(line.span()), "seed " + seed + ": " + line);
                }
            }
        }
    }
}
