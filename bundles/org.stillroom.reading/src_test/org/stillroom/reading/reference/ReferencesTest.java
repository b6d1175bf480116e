package org.stillroom.reading.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Mark;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;
import org.stillroom.reading.Reader;

/** References between recipes of invented pages. */
class ReferencesTest {

    private static final Reader READER = Reader.standard();

    private static final String PAGE =
            """
            1. WHARF COCKTAIL.

            Two dashes of gum, one dash of bitters, one jigger of whiskey, a \
            piece of lemon-peel. Stir with ice.

            2. OLD-FASHIONED HOLLAND GIN COCKTAIL.

            One lump of sugar, two dashes of bitters, one \
            jigger of gin.

            """;

    private static List<Reading> read(String text) {
        Source source =
                new Source(
                        "page", Bibliography.titled("page"), SourceText.of(text), marks(text), "");
        return READER.read(source, List.of(), Progress.SILENT).readings();
    }

    /** Marks each recipe, so that only what refers to what is tried here. */
    private static List<Mark> marks(String text) {
        List<Mark> marks = new ArrayList<>();
        Matcher head = Pattern.compile("(?m)^\\d+\\. [A-Z .-]+[A-Z0-9]\\.$").matcher(text);
        int start = -1;
        while (head.find()) {
            if (start >= 0) {
                marks.add(recipe(text, start, head.start()));
            }
            start = head.start();
        }
        marks.add(recipe(text, start, text.length()));
        return marks;
    }

    private static Mark recipe(String text, int start, int end) {
        int last = start + text.substring(start, end).stripTrailing().length();
        return new Mark(Mark.Kind.RECIPE, "recipe", new Span(start, last));
    }

    private static Reading third(String body) {
        List<Reading> readings = read(PAGE + "3. THIRD COOLER.\n\n" + body + "\n");
        assertEquals(3, readings.size(), readings.toString());
        return readings.get(2);
    }

    private static String lines(Reading reading) {
        return reading.allLines().stream()
                .map(l -> l.amount().quantity().map(q -> q + " ").orElse("") + l.ingredientName())
                .collect(Collectors.joining("; "));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Prepare same as Wharf Cocktail, using brandy.|page#1",
                "Made like Holland Gin Old-Fashioned Cocktail, with rum in place of gin.|page#2",
                "See No. 1, substituting brandy for whiskey.|page#1",
                "The same, but with rum.|page#2",
                "As the foregoing, leaving out the bitters.|page#2",
                "Ditto, with rum in place of gin.|page#2",
                "In the same way as the Wharf Cocktail, without gum.|page#1",
                "As the last but one, with brandy.|page#1"
            })
    void findsTheOtherRecipe(String body, String id) {
        Reading reading = third(body);
        assertTrue(reading.reference().isPresent(), body);
        assertEquals(List.of(id), reading.reference().get().chain(), body);
    }

    @Test
    void aReplacedIngredientKeepsTheAmount() {
        Reading reading = third("See No. 1, substituting brandy for whiskey.");
        assertTrue(lines(reading).contains("1 brandy"), lines(reading));
        assertFalse(lines(reading).contains("whiskey"), lines(reading));
        ReadingLine brandy =
                reading.inherited().stream()
                        .filter(l -> l.ingredientName().equals("brandy"))
                        .findFirst()
                        .orElseThrow();
        assertEquals("jigger", brandy.measure());
    }

    @Test
    void whatIsLeftOutIsGoneAndWhatIsAddedComes() {
        Reading reading =
                third(
                        "The same as Wharf Cocktail, leaving out the gum, and adding a dash of absinthe.");
        assertFalse(lines(reading).contains("gum"), lines(reading));
        assertTrue(lines(reading).contains("1 absinthe"), lines(reading));
        assertEquals(2, reading.reference().orElseThrow().edits().size());
    }

    @Test
    void followsAChainAndShowsIt() {
        List<Reading> readings =
                read(
                        PAGE
                                + "3. THIRD COOLER.\n\nSee No. 1, substituting brandy for whiskey.\n\n"
                                + "4. FOURTH COOLER.\n\nSame as Third Cooler, without bitters.\n");
        Reading last = readings.get(3);
        assertEquals(List.of("page#3", "page#1"), last.reference().orElseThrow().chain());
        assertTrue(lines(last).contains("1 brandy"), lines(last));
        assertFalse(lines(last).contains("bitters"), lines(last));
    }

    @Test
    void aReferenceThatLeadsNowhereIsADoubt() {
        Reading reading = third("See Lighthouse Cocktail, using brandy.");
        assertFalse(reading.reference().orElseThrow().isResolved());
        assertTrue(
                reading.doubts().stream().anyMatch(d -> d.weight() == 1),
                reading.doubts().toString());
    }

    @Test
    void aCircleEnds() {
        List<Reading> readings =
                read(
                        "1. UP CUP.\n\nSee Down Cup, with a glass of rum.\n\n"
                                + "2. DOWN CUP.\n\nSee Up Cup, with a glass of gin.\n");
        assertEquals(2, readings.size());
        assertTrue(
                readings.stream()
                        .flatMap(r -> r.doubts().stream())
                        .anyMatch(d -> d.reason().contains("back to this recipe")));
    }

    @Test
    void aRecipeOfItsOwnIsNoReference() {
        Reading reading =
                third("One jigger of rum, the same quantity of sherry, and sugar; fill with ice.");
        assertTrue(reading.reference().isEmpty(), reading.reference().toString());
    }

    @Test
    void aLongRowOfDittosEnds() {
        StringBuilder page = new StringBuilder(PAGE);
        for (int i = 3; i < 1500; i++) {
            page.append(i)
                    .append(". CUP NO. ")
                    .append(i)
                    .append(".\n\nDitto, with rum in place of gin.\n\n");
        }
        List<Reading> readings = read(page.toString());
        Reading last = readings.get(readings.size() - 1);
        assertTrue(last.reference().orElseThrow().isResolved());
        assertTrue(last.reference().orElseThrow().chain().size() <= 24);
    }
}
