package org.stillroom.reading.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.SourceText;
import org.stillroom.reading.Reader;

/** Books whose lines are not as they were printed; all invented. */
class UnwrappedCutTest {

    private static List<String> titles(String book) {
        Source source =
                new Source("b.txt", Bibliography.titled("b"), SourceText.of(book), List.of(), "");
        return Reader.standard().read(source, List.of(), Progress.SILENT).readings().stream()
                .map(r -> r.witness().title())
                .toList();
    }

    @Test
    void aParagraphToALineNeedsNoEmptyLines() {
        String book =
                """
                The lady of the house will find here what was drunk at Wrenmouth in her mother's time, set down without ornament.
                _Keel Comfort._--Put a pound of sloes into a jar with half a pound of loaf-sugar and a bottle of gin; shake it daily for a month, then strain and bottle it for the winter.
                _Bilge Water._--Boil two ounces of ginger in a gallon of water with a pound of sugar; add the juice of two lemons, strain it, and when it is cold put in a spoonful of yeast.
                _Lantern Oil._--Take a quart of ale, a gill of rum, two ounces of sugar and a little nutmeg; heat it without letting it boil, and serve it in mugs with toast beside it.
                """;
        assertEquals(List.of("Keel Comfort", "Bilge Water", "Lantern Oil"), titles(book));
    }

    @Test
    void aLineThatFillsTheGlassIsNoTitle() {
        String book =
                """
                FLOAT, HARBOUR.

                Glass 2/3 full of shaved ice.
                1/3 brandy.
                1/3 maraschino.
                Float a spoonful of rum on top.

                SLING, HARBOUR.

                1 lump sugar, 1 jigger gin, a little water; stir with ice.
                """;
        assertEquals(List.of("FLOAT, HARBOUR", "SLING, HARBOUR"), titles(book));
    }
}
