package org.stillroom.inquiry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.library.journal.Hand;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.text.Anchor;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

class DecisionTests {

    private static final String BOOK =
            "---\ntitle: Book %s\ntext-date: 1862\nplace: London, GB\ntrade: bar\n---\n"
                    + "# Keel Punch\n\nOne pint of rum, the juice of two lemons, and a quart of "
                    + "water. Mix in a bowl.\n";

    @TempDir Path folder;

    private StudyDesk desk() throws IOException {
        Path sources = folder.resolve("library/sources");
        if (!Files.isDirectory(sources)) {
            Files.createDirectories(sources);
            Files.writeString(sources.resolve("one.md"), BOOK.formatted(1));
            Files.writeString(sources.resolve("two.md"), BOOK.formatted(2));
        }
        Clock clock = Clock.fixed(Instant.parse("2024-05-01T10:00:00Z"), ZoneOffset.UTC);
        StudyDesk desk =
                new StudyDesk(folder.resolve("caches"), new Hand("Ann", clock, () -> "0a"));
        desk.lay(folder.resolve("library"));
        return desk;
    }

    private static Optional<Anchor> words(StudyDesk desk, String source, String words) {
        SourceText text = desk.study(Progress.SILENT).book(source).orElseThrow().source().text();
        int at = text.toPlace(text.toString().indexOf(words));
        return Optional.of(Anchor.of(text, new Span(at, at + words.length())));
    }

    private static ReadingLine rum(StudyDesk desk) {
        return desk.study(Progress.SILENT).versions().get(0).reading().lines().get(0);
    }

    private static void correct(StudyDesk desk) {
        desk.decide(
                "line",
                "one.md",
                words(desk, "one.md", "One pint of rum"),
                Map.of("measure", "gill"));
    }

    @Test
    void aDecisionReadsAnewOnlyTheBookThatItIsAbout() throws IOException {
        try (StudyDesk desk = desk()) {
            Study before = desk.study(Progress.SILENT);
            assertEquals("pint", rum(desk).measure());
            correct(desk);
            Study after = desk.study(Progress.SILENT);
            assertEquals("gill", rum(desk).measure());
            assertNotSame(before.books().get(0), after.books().get(0));
            assertSame(before.books().get(1), after.books().get(1));
            desk.decide("drink", "", Optional.empty(), Map.of("name", "Keel"));
            assertSame(after.books().get(0), desk.study(Progress.SILENT).books().get(0));
        }
    }

    @Test
    void undoAndRedoReachOverRestarts() throws IOException {
        try (StudyDesk desk = desk()) {
            correct(desk);
        }
        try (StudyDesk desk = desk()) {
            assertEquals("gill", rum(desk).measure());
            assertEquals("line", desk.decisions().undoable().orElseThrow().kind());
            assertTrue(desk.undo().isPresent());
            assertEquals("pint", rum(desk).measure());
        }
        try (StudyDesk desk = desk()) {
            assertTrue(desk.redo().isPresent());
            assertEquals("gill", rum(desk).measure());
            Assertion made = desk.decisions().standing().get(0);
            desk.replace(made, Map.of("measure", "quart"));
            assertEquals("quart", rum(desk).measure());
            desk.takeBack(desk.decisions().standing().get(0));
            assertEquals("gill", rum(desk).measure());
        }
    }

    @Test
    void theFileOfTheBookIsNeverWritten() throws IOException {
        try (StudyDesk desk = desk()) {
            byte[] before = Files.readAllBytes(folder.resolve("library/sources/one.md"));
            correct(desk);
            assertEquals(
                    new String(before, StandardCharsets.UTF_8),
                    Files.readString(folder.resolve("library/sources/one.md")));
        }
    }

    @Test
    void aLibraryThatVanishedIsNotMadeAgain() throws IOException {
        try (StudyDesk desk = desk()) {
            Optional<Anchor> where = words(desk, "one.md", "rum");
            Files.move(folder.resolve("library"), folder.resolve("elsewhere"));
            InquiryException e =
                    assertThrows(
                            InquiryException.class,
                            () -> desk.decide("line", "one.md", where, Map.of()));
            assertTrue(e.getMessage().contains("no longer there"));
            assertTrue(Files.notExists(folder.resolve("library")));
        }
    }

    @Test
    void aLockedJournalIsSaidSo() throws IOException {
        try (StudyDesk desk = desk()) {
            correct(desk);
            Path journal = folder.resolve("library/research/journal.jsonl");
            try (FileChannel other = FileChannel.open(journal, StandardOpenOption.WRITE)) {
                other.lock();
                InquiryException e = assertThrows(InquiryException.class, desk::undo);
                assertTrue(e.getMessage().contains("Another program"));
                assertTrue(e.remedy().contains("nothing was written"));
            }
            assertEquals("gill", rum(desk).measure());
        }
    }

    @Test
    void aReadOnlyLibraryIsSaidSo() throws IOException {
        try (StudyDesk desk = desk()) {
            Hand hand = Hand.of("Ann");
            DeskJournal journal = DeskJournal.of(desk.layout(), hand);
            InquiryException e =
                    assertThrows(
                            InquiryException.class,
                            () ->
                                    journal.carryOut(
                                            j -> {
                                                throw new AccessDeniedException("research");
                                            }));
            assertTrue(e.remedy().contains("right to write"), e.remedy());
        }
    }

    @Test
    void aFileInTheWayOfTheJournalIsSaidSo() throws IOException {
        try (StudyDesk desk = desk()) {
            desk.study(Progress.SILENT);
            Files.writeString(folder.resolve("library/research"), "in the way");
            InquiryException e = assertThrows(InquiryException.class, () -> correct(desk));
            assertTrue(e.getMessage().contains("could not be written"), e.getMessage());
        }
    }

    @Test
    void anEmptyDeskHasNothingToDecideAbout() {
        try (StudyDesk desk = new StudyDesk(folder.resolve("caches"))) {
            assertThrows(
                    InquiryException.class,
                    () -> desk.decide("drink", "", Optional.empty(), Map.of()));
        }
    }
}
