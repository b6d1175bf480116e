package org.stillroom.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The product starts as a product: unpacked, by its own script, with nothing of the build near. */
class ProductTest {

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

    private static long countFiles(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).count();
        }
    }
}
