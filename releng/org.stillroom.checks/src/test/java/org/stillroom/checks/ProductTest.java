package org.stillroom.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The product starts as a product: unpacked, by its own script, with nothing of the build near. */
class ProductTest {

    /** A line of the window list for a window of some size whose title names the tool. */
    private static final Pattern TITLED =
            Pattern.compile("\"[^\"]*Stillroom[^\"]*\":.*\\s\\d{3,}x\\d{3,}\\+");

    @TempDir Path personal;

    private Product product;

    @BeforeEach
    void takeTheBuiltProduct() {
        product = Product.built(personal);
    }

    @Test
    void helpListsWhatTheToolCanDo() throws Exception {
        Product.Run run = product.run("help");
        assertEquals(0, run.exitCode(), run.err());
        assertTrue(run.out().contains("lineage"), run.out());
        assertEquals("", run.err());
    }

    @Test
    void anUnknownWordEndsWithAnErrorCodeAndASentence() throws Exception {
        Product.Run run = product.run("lineagee");
        assertTrue(run.exitCode() != 0);
        assertTrue(run.err().contains("lineage"), run.err());
        assertTrue(!run.err().contains("\tat "), run.err());
    }

    @Test
    void theWorkbenchSaysThatItNeedsADisplay() throws Exception {
        Product.Run run = product.run(Map.of("DISPLAY", "", "WAYLAND_DISPLAY", ""));
        assertEquals(69, run.exitCode());
        assertTrue(run.err().contains("display"), run.err());
        assertEquals(1, run.err().lines().count());
    }

    @Test
    void aFolderThatIsNotThereIsNamed() throws Exception {
        Product.Run run = product.run("workbench", "no-such-folder");
        assertEquals(69, run.exitCode());
        assertTrue(run.err().contains("no-such-folder"), run.err());
    }

    @Test
    void theProductKeepsNothingPersonalInItsOwnFolder() throws Exception {
        Path configuration = product.folder().resolve("configuration");
        long before = countFiles(configuration);
        product.run("help");
        assertEquals(before, countFiles(configuration));
        assertTrue(countFiles(personal.resolve("cache")) > 0);
    }

    @Test
    void theDemoRunsAndItsFiguresExist() throws Exception {
        Product.Run run = product.run("demo");
        assertEquals(0, run.exitCode(), run.err());
        List<Path> figures =
                Stream.of(run.out().split("\\s+"))
                        .filter(word -> word.endsWith(".svg") || word.endsWith(".png"))
                        .map(word -> personal.resolve(word))
                        .toList();
        assertTrue(figures.size() >= 4, run.out());
        for (Path figure : figures) {
            assertTrue(Files.size(figure) > 0, figure.toString());
        }
    }

    @Test
    void theWorkbenchOpensAWindowAndLogsNoError() throws Exception {
        Path noise = personal.resolve("workbench.txt");
        Process workbench =
                product.builder(Map.of())
                        .redirectErrorStream(true)
                        .redirectOutput(noise.toFile())
                        .start();
        try {
            assertTrue(
                    windowAppears(workbench),
                    () -> "no window within a minute; it said: " + contentOf(noise));
        } finally {
            workbench.destroy();
            if (!workbench.waitFor(30, TimeUnit.SECONDS)) {
                workbench.destroyForcibly();
            }
        }
        Path log = personal.resolve("state/workbench/.metadata/.log");
        List<String> errors =
                contentOf(log).lines().filter(line -> line.matches("!ENTRY \\S+ 4 .*")).toList();
        assertEquals(List.of(), errors, () -> contentOf(log));
    }

    private static boolean windowAppears(Process workbench) throws Exception {
        long end = System.nanoTime() + TimeUnit.MINUTES.toNanos(1);
        while (workbench.isAlive() && System.nanoTime() < end) {
            Process list =
                    new ProcessBuilder("xwininfo", "-root", "-tree")
                            .redirectError(ProcessBuilder.Redirect.DISCARD)
                            .start();
            String windows =
                    new String(list.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            if (TITLED.matcher(windows).find()) {
                return true;
            }
            Thread.sleep(250);
        }
        return false;
    }

    private static String contentOf(Path file) {
        try {
            return Files.exists(file) ? Files.readString(file) : "";
        } catch (IOException e) {
            return "unreadable: " + e.getMessage();
        }
    }

    private static long countFiles(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).count();
        }
    }
}
