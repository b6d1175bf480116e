package org.stillroom.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.model.spec.Version;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Parts;
import org.stillroom.workbench.widgets.FigureCanvas;

/** A word of measure is explored, from the form and from any amount, and comes back next time. */
class MeasuresTests {
    private static final String TABLE = "Who says what";

    @TempDir private Path folder;

    private static Window open(Path library) {
        Window window = Window.open("-library", library.toString());
        window.until(
                "the library is read",
                () -> window.context().get(OpenLibrary.class).study().isPresent());
        window.rest();
        return window;
    }

    private static void ask(Window window, String word, String place, String date) {
        window.run(() -> window.find(Combo.class, "Word of measure").setText(word));
        window.type("Place", place);
        window.type("Date", date);
        window.press("Show what is said");
        window.rest();
    }

    private static void awaitFigure(Window window) {
        window.until(
                "the figure is drawn",
                () ->
                        window.controls().stream()
                                .anyMatch(
                                        c ->
                                                c instanceof FigureCanvas f
                                                        && f.isVisible()
                                                        && f.isDrawn()));
    }

    private static void shoot(Window window, String name) {
        window.screenshot(name + "-light");
        window.command("org.stillroom.workbench.command.theme", Map.of());
        window.screenshot(name + "-dark");
        window.command("org.stillroom.workbench.command.theme", Map.of());
        window.rest();
    }

    @Test
    void aWordIsExploredAndComesBackAtTheNextStart() throws IOException {
        Path library = Example.copy(folder);
        try (Window window = open(library)) {
            window.part(Parts.MEASURES);
            window.rest();
            ask(window, "wineglass", "GB", "1862");
            awaitFigure(window);
            List<List<String>> rows = window.cells(TABLE);
            assertTrue(rows.size() > 20, rows::toString);
            assertEquals("1", rows.get(0).get(0));
            assertTrue(rows.get(0).get(3).endsWith("%"), rows::toString);
            shoot(window, "measures");
            ask(window, "dash", "", "");
            awaitFigure(window);
            assertTrue(window.cells(TABLE).size() < rows.size());
            shoot(window, "measures-dash");
            ask(window, "xyzzy", "GB", "1862");
            assertTrue(window.cells(TABLE).isEmpty());
            assertEquals(1, window.get(() -> window.shells().size()), "no error is shown");
            window.screenshot("measures-unknown-word");
            ask(window, "pony", "US", "1884");
            awaitFigure(window);
        }
        try (Window window = open(library)) {
            window.part(Parts.MEASURES);
            window.rest();
            assertEquals(
                    "pony",
                    window.get(() -> window.find(Combo.class, "Word of measure").getText()));
            assertEquals("1884", window.get(() -> window.find(Text.class, "Date").getText()));
            assertFalse(window.cells(TABLE).isEmpty());
        }
    }

    @Test
    void anAmountLeadsToItsExplanationAndToItsWord() throws IOException {
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
                                            .filter(MeasuresTests::startsWithAWineglass)
                                            .findFirst()
                                            .orElseThrow());
            window.run(() -> window.context().get(Navigator.class).page(version.id()));
            window.rest();
            window.select("Spec", 0);
            window.open("Spec");
            window.rest();
            assertTrue(
                    window.get(
                            () ->
                                    window.find(Tree.class, "Explanation")
                                            .getItem(0)
                                            .getText()
                                            .contains("ml")));
            window.screenshot("explanation-of-an-amount");
            window.press("Show this word in Measures");
            window.rest();
            awaitFigure(window);
            assertTrue(
                    window.get(() -> window.find(Combo.class, "Word of measure").getText())
                            .startsWith("wineglass"));
            window.screenshot("measures-from-an-amount");
        }
    }

    private static boolean startsWithAWineglass(Version v) {
        return !v.spec().lines().isEmpty()
                && v.spec().lines().get(0).line().measure().equals("wineglass")
                && v.spec().lines().get(0).millilitres().isPresent();
    }

    @Test
    void whatIsFoundOrComparedIsExplainedByKey() throws IOException {
        try (Window window = open(Example.copy(folder))) {
            window.part(Parts.SEARCH);
            window.rest();
            window.until("hits", () -> !rows(window).isEmpty());
            window.command("org.stillroom.command.explain", Map.of());
            window.rest();
            assertTrue(
                    window.get(
                            () ->
                                    window.find(Tree.class, "Explanation")
                                                    .getItem(0)
                                                    .getItems()
                                                    .length
                                            >= 4));
            window.run(
                    () -> {
                        Tree tree = window.find(Tree.class, "Explanation");
                        Event menu = new Event();
                        tree.getMenu().notifyListeners(SWT.Show, menu);
                        assertFalse(tree.getMenu().getItem(0).isEnabled());
                    });
        }
    }

    private static List<String> rows(Window window) {
        return List.of(window.find(org.eclipse.swt.widgets.Table.class, "Found recipes").getItems())
                .stream()
                .map(i -> i.getText(0))
                .toList();
    }
}
