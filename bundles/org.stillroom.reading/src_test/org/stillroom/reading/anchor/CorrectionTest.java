package org.stillroom.reading.anchor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.Vessel;
import org.stillroom.model.source.Section;
import org.stillroom.model.source.Source;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.Anchor;
import org.stillroom.model.text.Span;
import org.stillroom.reading.BookReading;
import org.stillroom.reading.PlainBook;
import org.stillroom.reading.Reader;

/** Corrections of lines, parts and cuts, each carried out while the book is read. */
class CorrectionTest {

    private static final String BOOK =
            "# Anchor Sling\n\n1 jigger gin.\n2 dashes bitters.\n1 spoon sugar.\n"
                    + "Stir the gin in a mug, and strain.\n\n"
                    + "# Keel Punch\n\n1 pint rum.\n1 quart water.\nA word about the landlord.\n";
    private static final Reader READER = Reader.standard();

    private final Source source = PlainBook.of(BOOK);

    private Assertion decision(String kind, String words, Map<String, String> values) {
        int at = BOOK.indexOf(words);
        Anchor anchor = Anchor.of(source.text(), new Span(at, at + words.length()));
        return new Assertion(
                "1",
                "2024-05-01T10:00:00Z",
                "",
                kind,
                "book.md",
                Optional.of(anchor),
                new TreeMap<>(values),
                Optional.empty());
    }

    private BookReading read(String kind, String words, Map<String, String> values) {
        return READER.read(source, List.of(decision(kind, words, values)), Progress.SILENT);
    }

    private Reading before() {
        return READER.read(source, List.of(), Progress.SILENT).readings().get(0);
    }

    @Test
    void aConfirmedLineIsSureAndNoLongerDoubtful() {
        Reading reading =
                read("line", "1 spoon sugar", Map.of("action", "right")).readings().get(0);
        assertEquals(1, reading.lines().get(2).confidence().probability());
        assertEquals(before().lines().get(2).measure(), reading.lines().get(2).measure());
        assertTrue(reading.doubts().stream().noneMatch(d -> d.reason().contains("spoon")));
    }

    @Test
    void stepsKeepTheirLinesWhenOneGoes() {
        assertEquals(List.of(0, 1, 2), before().steps().get(0).lines());
        Reading one = read("line", "1 jigger gin", Map.of("action", "remove")).readings().get(0);
        assertEquals(2, one.lines().size());
        assertEquals(List.of(0, 1), one.steps().get(0).lines());
    }

    @Test
    void wordsCanBeAVesselOrAStep() {
        Reading vessel =
                read("line", "mug", Map.of("part", "vessel", "word", "mug", "use", "mixing"))
                        .readings()
                        .get(0);
        assertEquals(Vessel.Use.MIXING, vessel.vessels().get(0).use());
        Reading step =
                read("line", "2 dashes bitters", Map.of("part", "step", "word", "dash"))
                        .readings()
                        .get(0);
        assertEquals(2, step.lines().size());
        assertTrue(step.steps().stream().anyMatch(s -> s.verb().equals("dash")));
    }

    @Test
    void aRecipeCanEndAtAnyWord() {
        BookReading read = read("cut", "1 quart water.", Map.of("action", "end"));
        Witness keel = read.readings().get(1).witness();
        assertTrue(source.text().slice(keel.span()).endsWith("1 quart water."));
        Section note = read.sections().getLast();
        assertTrue(source.text().slice(note.span()).contains("landlord"));
    }

    @Test
    void aRecipeCanBeginWhereNoneWas() {
        Assertion end = decision("cut", "1 quart water.", Map.of("action", "end"));
        Assertion begin = decision("cut", "A word about", Map.of("action", "split"));
        BookReading read = READER.read(source, List.of(end, begin), Progress.SILENT);
        assertEquals(3, read.readings().size());
        assertEquals("A word about the landlord", read.readings().get(2).witness().title());
    }

    @Test
    void aTitleCanBeNamed() {
        BookReading read = read("cut", "1 jigger gin", Map.of("action", "title"));
        assertEquals("1 jigger gin", read.readings().get(0).witness().title());
    }

    @Test
    void whatCannotBeFoundIsKeptWithItsDecision() {
        Assertion lost = decision("line", "2 dashes bitters", Map.of("measure", "drop"));
        Source other = PlainBook.of("# Anchor Sling\n\nA jigger of gin and nothing else at all.\n");
        BookReading read = READER.read(other, List.of(lost), Progress.SILENT);
        assertEquals(lost, read.unplaced().get(0).decision());
        assertTrue(read.problems().get(0).remedy().contains("Place it again"));
    }
}
