package org.stillroom.ingredients.spelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingTests {

    @ParameterizedTest
    @CsvSource({
        "Pine-Apples, pine apple, true",
        "Curaçao, curacao, true",
        "hen's eggs, hens egg, true",
        "the yolk of an egg, yolk of egg, true",
        "cherries, cherry, true",
        "peaches, peach, true",
        "mint leaves, mint leaf, true",
        "glass, glas, false",
        "ſugar, sugar, true",
        "gin, rum, false",
        "cloves, clove, true",
        "limes, lime, true",
    })
    void equalNamesHaveOneKey(String one, String other, boolean equal) {
        assertEquals(equal, Words.key(Words.of(one)).equals(Words.key(Words.of(other))));
    }

    /** Damerau's four slips; distances worked out by hand. */
    @ParameterizedTest
    @CsvSource({
        "gin, gin, 0",
        "gin, gni, 0.5",
        "gin, gun, 1",
        "gin, gi, 1",
        "gin, gains, 2",
        "rum, rumm, 0.2",
        "'', gin, 3",
    })
    void slipsCostWhatTheyShould(String one, String other, double cost) {
        EditCost costs = new EditCost.Builder().build();
        assertEquals(cost, costs.between(one, other, 99), 1e-12);
        assertEquals(cost, costs.between(other, one, 99), 1e-12);
    }

    /** Without transposed or doubled letters it is Levenshtein’s distance, by commons-text. */
    @Test
    void plainSlipsAgreeWithALibrary() {
        EditCost costs = new EditCost.Builder().build();
        LevenshteinDistance library = LevenshteinDistance.getDefaultInstance();
        Random random = new Random(7);
        for (int i = 0; i < 5000; i++) {
            String one = word(random, "abcdefgh");
            String other = word(random, "qrstuvwx");
            assertEquals(library.apply(one, other), costs.between(one, other, 99), 1e-9);
        }
    }

    /** Letters in the order of the alphabet: none doubled, none that could be exchanged. */
    private static String word(Random random, String letters) {
        StringBuilder word = new StringBuilder();
        for (char c : letters.toCharArray()) {
            if (random.nextBoolean()) {
                word.append(c);
            }
        }
        return word.toString();
    }

    @Test
    void confusedLettersCostLess() {
        EditCost costs = new EditCost.Builder().slip("f", "s", 0.25).build();
        assertEquals(0.25, costs.between("fugar", "sugar", 99), 1e-12);
        assertEquals(1, costs.between("bugar", "sugar", 99), 1e-12);
    }

    @Test
    void rulesBringOldSpellingsTogether() {
        SpellingRules rules =
                new SpellingRules(
                        List.of(
                                SpellingRules.Rule.of("ck", "k"),
                                SpellingRules.Rule.of("y", "i"),
                                SpellingRules.Rule.of("e$", "")));
        assertEquals(rules.skeleton("arabicke"), rules.skeleton("arabik"));
        assertEquals("wine".replace("ine", "in"), rules.skeleton("wynne"));
        assertEquals("e", SpellingRules.Rule.of("e$", "").apply("e"));
    }

    @Test
    void misprintsAreMendedOneByOneAndAllAtOnce() {
        Misprints misprints = new Misprints(List.of(new Misprints.Pair("c", "e")));
        assertTrue(misprints.mended("bccr").containsAll(List.of("becr", "bcer", "beer")));
    }
}
