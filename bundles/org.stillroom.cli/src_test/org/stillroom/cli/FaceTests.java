package org.stillroom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.Desk;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.InquiryException;
import org.stillroom.inquiry.Parameter;
import org.stillroom.inquiry.Premises;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.progress.Progress;

class FaceTests {

    @TempDir Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    /** Says back what it was told; the word decides how it ends. */
    private static final class Echo implements Inquiry {
        @Override
        public String name() {
            return "echo";
        }

        @Override
        public String summary() {
            return "say back what was said";
        }

        @Override
        public String example() {
            return "echo hello --times 2";
        }

        @Override
        public List<Parameter> parameters() {
            return List.of(
                    Parameter.object("word", Parameter.Kind.TEXT, "the word"),
                    Parameter.option("times", Parameter.Kind.NUMBER, "how often"),
                    Parameter.choice("voice", "how loud", "soft", List.of("soft", "loud")),
                    Parameter.option("twice", Parameter.Kind.FLAG, "say it twice"));
        }

        @Override
        public Answer answer(Desk desk, Arguments arguments, Progress progress) {
            String word = arguments.required("word");
            switch (word) {
                case "refuse" -> throw new InquiryException("It cannot be.", "Say hello.");
                case "stop" -> throw new CancellationException("stop");
                case "fault" -> throw new IllegalStateException("a fault");
                default -> {
                    // any other word is said back
                }
            }
            int times = arguments.number("times").orElse(1) * (arguments.flag("twice") ? 2 : 1);
            return new Answer(
                    "Echo",
                    List.of(
                            new Block.Paragraph((word + " ").repeat(times).strip()),
                            new Block.Table(
                                    "Said",
                                    List.of("word", "times"),
                                    List.of(false, true),
                                    List.of(List.of(word, Integer.toString(times))),
                                    List.of(),
                                    List.of(
                                            Explanation.of(
                                                    times + " " + word,
                                                    Explanation.of("because it was said"))))),
                    JsonNodeFactory.instance
                            .objectNode()
                            .put("word", word)
                            .put("voice", arguments.text("voice").orElse("")),
                    List.of());
        }
    }

    private String command = "stillroom";

