package org.stillroom.reading.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.model.source.Witness;

/** Recipes whose name stands in a sentence, and lines that head many recipes or none. */
class NamedInSentencesTest {

    private static final String BEFORE =
            """
            CUPS AND THEIR COMPANIONS

            BY AN OLD COMMODORE

            CHAPTER I.

            OF CUPS.

            _Mulberry Cup._ Press a pint of ripe mulberries through a sieve; sweeten
            with a quarter of a pound of sugar, and add a bottle of Burgundy and a
            wine-glass of noyau. Ice it.

            _Regatta Cup._ A bottle of sparkling moselle, a glass of pale brandy, half
            a pint of soda-water, and a sprig of borage. Stir, and serve at once.

            """;

    private static List<String> titles(String book) {
        return new BookCutter()
                .cut(MiniatureBooksTest.source("cups", book)).witnesses().stream()
                        .map(Witness::title)
                        .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Badger Cup | For a Badger Cup peel half a middle-sized cucumber and put it into a"
                        + " jug, with four ounces of powdered sugar, a little nutmeg and a bottle of"
                        + " claret.",
                "CHAMPAGNE CUP | The following is the way in which the club makes its CHAMPAGNE CUP: a"
                        + " bottle of champagne, a glass of pale sherry, half a glass of brandy, two"
                        + " slices of lemon, and a bottle of seltzer.",
                "Sailors’ Comfort | From the late Captain we had this for Sailors’ Comfort: a tumbler"
                        + " of hot tea, a glass of rum, a slice of lemon and three lumps of sugar.",
                "Brown Betty | Brown Betty, so called from the barmaid of that name at our old house,"
                        + " is compounded thus: dissolve a quarter of a pound of brown sugar in a pint"
                        + " of water, add half a pint of brandy and a quart of ale.",
                "Crambo | Crambo: take two bottles of light porter, and boil them in a pan. Then put"
                        + " into the liquor half a pint of rum and half a pound of loaf sugar.",
                "Carriers | Carriers is a drink of the old road. A pint of table beer, a tablespoonful"
                        + " of brandy, a teaspoonful of brown sugar, and a little grated nutmeg.",
                "toddy | The true way to make toddy is as follows. Put two lumps of sugar in a"
                        + " tumbler, pour on a wineglass of boiling water, add a wineglass of whisky.",
                "Heron Bitters | A receipt for Heron Bitters. Take of gentian root two ounces, orange"
                        + " peel one ounce, and steep in a quart of spirits for ten days.",
                "Ratafia of quinces | Ratafia of quinces. Grate ripe quinces; press out the juice; to"
                        + " each quart put a pint of brandy, ten ounces of sugar, and a few cloves.",
                "The same, for ladies | The same, for ladies.--As the last, but with lemonade instead"
                        + " of the soda-water."
            })
    void aNameInASentenceIsATitle(String title, String paragraph) {
        assertEquals(
                List.of("Mulberry Cup", "Regatta Cup", title), titles(BEFORE + paragraph + "\n"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "For a cold there is nothing so good as a walk before breakfast, and the old men of"
                        + " the club take one in every weather.",
                "To the barman. Use fresh lemons only, 1 jigger means two ounces, and never leave ice"
                        + " in the shaker. Wash the glasses in two waters.",
                "My uncle, who commanded the cutter, was prepared for anything but water."
            })
    void aSentenceThatNamesNoDrinkIsNone(String paragraph) {
        assertEquals(List.of("Mulberry Cup", "Regatta Cup"), titles(BEFORE + paragraph + "\n"));
    }

    @Test
    void careOfTheCaskIsNoRecipe() {
        String casks =
                """
                _To restore sour Casks._ Put into each cask a pound of lime and two gallons of
                boiling water; stop it close, shake it, and rinse it in three waters.
                """;
        assertEquals(List.of("Mulberry Cup", "Regatta Cup"), titles(BEFORE + casks));
    }

    @Test
    void aLineThatSaysOrPartsTwoRecipes() {
        String or =
                """
                _Or,_

                Boil a quart of good ale with six cloves and a bit of ginger, add a quarter
                of a pint of rum and two ounces of sugar, and serve it hot.
                """;
        assertEquals(List.of("Mulberry Cup", "Regatta Cup", "Regatta Cup"), titles(BEFORE + or));
    }

    @Test
    void drinksInThePluralHeadTheTitlesUnderThem() {
        String list =
                """
                THE GRAND ATLANTIC

                COCKTAILS
                AMBER COCKTAIL
                1 dash orange bitters, 1/2 jigger dry gin, 1/2 jigger
                sherry. Stir and strain.

                BAYFRONT
                Juice 1/2 lime, 1 jigger rum, 1 bar spoon sugar. Shake.

                SOURS AND FIZZES

                All our sours are served in a deep glass with a cherry and a
                slice of orange. One jigger of spirit is used in every case.

                WHISKEY SOUR
                Juice 1/2 lemon, 1 teaspoon sugar, 1 jigger whiskey. Shake and strain.
                """;
        assertEquals(List.of("AMBER COCKTAIL", "BAYFRONT", "WHISKEY SOUR"), titles(list));
    }

    @Test
    void groupsAreToldFromDrinksThatOnlyEndSo() {
        assertTrue(TitleWords.isGroup("COCKTAILS", Cues.house()));
        assertTrue(TitleWords.isGroup("SPECIAL DRINKS OF THE HOUSE", Cues.house()));
        assertFalse(TitleWords.isGroup("ORANGE BITTERS", Cues.house()));
        assertFalse(TitleWords.isGroup("NEGUS", Cues.house()));
    }
}
