package org.stillroom.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.eclipse.swt.widgets.Combo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Parts;

/** No work of ours keeps the window from answering. */
class UiWatchTests {
    /** The owner's limit for what may run on the window's thread in one go. */
    private static final long MOST_MILLIS = 50;

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
}
