package org.stillroom.ingredients;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IngredientLexiconTests {

    private final IngredientLexicon lexicon = Thesaurus.shipped().lexicon();

    private static List<String> tokens(String text) {
        return List.of(text.split(" "));
    }

    @ParameterizedTest
    @CsvSource({
        "orange-flower water and sugar, 0, 2, orange-flower-water",
        "orange flower water, 0, 3, orange-flower-water",
        "old tom gin, 0, 3, old-tom-gin",
        "pine apples, 0, 2, pineapple",
        "pineapples, 0, 1, pineapple",
        "yolk of an egg beaten, 0, 4, egg-yolk",
        "two lumps loaf sugar, 2, 2, loaf-sugar",
        "rock and rye, 0, 3, rock-and-rye",
        "juice of lemons, 0, 3, lemon-juice",
    })
    void findsTheLongestName(String text, int at, int taken, String sense) {
        IngredientLexicon.Match match = lexicon.match(tokens(text), at).orElseThrow();
        assertEquals(taken, match.tokens());
        assertTrue(match.senses().contains(sense), () -> match.toString());
    }

    @ParameterizedTest
    @CsvSource({"the lemon, 0", "shake well, 0", "of gin, 0", "2 eggs, 0", "bark, 0", "fine, 0"})
    void findsNothingWhereNoNameStarts(String text, int at) {
        assertTrue(lexicon.match(tokens(text), at).isEmpty());
    }

    @Test
    void theEndOfTheTextIsNoTrouble() {
        assertTrue(lexicon.match(List.of(), 0).isEmpty());
        assertEquals(1, lexicon.match(tokens("with gin"), 1).orElseThrow().tokens());
    }

    @Test
    void anotherLanguageHasItsOwnNames() {
        assertTrue(lexicon.match(tokens("zucker"), 0).isEmpty());
        assertEquals(
                List.of("sugar"),
                Thesaurus.shipped()
                        .lexicon("de")
                        .match(tokens("zucker"), 0)
                        .orElseThrow()
                        .senses());
    }
}
