package org.stillroom.reading.spec;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.model.spec.Caution;

/** Hazardous things that a recipe names beside its ingredients; every text is invented. */
class NamedHazardsTests {

    private static final NamedHazards NAMED = new NamedHazards(Thesaurus.shipped());

    @ParameterizedTest
    @CsvSource(
            delimiter = '#',
            value = {
                "The old receipt has nux vomica, grated, half an ounce.#nux vomica",
                "If noyeau be taken for the syrup it is the better.#noyau",
                "Some hang a sprig of rue in the cask.#rue",
                "Beat the whites of four eggs firm and fold them in.#egg",
                "Gather the flowers of St. John's wort and cover them.#St John's wort",
                "A lump of ice the size of an egg.#",
                "It can be made without the addition of orgeat.#",
                "By the simple omission of the eggs it keeps.#",
                "Serve it in an egg glass, with a spoon.#",
                "Strain off the milk of almonds.#",
                "Grate nutmeg on top and serve with straws.#",
            })
    void whatIsMeantIsFlagged(String words, String subjects) {
        String found =
                NAMED.in(words, "").stream()
                        .map(Caution::subject)
                        .distinct()
                        .collect(Collectors.joining("; "));
        assertEquals(subjects == null ? "" : subjects, found);
    }

    @ParameterizedTest
    @CsvSource({"Absinthe Wall,0", "Harbour Cup,1"})
    void aTitleNamesADrinkAndNotWhatIsInIt(String title, int flagged) {
        String words =
                "## " + title + "\n\nStir gin on ice" + (flagged > 0 ? ", tansy last." : ".");
        assertEquals(
                flagged, NAMED.in(words, title).stream().map(Caution::subject).distinct().count());
    }
}
