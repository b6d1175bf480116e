package org.stillroom.measures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillroom.measures.knowledge.Authority;
import org.stillroom.measures.physics.Traps;
import org.stillroom.measures.rows.Row;
import org.stillroom.measures.rows.Rows;

/**
 * Holds the engine against every published check value, and writes the table of them to {@code
 * target/measures-check.txt}.
 */
class ReferenceChecksTests {

    private static final MeasureTable TABLE = MeasureTable.shipped();

    private final CheckTable checks = new CheckTable(TABLE);

    private static List<Row> rows() throws IOException {
        try (InputStream in = ReferenceChecksTests.class.getResourceAsStream("checks.csv")) {
            Rows rows = Rows.read("checks.csv", in);
            assertTrue(rows.problems().isEmpty(), () -> rows.problems().toString());
            return rows.rows();
        }
    }

    @Test
    void everyPublishedValueIsReproducedWithinItsPrintedDigits() throws IOException {
        List<String> lines = new ArrayList<>();
        List<String> wrong = new ArrayList<>();
        for (Row row : rows()) {
            String kind = row.get("kind");
            if (kind.equals("warning") || kind.startsWith("trap")) {
                lines.add(trap(row));
                continue;
            }
            double printed = Double.parseDouble(row.get("expected"));
            double ours = checks.answer(kind, row.get("args"));
            String line =
                    CheckTable.line(
                            row.get("id"),
                            kind + " " + row.get("args"),
                            printed,
                            ours,
                            row.get("source"));
            lines.add(line);
            if (!agrees(row, printed, ours)) {
                wrong.add(line);
            }
        }
        Traps.shipped().all().forEach(t -> lines.add(t.id() + "   warning: " + t.statement()));
        write(lines);
        long traps = lines.stream().filter(l -> l.contains("warning: ")).count();
        System.out.printf(
                java.util.Locale.ROOT,
                "Reference checks: %d values, %d of them off; %d traps answered with a warning"
                        + " (table in target/measures-check.txt)%n",
                lines.size() - traps,
                wrong.size(),
                traps);
        assertTrue(lines.size() > 400, "only " + lines.size() + " checks");
        assertTrue(wrong.isEmpty(), () -> String.join("\n", wrong));
    }

    private static boolean agrees(Row row, double printed, double ours) {
        return switch (row.get("kind")) {
            case "more-than" -> ours > printed;
            case "less-than" -> ours < printed;
            default -> Math.abs(ours - printed) <= tolerance(row);
        };
    }

    /** Half a unit of the last printed digit, unless the row says how rough the source is. */
    private static double tolerance(Row row) {
        if (!row.get("tolerance").isEmpty()) {
            return Double.parseDouble(row.get("tolerance"));
        }
        String printed = row.get("expected");
        int point = printed.indexOf('.');
        int places = point < 0 ? 0 : printed.length() - point - 1;
        return 0.5000001 * Math.pow(10, -places);
    }

    /** A trap is answered by words, never by a number. */
    private String trap(Row row) {
        if (row.get("kind").equals("trap-57")) {
            double at57 = checks.answer("statutory-gravity", "-");
            assertEquals(0.9198, at57, 0.0003);
            return "F66   trap: 51 °F, not 57 °F, gives the gravity of the statute";
        }
        Authority statement = checks.statement(row.get("args"));
        assertEquals(Authority.Role.WARNING, statement.role(), row.get("args"));
        assertTrue(statement.content().isEmpty(), row.get("args"));
        assertFalse(statement.statement().isBlank());
        return row.get("id") + "   warning: " + statement.statement();
    }

    private static void write(List<String> lines) throws IOException {
        Path file = Path.of("target", "measures-check.txt");
        Files.createDirectories(file.getParent());
        List<String> all = new ArrayList<>();
        all.add(
                "id    check                                                 printed"
                        + "             ours   difference  source");
        all.addAll(lines);
        Files.write(file, all);
    }

    @Test
    void everyTrapShowsWhenItsWordIsAskedFor() {
        for (Authority a : TABLE.authorities()) {
            if (a.role() != Authority.Role.WARNING) {
                continue;
            }
            MeasureMeaning meaning =
                    TABLE.resolve(
                            MeasureQuestion.of(
                                            a.word(),
                                            org.stillroom.model.source.Circumstances.UNKNOWN)
                                    .about(
                                            a.dimension()
                                                            == org.stillroom.measures.knowledge
                                                                    .Dimension.MASS
                                                    ? Matter.SOLID
                                                    : Matter.UNKNOWN,
                                            a.of()));
            String text = meaning.explanation().toText();
            boolean shown =
                    meaning instanceof MeasureMeaning.Measured m
                            && m.warnings().stream().anyMatch(w -> w.startsWith(a.statement()));
            shown |=
                    meaning instanceof MeasureMeaning.Unmeasured u
                            && u.warnings().stream().anyMatch(w -> w.startsWith(a.statement()));
            assertTrue(shown, () -> a.id() + " " + a.word() + "\n" + text);
        }
    }
}
