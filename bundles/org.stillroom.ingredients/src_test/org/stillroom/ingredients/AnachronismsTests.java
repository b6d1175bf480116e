package org.stillroom.ingredients;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.model.source.Circumstances;

class AnachronismsTests {

    private final Thesaurus thesaurus = Thesaurus.shipped();

    private List<Anachronism> ingredient(String words, String date, String place) {
        Circumstances where = Where.of(date, place);
        List<Sense> senses =
                thesaurus.find(words, where).stream().limit(1).map(Candidate::sense).toList();
        return Anachronisms.check(senses, "", where, thesaurus);
    }

    /** First dates stand in chronology.csv with their sources. */
    @ParameterizedTest
    @CsvSource({
        "vodka, 1820, US", "grenadine, 1790, GB", "French vermouth, 1780, GB",
        "cola, 1850, US", "tonic water, 1830, GB", "lime cordial, 1840, GB",
        "cube sugar, 1800, GB", "acid phosphate, 1840, US", "absinthe, 1740, GB",
        "tequila, 1850, US", "lager beer, 1820, US", "condensed milk, 1830, GB",
        "ginger ale, 1810, GB", "red bitter aperitif, 1840, IT", "saccharin, 1850, GB",
        "cube ice, 1880, US", "tomato juice, 1880, US", "melon liqueur, 1930, US",
        "Irish cream, 1950, IE", "soda water, 1720, GB",
    })
    void anIngredientBeforeItsTime(String words, String date, String place) {
        List<Anachronism> found = ingredient(words, date, place);
        assertEquals(1, found.size());
        assertTrue(found.get(0).certain());
        String why = found.get(0).why().toText();
        assertTrue(why.contains(date), why);
        assertFalse(found.get(0).milestone().source().work().isBlank());
    }

    @ParameterizedTest
    @CsvSource({
        "vodka, 1933, GB", "grenadine, 1895, US", "French vermouth, 1895, US", "rum, 1795, GB",
        "loaf sugar, 1795, GB", "sherry, 1795, GB", "nutmeg, 1650, GB", "cider, 1700, GB",
        "curaçao, 1861, GB", "champagne, 1795, GB", "soda water, 1830, GB", "port, 1795, GB",
        "arrack, 1740, GB", "shrub, 1760, GB", "noyau, 1795, GB", "orgeat, 1795, GB",
        "capillaire, 1790, GB", "green tea, 1790, GB", "maraschino, 1820, GB", "lemon, 1600, GB",
    })
    void anIngredientInItsTime(String words, String date, String place) {
        assertEquals(List.of(), ingredient(words, date, place));
    }

    @ParameterizedTest
    @CsvSource({
        "take 20 ml of rum, 1820", "one imperial pint of water, 1800",
        "shake in a cocktail shaker, 1800", "put it into the electric blender, 1880",
        "a jigger of gin, 1830", "use pasteurised milk, 1820",
        "set it in the refrigerator, 1810", "15 degrees Brix, 1830",
        "degrees Gay-Lussac, 1810", "canned juice, 1850",
    })
    void aUnitOrTechniqueBeforeItsTime(String words, String date) {
        List<Anachronism> found =
                Anachronisms.check(List.of(), words, Where.of(date, "GB"), thesaurus);
        assertFalse(found.isEmpty());
        assertTrue(found.get(0).certain());
    }

    @ParameterizedTest
    @CsvSource({
        "take a pint of water and stir, 1795",
        "shake the bottle well, 1795",
        "a jigger of gin, 1895",
        "50 cl of wine, 1905",
        "bottle it and cork it close, 1740",
    })
    void whatWasUsualIsNotReported(String words, String date) {
        assertEquals(
                List.of(), Anachronisms.check(List.of(), words, Where.of(date, "GB"), thesaurus));
    }

    @Test
    void aStretchOfTimeIsOnlyPossible() {
        List<Anachronism> found = ingredient("cube sugar", "1830/1850", "GB");
        assertEquals(1, found.size());
        assertFalse(found.get(0).certain());
    }

    @Test
    void withoutADateNothingIsSaid() {
        assertEquals(
                List.of(),
                Anachronisms.check(
                        List.of(thesaurus.sense("vodka").orElseThrow()),
                        "blender",
                        Circumstances.UNKNOWN,
                        thesaurus));
    }

    @Test
    void aBanIsNoAnachronism() {
        assertEquals(List.of(), ingredient("absinthe", "1895", "US"));
    }
}
