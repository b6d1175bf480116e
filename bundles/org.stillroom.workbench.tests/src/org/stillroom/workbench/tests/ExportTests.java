package org.stillroom.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.lineage.Drink;
import org.stillroom.model.progress.Progress;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Parts;
import org.stillroom.workbench.widgets.FigureCanvas;
import org.stillroom.workbench.widgets.FileChooser;
import org.stillroom.workbench.widgets.Names;

/** Figures and tables are saved by the window's own buttons; only the dialog is answered for. */
class ExportTests {
    /** First bytes of every file of the format: W3C, Portable Network Graphics, third edition, 5.2. */
    private static final byte[] PNG = {(byte) 137, 80, 78, 71, 13, 10, 26, 10};

    @TempDir private Path folder;
    private Window window;
    private final List<FileChooser.Question> asked = new ArrayList<>();

    @BeforeEach
    void open() throws IOException {
        window = Window.open("-library", Example.copy(folder).toString());
        window.until(
                "the library is read",
                () -> window.context().get(OpenLibrary.class).study().isPresent());
        window.rest();
    }

    @AfterEach
    void close() {
        window.close();
    }

    private void answer(Optional<Path> file) {
        window.run(
                () ->
                        window.context()
                                .get(FileChooser.class)
                                .answerBy(
                                        question -> {
                                            asked.add(question);
                                            return file;
                                        }));
    }

    private Drink showDrink() {
        Drink drink =
                window
                        .get(() -> window.context().get(OpenLibrary.class).study().orElseThrow())
                        .drinks(Progress.SILENT)
                        .drinks()
                        .stream()
                        .max(java.util.Comparator.comparingInt(d -> d.versions().size()))
                        .orElseThrow();
        window.run(() -> window.context().get(Navigator.class).drink(drink.id()));
        window.rest();
        window.until(
                "the figure is drawn",
                () ->
                        window.controls().stream()
                                .anyMatch(
                                        c ->
                                                c instanceof FigureCanvas f
                                                        && f.isVisible()
                                                        && f.isDrawn()));
        return drink;
    }

    @Test
    void aFigureIsSavedAsADrawingAndAsAPicture() throws IOException {
        Drink drink = showDrink();
        Path svg = folder.resolve("figure.svg");
        answer(Optional.of(svg));
        window.press("Save figure…");
        window.rest();
        String drawing = Files.readString(svg);
        assertTrue(drawing.contains("<svg"), drawing.substring(0, 200));
        assertTrue(drawing.contains("Lineage of " + drink.name()), drink.name());
        assertTrue(drawing.replaceAll("\\s", "").endsWith("</svg>"), "the drawing is whole");
        assertTrue(window.said().startsWith("Saved " + svg), window::said);
        Path png = folder.resolve("figure.png");
        answer(Optional.of(png));
        window.press("Save figure…");
        window.rest();
        assertArrayEquals(PNG, Arrays.copyOf(Files.readAllBytes(png), PNG.length));
        ImageData picture = new ImageData(png.toString());
        assertTrue(picture.width > 400 && picture.height > 200, picture.width + " wide");
        assertEquals("lineage.svg", asked.get(0).fileName());
        assertEquals(
                List.of("svg", "png"),
                asked.get(0).forms().stream().map(FileChooser.Form::ending).toList());
    }

    @Test
    void aTableIsSavedAsCsv() throws IOException {
        askForSources();
        Path csv = folder.resolve("table.csv");
        answer(Optional.of(csv));
        pressSaveTable();
        List<String> lines = Files.readAllLines(csv);
        List<String> heads =
                window.get(
                        () -> {
                            Table table = window.find(Table.class, caption());
                            return Arrays.stream(table.getColumns()).map(c -> c.getText()).toList();
                        });
        assertEquals(String.join(",", heads), lines.get(0));
        assertEquals(window.cells(window.get(this::caption)).size() + 1, lines.size());
        assertTrue(asked.get(0).fileName().endsWith(".csv"), asked::toString);
    }

    @Test
    void whoWouldRatherNotSaveWritesNothingAndABadPlaceIsTold() throws IOException {
        askForSources();
        answer(Optional.empty());
        pressSaveTable();
        assertEquals(1, asked.size());
        assertFalse(window.said().startsWith("Saved"), window::said);
        Path nowhere = folder.resolve("no such folder/table.csv");
        answer(Optional.of(nowhere));
        pressSaveTable();
        assertFalse(Files.exists(nowhere));
        assertTrue(window.said().startsWith("Saving the table"), window::said);
        assertFalse(window.said().contains("Exception"), window::said);
        assertEquals(1, window.get(() -> window.shells().size()), "no dialog stands");
    }

    private void askForSources() {
        window.part(Parts.INQUIRIES);
        window.rest();
        window.select(
                "Inquiries",
                window.cells("Inquiries").stream().map(r -> r.get(0)).toList().indexOf("sources"));
        window.press("Ask");
        window.rest();
    }

    /** The button that saves the first table of the answer. */
    private Button saveTable() {
        return window.controls().stream()
                .filter(c -> c instanceof Button && c.isVisible())
                .filter(c -> Names.of(c).filter(n -> n.startsWith("Save table ")).isPresent())
                .map(Button.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private String caption() {
        return Names.of(saveTable()).orElseThrow().substring("Save table ".length());
    }

    private void pressSaveTable() {
        window.run(() -> saveTable().notifyListeners(SWT.Selection, new Event()));
        window.rest();
    }
}
