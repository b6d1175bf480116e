package org.stillroom.inquiry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.inquiry.ask.FindInquiry;
import org.stillroom.inquiry.ask.ReadInquiry;
import org.stillroom.inquiry.ask.SourcesInquiry;
import org.stillroom.inquiry.ask.VersionsInquiry;
import org.stillroom.model.progress.Progress;

class StudyTests {

    private static final String BOOK =
            "---\ntitle: Book %s\ntext-date: %s\nplace: London, GB\ntrade: bar\n---\n"
                    + "# Anchor Sling\n\nTake a wineglass of gin, two dashes of bitters and a "
                    + "teaspoonful of sugar. Stir, and fill with soda water.\n\n"
                    + "# Keel Punch\n\nOne pint of rum, the juice of two lemons, and a quart of "
                    + "water. Mix in a bowl.\n";

    @TempDir Path folder;

    private StudyDesk desk(int books) throws IOException {
        Files.createDirectories(folder.resolve("library/sources"));
        for (int i = 0; i < books; i++) {
            put(i, 1860 + i);
        }
        StudyDesk desk = new StudyDesk(folder.resolve("caches"));
        desk.lay(folder.resolve("library"));
        return desk;
    }

    private void put(int book, int year) throws IOException {
        Files.writeString(
                folder.resolve("library/sources/book" + book + ".md"), BOOK.formatted(book, year));
    }

    @Test
    void aLibraryIsReadIntoVersions() throws IOException {
        try (StudyDesk desk = desk(2)) {
            Study study = desk.study(Progress.SILENT);
            assertEquals(4, study.versions().size());
            assertEquals("Anchor Sling", study.versions().get(0).witness().title());
            double gin =
                    study.versions()
                            .get(0)
                            .spec()
                            .lines()
                            .get(0)
                            .millilitres()
                            .orElseThrow()
                            .likely();
            assertTrue(gin > 40 && gin < 75, "a wineglass of gin is some 57 ml, not " + gin);
        }
    }

    @Test
    void rereadingTakesOverWhatDidNotChange() throws IOException {
        try (StudyDesk desk = desk(2)) {
            Study first = desk.study(Progress.SILENT);
            first.index(Progress.SILENT);
            put(1, 1999);
            Study second = desk.reread(Progress.SILENT);
            assertSame(first.books().get(0), second.books().get(0));
            assertEquals(1, second.search("date:1999", 10, Progress.SILENT).hits().size() / 2);
        }
    }

    @Test
    void aSecondProgramOnTheSameLibraryWorksToo() throws IOException {
        try (StudyDesk one = desk(1);
                StudyDesk two = new StudyDesk(folder.resolve("caches"))) {
            two.lay(folder.resolve("library"));
            assertEquals(1, one.study(Progress.SILENT).search("gin", 5, Progress.SILENT).total());
            Study second = two.study(Progress.SILENT);
            assertEquals(1, second.search("gin", 5, Progress.SILENT).total());
            assertTrue(
                    second.problems().stream()
                            .anyMatch(p -> p.reason().contains("Another Stillroom")));
        }
    }

    @Test
    void readingCanBeCancelled() throws IOException {
        try (StudyDesk desk = desk(3)) {
            Progress impatient =
                    new Progress() {
                        @Override
                        public void begin(String task, int steps) {
                            // only cancelling is tried here
                        }

                        @Override
                        public void step(int steps) {
                            // only cancelling is tried here
                        }

                        @Override
                        public boolean isCancelled() {
                            return true;
                        }
                    };
            assertThrows(CancellationException.class, () -> desk.study(impatient));
            assertEquals(6, desk.study(Progress.SILENT).versions().size());
        }
    }

    @Test
    void theSameLibraryGivesTheSameBytes() throws IOException {
        String first;
        try (StudyDesk desk = desk(3)) {
            first = answers(desk);
        }
        try (StudyDesk desk = desk(3)) {
            assertEquals(first, answers(desk));
        }
    }

    private static String answers(StudyDesk desk) {
        Arguments none = Arguments.of();
        return new SourcesInquiry().answer(desk, none, Progress.SILENT).json().toString()
                + new VersionsInquiry()
                        .answer(desk, Arguments.of("drink", "anchor sling"), Progress.SILENT)
                        .json()
                + new FindInquiry()
                        .answer(desk, Arguments.of("query", "rum"), Progress.SILENT)
                        .json();
    }

    @Test
    void aFileIsReadByItself() throws IOException {
        Path file = folder.resolve("card.txt");
        Files.writeString(file, "GROG.\n\nOne gill of rum and half a pint of water. Stir.\n");
        StudyDesk desk = new StudyDesk(folder.resolve("caches"));
        var json =
                new ReadInquiry()
                        .answer(
                                desk,
                                Arguments.of(
                                        "file", file.toString(), "place", "GB", "date", "1862"),
                                Progress.SILENT)
                        .json();
        var line = json.at("/recipes/0/lines/0");
        assertEquals("gill", line.get("measure").asText());
        assertEquals(142.065, line.at("/ml/likely").asDouble(), 0.01);
        InquiryException e =
                assertThrows(
                        InquiryException.class,
                        () ->
                                new ReadInquiry()
                                        .answer(
                                                desk,
                                                Arguments.of("file", "absent.txt"),
                                                Progress.SILENT));
        assertTrue(e.getMessage().contains("no file"));
    }

    @Test
    void dateAndPlaceOfABareTextComeFromNameOrTitlePage() throws IOException {
        Path bare = folder.resolve("bare");
        Files.createDirectories(bare);
        Files.writeString(
                bare.resolve("drinks-new-york-1895.txt"), "Grog.\nOne jigger rum. Stir.\n");
        Files.writeString(
                bare.resolve("another.txt"),
                "THE CUP BOOK\n\nLONDON\nPRINTED FOR THE AUTHOR\nMDCCCLXII\n\nGrog.\nA gill rum.\n");
        try (StudyDesk desk = new StudyDesk(folder.resolve("caches"))) {
            desk.lay(bare);
            Study study = desk.study(Progress.SILENT);
            var york = study.book("drinks-new-york-1895.txt").orElseThrow().source();
            assertEquals("1895?", york.bibliography().date().orElseThrow().toString());
            assertEquals("US", york.bibliography().place().orElseThrow().country().orElseThrow());
            var london = study.book("another.txt").orElseThrow().source();
            assertEquals("1862?", london.bibliography().date().orElseThrow().toString());
            assertEquals("GB", london.bibliography().place().orElseThrow().country().orElseThrow());
        }
    }
}
