package org.stillroom.reading.anchor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.number.Rational;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.Anchor;
import org.stillroom.model.text.Span;
import org.stillroom.reading.BookReading;
import org.stillroom.reading.PlainBook;
import org.stillroom.reading.Reader;
import org.stillroom.reading.idiom.Idiom;

/** Words put right beside the file: what is read goes by them, what is shown does not. */
class WordCorrectionTest {

    private static final String BOOK =
            "# Anehor SIing\n\n1 jigger gin.\n2 dashes hitters.\n1 fpoonfid of fyrnp.\n"
                    + "1 pony port.\n1 lump of ice.\nStir in a mug, and strain.\n\n"
                    + "# Keel Punch\n\nMade like Anchor Sling, with rnm for gin.\n\n"
                    + "# Bowsprit\n\n1 jigger gin.\n1 pony port.\nStir in a mug.\n";
    private static final Reader READER = Reader.standard();

    private final Source source = PlainBook.of(BOOK);
    private final List<Assertion> decisions = new ArrayList<>();

    private void putRight(String printed, String reads) {
        int at = BOOK.indexOf(printed);
        decisions.add(
                new Assertion(
                        Integer.toString(decisions.size() + 1),
                        "2024-05-01T10:00:00Z",
                        "a reader",
                        WordCorrection.KIND,
                        "book.md",
                        Optional.of(Anchor.of(source.text(), new Span(at, at + printed.length()))),
                        new TreeMap<>(Map.of(WordCorrection.READS, reads)),
                        Optional.empty()));
    }

    private BookReading read() {
        return READER.read(source, decisions, Progress.SILENT);
    }

    @Test
    void whatIsReadGoesByTheRightWordsAndPointsAtThePrintedOnes() {
        putRight("fpoonfid", "spoonful");
        putRight("fyrnp", "syrup");
        ReadingLine line = read().readings().get(0).lines().get(2);
        assertEquals("spoon", line.measure());
        assertEquals("syrup", line.ingredientName());
        assertEquals("1 fpoonfid of fyrnp", line.text());
        assertEquals("fyrnp", source.text().slice(line.ingredient().orElseThrow().span()));
        assertEquals(2, read().putRight().size());
    }

    @Test
    void aHeadingPutRightIsTheTitle() {
        putRight("Anehor SIing", "Anchor Sling");
        Reading sling = read().readings().get(0);
        assertEquals("Anchor Sling", sling.witness().title());
        assertEquals(
                "Anehor SIing", source.text().slice(sling.witness().titleSpan()).replace("# ", ""));
    }

    @Test
    void referencesAreFollowedInTheRightWords() {
        assertTrue(read().readings().get(1).inherited().isEmpty());
        putRight("Anehor SIing", "Anchor Sling");
        putRight("rnm", "rum");
        Reading punch = read().readings().get(1);
        assertEquals(List.of("book.md#1"), punch.reference().orElseThrow().chain());
        assertTrue(
                punch.allLines().stream().anyMatch(l -> l.ingredientName().equals("rum")),
                () -> punch.allLines().toString());
        Span reference = punch.reference().orElseThrow().span();
        assertTrue(source.text().slice(reference).contains("Anchor Sling"));
    }

    @Test
    void aRuleOfTheBookReachesWhatAReferenceChanges() {
        putRight("Anehor SIing", "Anchor Sling");
        putRight("rnm", "rum");
        Idiom rule = new Idiom(Idiom.On.WORDS, "rum", new TreeMap<>(Map.of("reads", "arrack")));
        decisions.add(
                new Assertion(
                        "9",
                        "2024-05-01T10:00:00Z",
                        "",
                        Idiom.KIND,
                        "book.md",
                        Optional.empty(),
                        new TreeMap<>(rule.decision()),
                        Optional.empty()));
        Reading punch = read().readings().get(1);
        assertTrue(
                punch.allLines().stream().anyMatch(l -> l.ingredientName().equals("arrack")),
                () -> punch.allLines().toString());
    }

    @Test
    void theLaterOfTwoHoldsAndTheEarlierIsTold() {
        putRight("hitters", "bitters");
        putRight("2 dashes hitters", "3 dashes bitters");
        BookReading read = read();
        assertEquals(
                Optional.of(Rational.of(3)),
                read.readings().get(0).lines().get(1).amount().quantity());
        assertEquals(1, read.unplaced().size());
        assertTrue(read.problems().getFirst().reason().contains("put right again"));
    }

    @Test
    void wordsMayBePassedOver() {
        putRight("2 dashes hitters.\n", "");
        int before =
                READER.read(source, List.of(), Progress.SILENT).readings().get(0).lines().size();
        assertEquals(before - 1, read().readings().get(0).lines().size());
    }

    @Test
    void nothingPutRightIsTheReadingAsItWas() {
        assertEquals(READER.read(source, List.of(), Progress.SILENT).readings(), read().readings());
    }
}
