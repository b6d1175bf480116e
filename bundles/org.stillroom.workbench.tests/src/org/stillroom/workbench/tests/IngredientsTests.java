package org.stillroom.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.model.spec.Version;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Parts;

/** Senses are looked up, added, named, split and merged on the screen, and every change is undone. */
class IngredientsTests {
    private static final String LIST = "Ingredients";
    private static final String NAME = "Name of an ingredient";

    @TempDir private Path folder;

    private static Window open(Path library) {
        Window window = Window.open("-library", library.toString());
        window.until(
                "the library is read",
                () -> window.context().get(OpenLibrary.class).study().isPresent());
        window.rest();
        return window;
    }

    private static List<String> found(Window window, String name) {
        window.type(NAME, name);
        window.rest();
        return window.cells(LIST).stream().map(r -> r.get(0)).toList();
    }

    private static void begin(Window window, String button) {
        window.get(
                () -> {
                    Button b = window.find(Button.class, button);
                    b.getDisplay().asyncExec(() -> b.notifyListeners(SWT.Selection, null));
                    return b;
                });
        window.until("the question is asked", () -> window.shells().size() > 1);
        window.rest();
    }

    private static String touched(Window window) {
        return window.get(() -> window.find(Label.class, "What it touches").getText());
    }

    private static void end(Window window, String verb) {
        window.run(
                () -> {
                    Shell dialog = window.shells().get(window.shells().size() - 1);
                    assertTrue(dialog.getDefaultButton().isEnabled(), verb);
                    assertEquals(verb, dialog.getDefaultButton().getText());
                    dialog.getDefaultButton().notifyListeners(SWT.Selection, null);
                });
        window.until("it is answered", () -> window.shells().size() == 1);
        window.rest();
    }

    @Test
    void aSenseIsAddedNamedSplitAndMergedAndEachIsUndone() throws IOException {
        try (Window window = open(Example.copy(folder))) {
            window.part(Parts.INGREDIENTS);
            window.rest();
            assertTrue(window.cells(LIST).size() >= 600, "all senses are listed");
            window.screenshot("ingredients-light");
            window.command("org.stillroom.workbench.command.theme", Map.of());
            window.screenshot("ingredients-dark");
            window.command("org.stillroom.workbench.command.theme", Map.of());
            window.rest();

            begin(window, "Add an ingredient…");
            window.type("Name", "Zorbwort cordial");
            window.run(() -> window.find(Combo.class, "What it is").select(0));
            window.run(
                    () ->
                            window.find(Combo.class, "What it is")
                                    .notifyListeners(SWT.Selection, null));
            assertTrue(touched(window).contains("No line"), touched(window));
            window.screenshot("ingredients-add");
            end(window, "Add");
            assertTrue(found(window, "zorbwort cordial").contains("Zorbwort cordial"));

            begin(window, "Add a name…");
            window.type("Further name", "zorbwort water");
            end(window, "Add");
            assertEquals("Zorbwort cordial", found(window, "zorbwort water").get(0));

            begin(window, "Split in two…");
            window.type("Name of the new one", "Zorb water");
            window.run(
                    () -> {
                        Table names = window.find(Table.class, "Names that go over");
                        TableItem item = names.getItem(0);
                        assertEquals("zorbwort water", item.getText());
                        item.setChecked(true);
                        names.notifyListeners(SWT.Selection, null);
                    });
            window.screenshot("ingredients-split");
            end(window, "Split");
            assertEquals("Zorb water", found(window, "zorbwort water").get(0));

            begin(window, "Merge into another…");
            window.run(() -> window.find(Combo.class, "The same as").setText("Zorbwort cordial"));
            end(window, "Merge");
            assertEquals("Zorbwort cordial", found(window, "zorbwort water").get(0));

            for (int i = 0; i < 4; i++) {
                window.command("org.stillroom.workbench.command.undo", Map.of());
                window.rest();
            }
            assertFalse(found(window, "zorbwort cordial").contains("Zorbwort cordial"));
        }
    }

    @Test
    void theFiguresOfTheWholeAreExplained() throws IOException {
        try (Window window = open(Example.copy(folder))) {
            Version version =
                    window.get(
                            () ->
                                    window
                                            .context()
                                            .get(OpenLibrary.class)
                                            .study()
                                            .orElseThrow()
                                            .versions()
                                            .stream()
                                            .filter(v -> v.spec().strength().isPresent())
                                            .findFirst()
                                            .orElseThrow());
            window.run(() -> window.context().get(Navigator.class).page(version.id()));
            window.rest();
            window.key(() -> window.find(StyledText.class, "Cautions and doubts"), SWT.CR, '\r');
            window.rest();
            String told =
                    window.get(() -> window.find(Tree.class, "Explanation").getItem(0).getText());
            assertTrue(told.contains("before ice"), told);
            window.screenshot("explanation-of-the-whole");
        }
    }

    @Test
    void aBooksOwnTableComesFirstInMeasures() throws IOException {
        try (Window window = open(Example.copy(folder))) {
            window.part(Parts.MEASURES);
            window.rest();
            Combo book =
                    window.get(() -> window.find(Combo.class, "Book whose own table comes first"));
            int books = window.get(() -> book.getItemCount());
            assertTrue(books > 1, "the example has books with tables of their own");
            String before = window.cells("Who says what").get(0).get(1);
            window.run(
                    () -> {
                        book.select(1);
                        book.notifyListeners(SWT.Selection, null);
                    });
            window.rest();
            window.screenshot("measures-of-a-book");
            assertFalse(window.cells("Who says what").isEmpty(), before);
        }
    }
}
