package org.stillroom.reading.idiom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.Anchor;
import org.stillroom.model.text.Span;
import org.stillroom.reading.BookReading;
import org.stillroom.reading.PlainBook;
import org.stillroom.reading.Reader;

class IdiomTest {

    private static final String BOOK =
            recipe("Anchor Sling", "2 spoons of sugar.\n1 jigger gin.\n2 B.S. gum.")
                    + recipe("Keel Fizz", "1 spoon of sugar.\n1 jigger rum.\n1 B.S. lemon juice.")
                    + recipe(
                            "Capstan Sour", "3 spoons of honey.\n1 jigger rye.\n3 B.S. lime juice.")
                    + recipe("Bowsprit", "1 spoon of orgeat.\n1 jigger port.\n1 B.S. brandy.");
    private static final Reader READER = Reader.standard();

    private Source source = PlainBook.of(BOOK);
    private final List<Assertion> decisions = new ArrayList<>();

    private static String recipe(String title, String lines) {
        return "# " + title + "\n\n" + lines + "\nShake and strain.\n\n";
    }

    private void decide(String kind, String words, Map<String, String> values) {
        Optional<Anchor> anchor = Optional.empty();
        if (!words.isEmpty()) {
            int at = source.text().toString().indexOf(words);
            anchor = Optional.of(Anchor.of(source.text(), new Span(at, at + words.length())));
        }
        decisions.add(
                new Assertion(
                        "%04d".formatted(decisions.size()),
                        "",
                        "",
                        kind,
                        "book.md",
                        anchor,
                        new TreeMap<>(values),
                        Optional.empty()));
    }

    private BookReading read() {
        return READER.read(source, decisions, Progress.SILENT);
    }

    private List<Proposal> proposals() {
        List<Assertion> rules = decisions.stream().filter(d -> !d.kind().equals("line")).toList();
        return new IdiomLearner(READER.read(source, rules, Progress.SILENT), decisions).propose();
    }

    private ReadingLine line(int recipe, int number) {
        return read().readings().get(recipe).lines().get(number);
    }

    @Test
    void threeCorrectionsOfOneMeasureProposeARule() {
        decide("line", "2 spoons of sugar", Map.of("measure", "teaspoon"));
        decide("line", "1 spoon of sugar", Map.of("measure", "teaspoon"));
        assertEquals(List.of(), proposals());
        decide("line", "3 spoons of honey", Map.of("measure", "teaspoon"));
        Proposal proposal = proposals().get(0);
        assertEquals("“spoon” as a measure is the teaspoon.", proposal.idiom().sentence());
        assertEquals("spoon", line(3, 0).measure());
        decide(Idiom.KIND, "", proposal.idiom().decision());
        assertEquals("teaspoon", line(3, 0).measure());
        assertEquals("jigger", line(3, 1).measure());
        assertEquals(List.of(), proposals());
    }

    @Test
    void oneConfirmedLineInFourSpeaksAgainstARule() {
        decide("line", "2 spoons of sugar", Map.of("measure", "teaspoon"));
        decide("line", "1 spoon of sugar", Map.of("measure", "teaspoon"));
        decide("line", "3 spoons of honey", Map.of("measure", "teaspoon"));
        decide("line", "1 spoon of orgeat", Map.of("action", "right"));
        assertEquals(1, proposals().get(0).against());
        decide("line", "1 spoon of orgeat", Map.of("measure", "tablespoon"));
        assertEquals(List.of(), proposals());
    }

    @Test
    void anAbbreviationThatWasNotReadIsLearned() {
        decide("line", "2 B.S. gum", added("2", "gum"));
        decide("line", "1 B.S. lemon juice", added("1", "lemon juice"));
        decide("line", "3 B.S. lime juice", added("3", "lime juice"));
        Idiom idiom = proposals().get(0).idiom();
        assertEquals("“b.s.” stands for “barspoon”.", idiom.sentence());
        decide(Idiom.KIND, "", idiom.decision());
        ReadingLine line = line(3, 2);
        assertEquals("barspoon", line.measure());
        assertEquals("brandy", line.ingredientName());
        assertEquals("1 B.S. brandy", line.text());
        assertEquals(line.text(), source.text().slice(line.span()));
        Span name = line.ingredient().orElseThrow().span();
        assertEquals("brandy", source.text().slice(name));
        assertEquals("1 B.S.", source.text().slice(line.amountSpan().orElseThrow()).strip());
    }

    private static Map<String, String> added(String quantity, String ingredient) {
        return Map.of("quantity", quantity, "measure", "barspoon", "ingredient", ingredient);
    }

    @Test
    void aDeclinedHabitIsNotProposedAgain() {
        decide("line", "2 spoons of sugar", Map.of("measure", "teaspoon"));
        decide("line", "1 spoon of sugar", Map.of("measure", "teaspoon"));
        decide("line", "3 spoons of honey", Map.of("measure", "teaspoon"));
        Idiom idiom = proposals().get(0).idiom();
        decide(Idiom.DECLINED, "", idiom.decision());
        assertEquals(List.of(), proposals());
        assertEquals("spoon", line(3, 0).measure());
    }

    @Test
    void headsThatAreNoRecipesAreLearnedByTheirFirstWord() {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < 5; i++) {
            words.append("# Parlour Cup ")
                    .append(i)
                    .append("\n\nOne jigger of gin and a dash of gum.\n\n");
            words.append(recipe("Anchor Sling " + i, "1 jigger gin."));
        }
        source = PlainBook.of(words.toString());
        int before = read().readings().size();
        for (int i = 0; i < 3; i++) {
            decide("cut", "Parlour Cup " + i, Map.of("action", "not-a-recipe"));
        }
        List<Assertion> cuts = List.copyOf(decisions);
        decisions.clear();
        BookReading plain = read();
        decisions.addAll(cuts);
        Idiom idiom = new IdiomLearner(plain, decisions).propose().get(0).idiom();
        assertEquals("A head that begins “parlour cup” is no recipe.", idiom.sentence());
        decide(Idiom.KIND, "", idiom.decision());
        assertEquals(before - 5, read().readings().size());
    }

    @Test
    void aRuleIsKeptInItsDecision() {
        Idiom idiom =
                new Idiom(
                        Idiom.On.INGREDIENT,
                        "gum",
                        new TreeMap<>(Map.of("ingredient", "gum syrup")));
        decide(Idiom.KIND, "", idiom.decision());
        assertEquals(Optional.of(idiom), Idiom.of(decisions.get(0)));
        assertEquals("“gum” is gum syrup.", idiom.sentence());
        decide("line", "2 B.S. gum", added("2", "gum"));
        assertTrue(read().unplaced().isEmpty());
    }
}
