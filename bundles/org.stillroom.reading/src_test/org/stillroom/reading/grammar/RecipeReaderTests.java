package org.stillroom.reading.grammar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Step;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/** Whole recipes, terse and in prose; all invented. */
final class RecipeReaderTests {

    private static final RecipeReader READER = RecipeReader.standard();

    static Reading read(String words) {
        SourceText text = SourceText.of(words);
        Witness witness =
                new Witness(
                        "book",
                        1,
                        Optional.empty(),
                        "A Drink",
                        new Span(0, 0),
                        text.span(),
                        text.span(),
                        Optional.empty());
        return READER.read(text, witness, Circumstances.UNKNOWN);
    }

    private static List<String> names(Reading reading) {
        return reading.lines().stream().map(ReadingLine::ingredientName).toList();
    }

    private static List<String> verbs(Reading reading) {
        return reading.steps().stream().map(Step::verb).toList();
    }

    @Test
    void readsATerseRecipeOfABar() {
        Reading r =
                read(
                        "Mixing-glass half-full fine ice, three dashes gum-syrup, one-half pony"
                                + " maraschino, one jigger rum. Shake well, strain into cocktail-glass; a twist of"
                                + " lemon-peel on top.");
        assertEquals(List.of("fine ice", "gum-syrup", "maraschino", "rum", "lemon-peel"), names(r));
        assertEquals(List.of("shake", "strain"), verbs(r));
        assertEquals("cocktail-glass", r.vessel().orElseThrow().word().replace(' ', '-'));
        assertEquals(LineKind.GARNISH, r.lines().get(4).kind());
        assertEquals(List.of(0, 1, 2, 3), r.steps().get(0).lines());
    }

    @Test
    void readsAHouseholdRecipeInProse() {
        Reading r =
                read(
                        "Pare four lemons very thin, and let the rinds steep in a quart of rum for"
                                + " two days. Dissolve a pound and a half of loaf sugar in three pints of water,"
                                + " add it to the rum with the juice of the lemons, strain, and bottle it."
                                + " Sufficient for a party of twelve.");
        assertTrue(
                names(r).containsAll(List.of("lemons", "rum", "loaf sugar", "water")),
                names(r).toString());
        assertEquals(
                Rational.of(3, 2),
                r.lines().stream()
                        .filter(l -> l.ingredientName().equals("loaf sugar"))
                        .findFirst()
                        .orElseThrow()
                        .amount()
                        .quantity()
                        .orElseThrow());
        assertTrue(
                verbs(r).containsAll(List.of("pare", "dissolve", "add", "strain", "bottle")),
                verbs(r).toString());
        assertEquals(Rational.of(12), r.serves().orElseThrow().low());
    }

    @Test
    void whatIsForbiddenOrOnlyCoolsIsNoLine() {
        Reading r =
                read(
                        "Mix a bottle of claret with a glass of sherry, without ice or sugar; set"
                                + " the jug in a pail of ice for an hour.");
        assertEquals(List.of("claret", "sherry"), names(r));
    }

    @Test
    void sharesThatDoNotAddUpAreDoubtedWithAProposal() {
        Reading r = read("½ gin\n⅓ vermouth\n⅓ sherry\nShake and strain.");
        assertTrue(r.doubts().get(0).reason().contains("1 1/6"), r.doubts().toString());
        assertTrue(r.doubts().get(0).reason().contains("1/3 gin"), r.doubts().toString());
        assertTrue(
                read("½ gin\n¼ vermouth\n¼ sherry").doubts().stream()
                        .noneMatch(d -> d.reason().contains("add up")));
    }

    @Test
    void alternativesFollowTheLineTheyReplace() {
        Reading r = read("One wine-glass of brandy or rum, two dashes of bitters.");
        assertEquals(LineKind.MEASURED, r.lines().get(0).kind());
        assertEquals(LineKind.ALTERNATIVE, r.lines().get(1).kind());
        assertEquals("rum", r.lines().get(1).ingredientName());
    }

    @Test
    void aMeasureThatIsLeftOutIsTakenFromThePhraseBefore() {
        Reading r =
                read(
                        "Two dashes of gum, one of maraschino; the juice of six lemons and four"
                                + " oranges.");
        assertEquals("dash", r.lines().get(1).measure());
        assertEquals("juice-of", r.lines().get(3).measure());
    }

    @Test
    void ingredientsHaveTheSensesOfTheThesaurus() {
        Reading r = read("One jigger of rum.");
        assertTrue(!r.lines().get(0).ingredient().orElseThrow().senses().isEmpty());
    }

    @Test
    void wordsWithoutARecipeGiveADoubtAndNoLine() {
        Reading r = read("The harbour was quiet that year, and nobody wrote of it.");
        assertTrue(r.lines().isEmpty());
        assertTrue(!r.doubts().isEmpty());
    }
}
