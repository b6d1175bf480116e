package org.stillroom.inquiry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.Anchor;

/** The review list asks first what answers most, and no more often than makes a rule. */
class ReviewTests {

    @TempDir Path folder;
    private StudyDesk desk;

    private void lay(String recipes) throws IOException {
        Files.createDirectories(folder.resolve("library/sources"));
        Files.writeString(
                folder.resolve("library/sources/keel.md"),
                "---\ntitle: The Keel Book\ntext-date: 1884\nplace: London\ntrade: bar\n---\n"
                        + recipes);
        desk = new StudyDesk(folder.resolve("caches"));
        desk.lay(folder.resolve("library"));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private static String recipes(int count, String... lines) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            text.append("# Keel Punch ").append((char) ('A' + i)).append("\n\n");
            text.append(String.join("\n", lines)).append("\nShake and strain.\n\n");
        }
        return text.toString();
    }

    private List<Review.Item> items() {
        return Review.of(desk.study(Progress.SILENT), Progress.SILENT);
    }

    @Test
    void whatABookPrintsOftenComesBeforeASingleSlip() throws IOException {
        lay(recipes(6, "1 pony vmz.", "1 pony gin.") + recipes(1, "1 pony ginx.", "1 pony rum."));
        List<Review.Item> items = items();
        assertTrue(items.stream().limit(3).allMatch(i -> i.printed().contains("vmz")), "" + items);
        assertEquals(6, items.get(0).alike());
        double rest =
                items.stream()
                        .filter(i -> i.printed().contains("vmz"))
                        .skip(3)
                        .findFirst()
                        .orElseThrow()
                        .gain();
        assertEquals(items.get(0).gain(), 2 * rest, 1e-9, "three share the gain of six");
        assertTrue(items.get(0).reason().endsWith("6 lines of this book alike"));
    }

    @Test
    void anOpenMeasureIsAskedAboutThreeTimesAndNoMoreOnceItIsConfirmed() throws IOException {
        lay(recipes(7, "2 spoons of syrup.", "1 pony of gin."));
        List<Review.Item> asked =
                items().stream().filter(i -> i.reason().startsWith("the spoon is open")).toList();
        assertEquals(3, asked.size());
        assertEquals(7, asked.get(0).alike());
        Source source = asked.get(0).version().source();
        desk.decide(
                "line",
                source.id(),
                Optional.of(Anchor.of(source.text(), asked.get(0).words())),
                new TreeMap<>(Map.of("action", "right")));
        assertTrue(items().stream().noneMatch(i -> i.reason().startsWith("the spoon is open")));
    }

    @Test
    void aClearBookAsksNothing() throws IOException {
        lay(recipes(3, "1 pint of rum.", "1 pint of water."));
        assertEquals(List.of(), items());
    }
}