    private int run(String... words) {
        out.reset();
        err.reset();
        Surroundings where =
                new Surroundings(
                        Optional.empty(),
                        new Premises(Optional.empty(), Optional.empty(), folder),
                        folder,
                        command);
        Terminal terminal =
                new Terminal(
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Face(List.of(new Echo()), where, terminal, "0.0").run(words);
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void everyInquiryIsACommandWithItsParameters() {
        assertEquals(0, run("help"));
        assertTrue(out().contains("say back what was said"), out());
        assertEquals(0, run("help", "echo"));
        assertTrue(out().contains("--times"), out());
        assertTrue(out().contains("Example: stillroom echo hello --times 2"), out());
        assertEquals(0, run("echo", "--help"));
    }

    @Test
    void hintsNameTheCommandThatWasTyped() {
        command = "releng/stillroom";
        assertEquals(0, run("help", "echo"));
        assertTrue(out().contains("Example: releng/stillroom echo hello"), out());
        assertTrue(out().contains("Usage: releng/stillroom echo"), out());
        assertEquals(0, run("demo", "--help"));
        assertTrue(out().contains("Example: releng/stillroom demo"), out());
        assertEquals(0, run("help"));
        assertTrue(out().contains("“releng/stillroom help NAME”"), out());
        assertEquals(ExitCode.USAGE, run("echo", "hey", "--wrong"));
        assertTrue(err().contains("“releng/stillroom help echo”"), err());
        assertEquals(ExitCode.USAGE, run("xyzzy"));
        assertFalse(err().contains("“stillroom"), err());
    }

    @Test
    void objectsOptionsFlagsAndUsualValuesReachTheInquiry() {
        assertEquals(0, run("echo", "hey", "--times", "2", "--twice"));
        assertTrue(out().contains("hey hey hey hey"), out());
        assertEquals(0, run("echo", "hey", "--json"));
        assertEquals("{\n  \"word\" : \"hey\",\n  \"voice\" : \"soft\"\n}\n", out());
    }

    @Test
    void eachEndHasItsExitCodeAndSaysWhatWouldWork() {
        assertEquals(ExitCode.REFUSED, run("echo", "refuse"));
        assertTrue(err().contains("It cannot be. Say hello."), err());
        assertEquals(ExitCode.STOPPED, run("echo", "stop"));
        assertEquals(ExitCode.FAULT, run("echo", "fault"));
        assertFalse(err().contains("at org."), err());
        assertEquals(ExitCode.USAGE, run("ecko", "hey"));
        assertTrue(err().contains("echo"), err());
        assertEquals(ExitCode.USAGE, run("echo"));
        assertEquals(ExitCode.USAGE, run("echo", "hey", "--tims", "2"));
        assertTrue(err().contains("--times"), err());
        assertEquals(ExitCode.REFUSED, run("echo", "hey", "--times", "two"));
        assertTrue(err().contains("not a whole number"), err());
        assertEquals(ExitCode.USAGE, run());
    }

    @Test
    void tablesAndPagesAreWrittenWhereTold() throws IOException {
        Path tables = folder.resolve("tables");
        Path page = folder.resolve("page.html");
        int code = run("echo", "hey", "--tables", tables.toString(), "--report", page.toString());
        assertEquals(ExitCode.OK, code);
        assertEquals("word,times\r\nhey,1\r\n", Files.readString(tables.resolve("1-said.csv")));
        assertTrue(Files.readString(page).contains("<h1>Echo</h1>"));
        Files.writeString(folder.resolve("file"), "");
        code = run("echo", "hey", "--tables", folder.resolve("file/below").toString());
        assertEquals(ExitCode.NOT_WRITTEN, code);
    }

    @Test
    void aTableFitsTheLineAndWrapsInItsCells() {
        Block.Table table =
                new Block.Table(
                        "t",
                        List.of("name", "n", "words"),
                        List.of(false, true, false),
                        List.of(
                                List.of("Anchor", "7", "many words that go on ".repeat(12)),
                                List.of("Keel", "1234", "few")),
                        List.of());
        String text = new TableLayout(table, 60).toText();
        for (String line : text.split("\n")) {
            assertTrue(line.codePointCount(0, line.length()) <= 60, line);
        }
        assertTrue(text.contains("Anchor     7  many"), text);
        assertTrue(text.contains("Keel    1234  few"), text);
    }

    @Test
    void wordsAreNotCutWhereTheLineHasRoom() {
        Block.Table table =
                new Block.Table(
                        "t",
                        List.of("called", "whole", "spec"),
                        List.of(false, true, false),
                        List.of(
                                List.of(
                                        "HARBOUR-MASTER'S PUNCH",
                                        "≈ 114.6 ml (114.0–115.9)",
                                        "an ounce of this and of that, ".repeat(9))),
                        List.of());
        String text = new TableLayout(table, 70).toText();
        assertTrue(text.contains("HARBOUR-MASTER'S"), text);
        assertTrue(text.contains("(114.0–115.9)"), text);
        for (String line : text.split("\n")) {
            assertTrue(line.codePointCount(0, line.length()) <= 70, line);
        }
    }

    @Test
    void explainPrintsTheReasonOfEachRow() {
        assertEquals(0, run("echo", "hey"));
        assertFalse(out().contains("because it was said"), out());
        assertEquals(0, run("echo", "hey", "--explain"));
        assertTrue(out().contains("1 hey\n  - because it was said"), out());
        assertEquals(0, run("echo", "hey", "--explain", "--json"));
        assertTrue(out().contains("\"statement\" : \"because it was said\""), out());
        assertTrue(out().contains("\"about\" : \"Said\""), out());
    }
}
