package org.stillroom.lineage.names;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.HashSet;
import java.util.Set;
import org.apache.commons.codec.language.Metaphone;
import org.apache.commons.codec.language.Nysiis;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class NameLikenessTests {

    private final NameLikeness likeness = new NameLikeness();

    private double between(String a, String b) {
        return likeness.between(NameForm.of(a), NameForm.of(b));
    }

    /**
     * The worked examples of Winkler, String Comparator Metrics and Enhanced Decision Rules (1990);
     * the last three are computed from the definition.
     */
    @ParameterizedTest
    @CsvSource({
        "MARTHA, MARHTA, 0.9611",
        "DIXON, DICKSONX, 0.8133",
        "DWAYNE, DUANE, 0.84",
        "curacoa, curacao, 0.9714",
        "vermuth, vermouth, 0.975",
        "maraschino, marischino, 0.9015"
    })
    void theComparatorOfWordsGivesThePublishedValues(String a, String b, double expected) {
        assertEquals(expected, new JaroWinklerSimilarity().apply(a, b), 0.00005);
    }

    /** Computed from the definitions of Metaphone and NYSIIS. */
    @ParameterizedTest
    @CsvSource({"curacoa, curacao", "vermuth, vermouth", "maraschino, marischino"})
    void oldSpellingsMeetUnderOneSound(String a, String b) {
        assertEquals(new Metaphone().metaphone(a), new Metaphone().metaphone(b));
        assertEquals(new Nysiis().nysiis(a), new Nysiis().nysiis(b));
        Set<String> keys = new HashSet<>(NameKeys.of(NameForm.of(a)));
        assertFalse(Collections.disjoint(keys, NameKeys.of(NameForm.of(b))));
    }

    @ParameterizedTest
    @CsvSource({
        "Harbour Master's Punch, HARBOR-MASTERS PUNCH",
        "Harbour Master’s Punch, The Harbour Master's Punch (another way)",
        "Tollgate Julep, The Toll-Gate Julep",
        "Pilot's Punch, Pilot's Punch No. 2",
        "Pilot's Punch, Pilots' Punch",
        "Green Lantern, Green Lantern (R)",
        "Bishop à la Bell-Buoy, Bell-Buoy Bishop",
        "Lady Pell's Shrub, Lady Pell's Shrub III"
    })
    void formsOfOneNameAreOne(String a, String b) {
        assertTrue(between(a, b) > 0.9, a + " / " + b + ": " + between(a, b));
    }

    @ParameterizedTest
    @CsvSource({
        "Pilot's Punch, Harbour Master's Punch",
        "Signal Hill Sour, Beacon Sour",
        "Gin Sling, Rum Toddy"
    })
    void theKindOfDrinkAloneMakesNoName(String a, String b) {
        assertTrue(between(a, b) < 0.5, a + " / " + b + ": " + between(a, b));
    }

    @Test
    void initialsStandForWords() {
        assertTrue(between("H. M. Punch", "Harbour Master's Punch") >= 0.9);
        assertTrue(between("H. M. Punch", "Harbour Lights Punch") < 0.9);
    }

    @Test
    void likenessIsTheSameBothWaysRound() {
        String[] names = {"Pilot", "Pilot's Punch", "The Widow", "Widow Tamsin's Cup", "Punch"};
        for (String a : names) {
            for (String b : names) {
                assertEquals(between(a, b), between(b, a), 1e-12, a + " / " + b);
                assertEquals(1, between(a, a), 1e-12);
            }
        }
    }
}
