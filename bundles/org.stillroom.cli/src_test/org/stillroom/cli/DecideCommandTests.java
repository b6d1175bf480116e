package org.stillroom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.inquiry.Premises;
import org.stillroom.inquiry.ask.DecisionsInquiry;
import org.stillroom.inquiry.ask.VersionsInquiry;

/** Decisions from the command line, each command a run of its own. */
class DecideCommandTests {

    @TempDir Path folder;
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @BeforeEach
    void write() throws IOException {
        Files.createDirectories(folder.resolve("library/sources"));
        Files.writeString(
                folder.resolve("library/sources/quay.md"),
                "---\ntitle: Quay\ntext-date: 1862\nplace: London\n---\n"
                        + "# Anchor Sling\n\nOne gill of gin.\n\nOne gill of water.\n");
    }

    private int run(String... words) {
        out.reset();
        err.reset();
        return new Face(
                        List.of(new DecisionsInquiry(), new VersionsInquiry()),
                        new Surroundings(
                                Optional.of(folder.resolve("library")),
                                new Premises(
                                        Optional.empty(),
                                        Optional.empty(),
                                        folder.resolve("caches")),
                                folder,
                                "stillroom"),
                        new Terminal(
                                new PrintStream(out, true, StandardCharsets.UTF_8),
                                new PrintStream(err, true, StandardCharsets.UTF_8)),
                        "1")
                .run(words);
    }

    private String said() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String complained() {
        return err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void decideUndoRedoAndTakeBack() {
        assertEquals(0, run("decide", "system", "us", "--source", "quay.md"), complained());
        assertTrue(said().startsWith("Decided: system system=us for quay.md"), said());
        run("versions", "anchor sling", "--whole");
        assertTrue(said().contains("118"), said());
        assertEquals(0, run("decide", "--undo"));
        assertTrue(said().startsWith("Undone"), said());
        run("versions", "anchor sling", "--whole");
        assertTrue(said().contains("142"), said());
        assertEquals(0, run("decide", "--redo"));
        run("decisions", "--json");
        String id = said().replaceAll("(?s).*\"id\" : \"([^\"]+)\".*", "$1");
        assertEquals(0, run("decide", "--take-back", id), complained());
        run("decisions");
        assertTrue(said().contains("taken back"), said());
        assertEquals(0, run("decide", "--redo"));
        assertTrue(said().contains("nothing to do again"), said());
    }

    @Test
    void wrongWordsAreAnsweredWithWhatWouldWork() {
        assertEquals(ExitCode.REFUSED, run("decide"));
        assertTrue(complained().contains("help decide"), complained());
        assertEquals(ExitCode.REFUSED, run("decide", "line", "pint"));
        assertTrue(complained().contains("NAME=VALUE"), complained());
        assertEquals(ExitCode.REFUSED, run("decide", "system", "us", "--line", "x"));
        assertEquals(ExitCode.REFUSED, run("decide", "--take-back", "7"));
    }
}
