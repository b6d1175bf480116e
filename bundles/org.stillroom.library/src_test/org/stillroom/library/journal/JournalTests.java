package org.stillroom.library.journal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.text.Anchor;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

class JournalTests {

    @TempDir Path folder;
    private Journal journal;
    private Decisions decisions;

    @BeforeEach
    void open() {
        journal = new Journal(folder.resolve("research"));
        Clock clock = Clock.fixed(Instant.parse("2024-05-01T10:00:00Z"), ZoneOffset.UTC);
        decisions = new Decisions(journal, new Hand("Ann", clock, () -> "0a"));
    }

    private List<Assertion> standing() {
        return journal.standing(new ArrayList<>());
    }

    @Test
    void aDecisionComesBackAsItWasMade() throws IOException {
        Anchor anchor = Anchor.of(SourceText.of("two dashes of gum"), Span.of(4, 10));
        Assertion made =
                decisions.decide("line", "book.md", Optional.of(anchor), Map.of("measure", "dash"));
        assertEquals(List.of(made), standing());
        assertEquals("dashes", standing().get(0).anchor().orElseThrow().exact());
    }

    @Test
    void undoAndRedoWorkAcrossRestarts() throws IOException {
        Assertion first = decisions.decide("drink", "", Optional.empty(), Map.of("name", "A"));
        Assertion second = decisions.decide("drink", "", Optional.empty(), Map.of("name", "B"));
        assertEquals(Optional.of(second), decisions.undo());
        open();
        assertEquals(Optional.of(first), decisions.undo());
        assertEquals(List.of(), standing());
        assertEquals(Optional.of(first), decisions.redo());
        assertEquals(Optional.of(second), decisions.redo());
        assertEquals(List.of(first, second), standing());
        assertEquals(Optional.empty(), decisions.redo());
    }

    @Test
    void aDecisionTakenBackOnPurposeIsUndoneLikeAnyOther() throws IOException {
        Assertion first = decisions.decide("drink", "", Optional.empty(), Map.of("name", "A"));
        Assertion second = decisions.decide("drink", "", Optional.empty(), Map.of("name", "B"));
        Assertion back = decisions.takeBack(first);
        assertEquals(List.of(second), standing());
        assertEquals(List.of(first), decisions.history().gone());
        assertEquals(Optional.of(back), decisions.undo());
        assertEquals(List.of(first, second), standing());
        assertEquals(Optional.of(back), decisions.redo());
        assertEquals(List.of(second), standing());
        decisions.undo();
        assertEquals(Optional.of(second), decisions.undo());
        assertEquals(List.of(first), standing());
        assertEquals(first, decisions.history().subject(back));
    }

    @Test
    void theHistoryTellsWhatUndoAndRedoWouldDo() throws IOException {
        Assertion first = decisions.decide("drink", "", Optional.empty(), Map.of("name", "A"));
        Assertion better = decisions.replace(first, Map.of("name", "B"));
        assertEquals(Optional.of(better), decisions.history().undoable());
        decisions.undo();
        History history = decisions.history();
        assertEquals(List.of(first), history.standing());
        assertEquals(Optional.of(first), history.undoable());
        assertEquals(Optional.of(better), history.redoable());
        decisions.decide("drink", "", Optional.empty(), Map.of("name", "C"));
        assertEquals(Optional.empty(), decisions.history().redoable());
        assertTrue(decisions.history().gone().contains(better), "an undone decision is kept");
    }

    @Test
    void aJournalHeldByAnotherProgramIsLeftAsItWas() throws IOException {
        decisions.decide("drink", "", Optional.empty(), Map.of("name", "A"));
        Path file = folder.resolve("research/journal.jsonl");
        byte[] before = Files.readAllBytes(file);
        try (FileChannel other = FileChannel.open(file, StandardOpenOption.WRITE)) {
            other.lock();
            assertThrows(
                    JournalLockedException.class,
                    () -> decisions.decide("drink", "", Optional.empty(), Map.of("name", "B")));
        }
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void nothingIsEverErased() throws IOException {
        SplittableRandom random = new SplittableRandom(42);
        long size = 0;
        for (int i = 0; i < 200; i++) {
            switch (random.nextInt(4)) {
                case 0 -> decisions.undo();
                case 1 -> decisions.redo();
                default -> decisions.decide("x", "", Optional.empty(), Map.of("n", "" + i));
            }
            long now = Files.size(folder.resolve("research/journal.jsonl"));
            assertTrue(now >= size, "step " + i);
            size = now;
        }
        int undone = standing().size();
        for (int i = 0; i < undone; i++) {
            assertTrue(decisions.undo().isPresent());
        }
        assertEquals(List.of(), standing());
        for (int i = 0; i < undone; i++) {
            assertTrue(decisions.redo().isPresent(), "redo " + i);
        }
        assertEquals(undone, standing().size());
    }

    @Test
    void aLineCutOffByACrashCostsOnlyItself() throws IOException {
        Assertion made = decisions.decide("drink", "", Optional.empty(), Map.of("name", "A"));
        Path file = folder.resolve("research/journal.jsonl");
        Files.writeString(file, "{\"id\":\"0000", StandardOpenOption.APPEND);
        List<Problem> problems = new ArrayList<>();
        assertEquals(List.of(made), journal.standing(problems));
        assertEquals(1, problems.size());
        Assertion next = decisions.decide("drink", "", Optional.empty(), Map.of("name", "B"));
        assertEquals(List.of(made, next), standing());
    }

    @Test
    void aConflictedCopyIsMerged() throws IOException {
        decisions.decide("drink", "", Optional.empty(), Map.of("name", "A"));
        Path file = folder.resolve("research/journal.jsonl");
        Files.copy(file, folder.resolve("research/journal (conflicted copy).jsonl"));
        decisions.decide("drink", "", Optional.empty(), Map.of("name", "B"));
        assertEquals(2, standing().size());
    }
}
