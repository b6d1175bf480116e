package org.stillroom.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.model.application.ui.MUIElement;
import org.eclipse.e4.ui.workbench.modeling.EModelService;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Parts;
import org.stillroom.workbench.shell.Settings;

/** What comes back when the window is opened again, and what must not. */
class RestartTests {
    private static final String LEFT = "org.stillroom.workbench.stack.left";

    @TempDir private Path folder;

    private static void awaitLibrary(Window window) {
        window.until(
                "the library is read",
                () -> window.context().get(OpenLibrary.class).study().isPresent());
        window.rest();
    }

    private static MUIElement element(Window window, String id) {
        MApplication application = window.context().get(MApplication.class);
        return window.context().get(EModelService.class).find(id, application);
    }

    @Test
    void libraryLayoutThemeAndArrangementComeBack() throws IOException {
        Path library = Example.copy(folder);
        boolean dark;
        try (Window window = Window.open("-library", library.toString())) {
            awaitLibrary(window);
            window.part(Parts.LIBRARY);
            window.choose("By decade");
            window.command("org.stillroom.workbench.command.theme", Map.of());
            window.run(() -> element(window, LEFT).setContainerData("4100"));
            window.rest();
            dark = window.get(() -> Window.isDark(window.context()));
        }
        try (Window window = Window.open()) {
            awaitLibrary(window);
            window.part(Parts.LIBRARY);
            assertEquals(library.toRealPath(), library(window).toRealPath());
            assertEquals("4100", window.get(() -> element(window, LEFT).getContainerData()));
            assertTrue(window.get(() -> window.find(Button.class, "By decade").getSelection()));
            assertEquals(dark, window.get(() -> Window.isDark(window.context())));
            window.command("org.stillroom.workbench.command.theme", Map.of());
            window.rest();
        }
    }

    private static Path library(Window window) {
        return window.get(() -> window.context().get(OpenLibrary.class).folder().orElseThrow());
    }

    @Test
    void layoutOfAnotherModelIsDropped() throws IOException {
        Path library = Example.copy(folder);
        try (Window window = Window.open("-library", library.toString())) {
            awaitLibrary(window);
            window.run(() -> element(window, LEFT).setContainerData("6300"));
        }
        new Settings().layout("made with another model");
        try (Window window = Window.open()) {
            assertEquals("2300", window.get(() -> element(window, LEFT).getContainerData()));
            for (String part : List.of(Parts.LIBRARY, Parts.PAGE, Parts.DRIFT)) {
                assertTrue(window.get(() -> element(window, part) != null), part);
            }
            assertTrue(window.get(() -> Display.getCurrent() != null));
        }
    }
}
