package org.stillroom.reading.misprint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.stillroom.model.text.SourceText;

/** Damaged words are proposed, others are left alone; all invented. */
class MisprintFinderTests {

    private static final String BOOK =
            "Two wineglasses of brandy, the juice of half a lemon, and a spoonful of sugar. "
                    + "The brandy of the harbour is old. The juice of a lemon and the sugar. "
                    + "Stir the brandy with the sugar and the juice of the lemon. ";

    private static List<Misprint> find(String text) {
        return new MisprintFinder(Words.of(List.of(BOOK, text), List.of("brandy")))
                .find(SourceText.of(text));
    }

    @Test
    void proposesWhatAScannerMistook() {
        List<Misprint> found = find("A glass of hrandy, tbe juice of a lernon with wineg1asses.");
        assertEquals(
                List.of("hrandy", "lernon", "wineg1asses"),
                found.stream().map(Misprint::printed).filter(p -> !p.equals("tbe")).toList());
        assertEquals(
                List.of("brandy", "lemon", "wineglasses"),
                found.stream()
                        .filter(m -> !m.printed().equals("tbe"))
                        .map(Misprint::meant)
                        .toList());
        assertTrue(found.get(0).confused().contains("“h” for “b”"), found.toString());
    }

    @Test
    void leavesWholeWordsAlone() {
        assertEquals(List.of(), find(BOOK + "Captain Orrin of Wrenmouth kept a ropewalk."));
    }

    @Test
    void neverFailsAndSpansLieInside() {
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            StringBuilder any = new StringBuilder();
            for (int n = random.nextInt(60); n > 0; n--) {
                any.appendCodePoint(random.nextInt(0x2fff));
            }
            SourceText text = SourceText.of(any + BOOK.replace('e', 'c'));
            for (Misprint m : find(text.toString())) {
                assertTrue(m.span().end() <= text.length(), "seed 7, round " + i);
                assertEquals(m.printed(), text.slice(m.span()));
            }
        }
    }
}
