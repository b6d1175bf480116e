package org.stillroom.inquiry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.measures.MeasureMeaning.Measured;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Section;
import org.stillroom.model.source.Source;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.Anchor;
import org.stillroom.model.text.Span;

/** A book's own table, and decisions about its system, from the file to the millilitres. */
class BookMeasuresTests {

    private static final String HEAD =
            "---\ntitle: The Quay Book\ntext-date: %s\nplace: London\n%s---\n";

    private static final String RECIPES =
            "# Anchor Sling\n\nOne gill of gin.\n\nTwo wineglasses of water.\n\n"
                    + "# Keel Punch\n\nOne pint of rum.\n\nOne gill of lemon juice.\n";

    private static final String TABLE =
            "# Table of Measures\n\n| Measure | Holds |\n|---|---|\n| 3 gills | 1 pint |\n"
                    + "| 1 wineglass | ½ gill |\n\n";

    @TempDir Path folder;
    private StudyDesk desk;

    @BeforeEach
    void lay() throws IOException {
        Files.createDirectories(folder.resolve("library/sources"));
        desk = new StudyDesk(folder.resolve("caches"));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private Study study(String date, String more, String text) throws IOException {
        Files.writeString(
                folder.resolve("library/sources/quay.md"), HEAD.formatted(date, more) + text);
        desk.lay(folder.resolve("library"));
        return desk.study(Progress.SILENT);
    }

    private static SpecLine line(Study study, int recipe, int line) {
        Version version = study.versions().get(recipe);
        return version.spec().lines().get(line);
    }

    private static double millilitres(Study study, int recipe, int line) {
        return line(study, recipe, line).millilitres().orElseThrow().likely();
    }

    @Test
    void aTableInTheBookIsNoRecipeAndOutranksAllOthers() throws IOException {
        Study study = study("1862", "", TABLE + RECIPES);
        assertEquals(2, study.versions().size());
        BookStudy book = study.books().get(0);
        assertTrue(
                book.reading().sections().stream()
                        .anyMatch(s -> s.kind() == Section.Kind.MEASURES));
        assertEquals(2, book.reading().ownMeasures().size());
        assertEquals(568.26125 / 3, millilitres(study, 0, 0), 1e-9);
        assertEquals(568.26125 / 3, millilitres(study, 0, 1), 1e-9);
        String why = line(study, 0, 1).why().toText();
        assertTrue(why.contains("1 wineglass = ½ gill"), why);
        assertTrue(why.contains("outranks every other authority"), why);
    }

    @Test
    void readingAFileShowsTheTable() throws IOException {
        Path file = folder.resolve("quay.md");
        Files.writeString(file, HEAD.formatted("1862", "") + TABLE + RECIPES);
        var json =
                new org.stillroom.inquiry.ask.ReadInquiry()
                        .answer(desk, Arguments.of("file", file.toString()), Progress.SILENT)
                        .json();
        assertEquals(2, json.get("ownMeasures").size());
        assertEquals("1/3", json.at("/ownMeasures/0/ratio").asText());
        assertEquals(189.420, json.at("/ownMeasures/0/ml/likely").asDouble(), 0.001);
    }

    @Test
    void aBritishBookNear1826ShowsBothAnswers() throws IOException {
        Study study = study("1826", "", RECIPES);
        Measured pint =
                (Measured)
                        study.books()
                                .get(0)
                                .table(study.knowledge())
                                .resolve(
                                        "pint",
                                        Optional.empty(),
                                        study.sources().get(0).bibliography().circumstances());
        assertTrue(
                pint.reason().contains("473.18 ml") && pint.reason().contains("568.26 ml"),
                pint.reason());
        String why = line(study, 1, 0).why().toText();
        assertTrue(why.contains("English wine measure before 1826"), why);
        assertTrue(why.contains("British imperial"), why);
    }

    @Test
    void theNarrowestDecisionHolds() throws IOException {
        Files.writeString(folder.resolve("library/stillroom.json"), "{\"measures\": \"us\"}");
        Study study = study("1862", "", RECIPES);
        assertEquals(118.29411825, millilitres(study, 0, 0), 1e-9);
        study = study("1862", "measures: imperial\n", RECIPES);
        assertEquals(142.0653125, millilitres(study, 0, 0), 1e-9);

        desk.decide("system", "quay.md", Optional.empty(), Map.of("system", "scots"));
        study = desk.study(Progress.SILENT);
        assertEquals(105.9, millilitres(study, 0, 0), 0.1);

        Source source = study.sources().get(0);
        int punch = source.text().toString().indexOf("# Keel Punch");
        desk.decide(
                "system",
                "quay.md",
                Optional.of(Anchor.of(source.text(), new Span(punch, punch + 12))),
                Map.of("system", "us"));
        int pint = source.text().toString().indexOf("One pint");
        desk.decide(
                "system",
                "quay.md",
                Optional.of(Anchor.of(source.text(), new Span(pint, pint + 8))),
                Map.of("system", "British imperial", "level", "line"));
        study = desk.study(Progress.SILENT);
        assertEquals(105.9, millilitres(study, 0, 0), 0.1);
        assertEquals(568.26125, millilitres(study, 1, 0), 1e-9);
        assertEquals(118.29411825, millilitres(study, 1, 1), 1e-9);
        assertTrue(
                line(study, 1, 0).why().toText().contains("so decided for the line"),
                line(study, 1, 0).why().toText());
        desk.undo();
        assertEquals(473.176473, millilitres(desk.study(Progress.SILENT), 1, 0), 1e-9);
    }

    @Test
    void aDecisionForTheWholeLibraryReachesEveryBook() throws IOException {
        study("1862", "", RECIPES);
        desk.decide("system", "", Optional.empty(), Map.of("system", "us"));
        assertEquals(118.29411825, millilitres(desk.study(Progress.SILENT), 0, 0), 1e-9);
        desk.undo();
        assertEquals(142.0653125, millilitres(desk.study(Progress.SILENT), 0, 0), 1e-9);
    }

    @Test
    void aSystemThatIsNotKnownIsReportedWithTheNearest() throws IOException {
        Study study = study("1862", "measures: imperal\n", RECIPES);
        assertTrue(
                study.problems().stream()
                        .anyMatch(
                                p ->
                                        p.words().equals("imperal")
                                                && p.remedy().contains("“imperial”")),
                study.problems().toString());
    }

    @Test
    void contradictionsOfTheBookAreProblemsOfTheLibrary() throws IOException {
        Study study =
                study(
                        "1862",
                        "",
                        "# Measures\n\n4 gills = 1 pint\n\n2 gills = 1 pint\n\n" + RECIPES);
        assertTrue(
                study.problems().stream().anyMatch(p -> p.reason().contains("contradicts itself")),
                study.problems().toString());
    }

    /** What the invented books of the example library say of their measures; see its facts.md. */
    @Test
    void theBooksOfTheExampleSpeakForThemselves() {
        desk.lay(Path.of("../../corpus-example").toAbsolutePath().normalize());
        Study study = desk.study(Progress.SILENT);
        assertEquals(59.147, own(study, "1794-tavern-keepers-remembrancer.txt", "glass"), 0.001);
        assertEquals(71.033, own(study, "1838-pell-saltreath-housekeeper.md", "wineglass"), 0.001);
        assertEquals(59.147, own(study, "1860-old-steward-mixing-hand.md", "wineglass"), 0.001);
        assertEquals(56.826, own(study, "1874-sharrow-cellar-book.md", "tot"), 0.001);
        assertEquals(284.131, own(study, "1883-pure-cup.txt", "cup"), 0.001);
        assertEquals(29.574, own(study, "1884-finch-practical-barkeeper.md", "pony"), 0.001);
        assertEquals(29.574, own(study, "1908-varga-modern-counter.xml", "pony"), 0.001);
        assertEquals(142.065, own(study, "1958-quadrant-manual.md", "gill"), 0.001);
    }

    private static double own(Study study, String source, String word) {
        BookStudy book = study.book(source).orElseThrow();
        assertTrue(
                book.measures().ownTable().definition(Optional.empty(), word).isPresent()
                        || !book.reading().ownMeasures().isEmpty(),
                source + " says nothing of the " + word);
        return book.table(study.knowledge())
                .resolve(word, Optional.empty(), book.source().bibliography().circumstances())
                .millilitres()
                .orElseThrow()
                .likely();
    }
}
