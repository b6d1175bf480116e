package org.stillroom.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.swt.widgets.Combo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.model.spec.Version;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Parts;

/** No work of ours keeps the window from answering. */
class UiWatchTests {
    /** The owner's limit for what may run on the window's thread in one go. */
    private static final long MOST_MILLIS = 50;

    private static final int RECIPES = 8_000;

    @TempDir private Path folder;

    private Window open() throws IOException {
        Window window = Window.open("-library", Example.copy(folder).toString());
        window.until(
                "the library is read",
                () -> window.context().get(OpenLibrary.class).study().isPresent());
        window.rest();
        return window;
    }

    @Test
    void reviewRulesMeasuresAndTheFormLetTheWindowAnswer() throws IOException {
        try (Window window = open();
                UiWatch watch = UiWatch.on(Window.thread())) {
            window.part(Parts.REVIEW);
            window.rest();
            assertFalse(window.cells("Doubtful readings").isEmpty());
            window.select("Doubtful readings", 0);
            window.open("Doubtful readings");
            window.rest();
            correct(window);
            window.part(Parts.RULES);
            window.rest();
            window.part(Parts.MEASURES);
            window.rest();
            window.run(() -> window.find(Combo.class, "Word of measure").setText("wineglass"));
            window.type("Place", "GB");
            window.press("Show what is said");
            window.rest();
            assertFalse(window.cells("Who says what").isEmpty());
            window.select("Who says what", 3);
            window.rest();
            assertTrue(watch.longestMillis() <= MOST_MILLIS, watch::where);
        }
    }

    private static void correct(Window window) {
        for (String quantity : new String[] {"1", "1 1/2", "some", "2"}) {
            window.type("Quantity", quantity);
            window.rest();
        }
        window.run(() -> window.find(Combo.class, "Measure").setText("teaspoon"));
        window.type("Ingredient", "lemon");
        window.rest();
        window.press("Leave");
        window.rest();
    }

    @Test
    void theWatchSeesWhatKeepsTheWindow() throws IOException {
        try (Window window = open();
                UiWatch watch = UiWatch.on(Window.thread())) {
            window.run(UiWatchTests::dawdle);
            window.rest();
            assertTrue(watch.longestMillis() > MOST_MILLIS, watch::where);
        }
    }

    private static void dawdle() {
        long sum = 0;
        for (long i = 0; i < 1_000_000_000L && sum >= 0; i++) {
            sum += i & 3;
        }
        assertTrue(sum > 0);
    }

    /** Eight thousand recipes in one plain text: 2 MB, more than forty books of a usual size. */
    @Test
    void aLargeTextLetsTheWindowAnswer() throws IOException {
        Path library = folder.resolve("large");
        Files.createDirectories(library.resolve("sources"));
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < RECIPES; i++) {
            text.append("KEEL PUNCH NO. ").append(i).append("\n\n");
            text.append("1 wineglass of gin.\n2 dashes of bitters.\n1 spoonful of sugar.\n");
            text.append("Juice of half a lemon. Fill the mixing glass with shaved ice,\n");
            text.append("stir well, and strain into a cocktail glass. Put a slice of\n");
            text.append("orange on top, and serve it with a little nutmeg.\n\n\n");
        }
        Files.writeString(library.resolve("sources/large.txt"), text);
        try (UiWatch watch = UiWatch.on(Window.thread());
                Window window = Window.open("-library", library.toString())) {
            window.until(
                    "the library is read",
                    () -> window.context().get(OpenLibrary.class).study().isPresent());
            window.rest();
            List<Version> all =
                    window.get(
                            () ->
                                    window.context()
                                            .get(OpenLibrary.class)
                                            .study()
                                            .orElseThrow()
                                            .versions());
            assertTrue(all.size() >= RECIPES - 2, () -> "read " + all.size());
            window.run(() -> window.context().get(Navigator.class).page(all.getLast().id()));
            window.rest();
            window.part(Parts.SEARCH);
            window.rest();
            window.part(Parts.RULES);
            window.rest();
            assertTrue(watch.longestMillis() <= MOST_MILLIS, watch::where);
        }
    }
}
