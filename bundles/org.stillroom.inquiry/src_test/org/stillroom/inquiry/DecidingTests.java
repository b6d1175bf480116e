package org.stillroom.inquiry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.inquiry.ask.DecisionsInquiry;
import org.stillroom.inquiry.ask.FindInquiry;
import org.stillroom.inquiry.ask.LayersInquiry;
import org.stillroom.model.progress.Progress;

/** Decisions in words: what is meant is found, what cannot be is refused with a remedy. */
class DecidingTests {

    @TempDir Path folder;
    private StudyDesk desk;

    @BeforeEach
    void lay() throws IOException {
        Files.createDirectories(folder.resolve("library/sources"));
        Files.writeString(
                folder.resolve("library/sources/quay.md"),
                "---\ntitle: Quay\ntext-date: 1862\nplace: London\n---\n"
                        + "# Anchor Sling\n\nOne gill of gin.\n\nOne gill of water.\n");
        desk = new StudyDesk(folder.resolve("caches"));
        desk.lay(folder.resolve("library"));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private Deciding.Done decide(
            String kind, String source, String words, int line, String... values) {
        TreeMap<String, String> map = new TreeMap<>();
        for (int i = 0; i < values.length; i += 2) {
            map.put(values[i], values[i + 1]);
        }
        return new Deciding(desk)
                .decide(
                        new Wish(
                                kind,
                                Optional.of(source).filter(s -> !s.isEmpty()),
                                Optional.of(words).filter(s -> !s.isEmpty()),
                                line == 0 ? OptionalInt.empty() : OptionalInt.of(line),
                                map),
                        Progress.SILENT);
    }

    private String refused(String kind, String source, String words, int line, String... values) {
        InquiryException e =
                assertThrows(
                        InquiryException.class, () -> decide(kind, source, words, line, values));
        assertEquals(0, desk.decisions().all().size(), "nothing was written");
        return e.getMessage() + " " + e.remedy();
    }

    private double millilitres(int line) {
        return desk.study(Progress.SILENT)
                .versions()
                .get(0)
                .spec()
                .lines()
                .get(line)
                .millilitres()
                .orElseThrow()
                .likely();
    }

    @Test
    void aSystemIsDecidedForALineAndListed() {
        decide("system", "quay.md", "", 5, "system", "us", "level", "line");
        assertEquals(142.065, millilitres(0), 0.001);
        assertEquals(118.294, millilitres(1), 0.001);
        var json = new DecisionsInquiry().answer(desk, Arguments.of(), Progress.SILENT).json();
        assertEquals("stands", json.at("/decisions/0/state").asText());
        assertEquals("One gill of water.", json.at("/decisions/0/words").asText());
        desk.undo();
        json = new DecisionsInquiry().answer(desk, Arguments.of(), Progress.SILENT).json();
        assertEquals("taken back", json.at("/decisions/0/state").asText());
        assertEquals(
                0,
                new DecisionsInquiry()
                        .answer(desk, Arguments.of("standing", "yes"), Progress.SILENT)
                        .json()
                        .at("/decisions")
                        .size());
    }

    @Test
    void aLineIsCorrectedByItsWords() {
        decide("line", "quay.md", "One gill of gin.", 0, "measure", "pint");
        assertEquals(568.26125, millilitres(0), 1e-6);
    }

    @Test
    void wordsArePutRightBesideTheFileAndSearchedInBothForms() {
        decide("words", "quay.md", "Anchor", 0, "reads", "Capstan");
        Study study = desk.study(Progress.SILENT);
        assertEquals("Capstan Sling", study.versions().get(0).witness().title());
        assertTrue(study.versions().get(0).words().contains("Anchor Sling"));
        for (String words : List.of("anchor", "capstan", "\"capstan sling\"", "title:capstan")) {
            var found =
                    new FindInquiry()
                            .answer(desk, Arguments.of("query", words), Progress.SILENT)
                            .json();
            assertEquals(1, found.at("/hits").size(), words + " in " + found);
        }
        var layers =
                new LayersInquiry()
                        .answer(
                                desk,
                                Arguments.of("source", "quay.md", "layer", "right"),
                                Progress.SILENT)
                        .json();
        assertEquals("Anchor", layers.at("/putRight/0/printed").asText());
        assertEquals("# Capstan Sling", layers.at("/lines/0").asText());
        desk.undo();
        assertEquals(
                "Anchor Sling", desk.study(Progress.SILENT).versions().get(0).witness().title());
    }

    @Test
    void aSourceThatIsNotThereHasNoLayers() {
        InquiryException e =
                assertThrows(
                        InquiryException.class,
                        () ->
                                new LayersInquiry()
                                        .answer(
                                                desk,
                                                Arguments.of("source", "qay.md"),
                                                Progress.SILENT));
        assertTrue(e.remedy().contains("quay.md"), e.remedy());
    }

    @Test
    void aSenseIsDecided() {
        assertTrue(
                decide("sense", "", "", 0, "edit", "add-label", "sense", "gin", "label", "zorb")
                        .problems()
                        .isEmpty());
        assertTrue(
                desk.knowledge().thesaurus().labels("gin").stream()
                        .anyMatch(l -> l.text().equals("zorb")));
    }

    @Test
    void whatCouldNeverBeCarriedOutIsRefused() {
        assertTrue(refused("systm", "", "", 0, "system", "us").contains("“system”"));
        assertTrue(refused("system", "", "", 0, "system", "imperal").contains("“imperial”"));
        assertTrue(refused("system", "quai.md", "", 0, "system", "us").contains("“quay.md”"));
        assertTrue(refused("line", "quay.md", "One gill", 0, "measure", "pint").contains("3, 5"));
        assertTrue(refused("line", "quay.md", "No such", 0, "measure", "pint").contains("letter"));
        assertTrue(refused("line", "quay.md", "", 99, "measure", "pint").contains("no line 99"));
        assertTrue(refused("line", "quay.md", "", 3, "mesure", "pint").contains("“measure”"));
        assertTrue(refused("line", "", "", 0, "measure", "pint").contains("needs the words"));
        assertTrue(refused("sense", "", "", 0, "edit", "burn").contains("merge"));
        assertTrue(
                refused("sense", "", "", 0, "edit", "merge", "from", "no-such", "into", "gin")
                        .contains("no-such"));
    }
}
