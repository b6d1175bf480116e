package org.stillroom.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.ServiceRegistration;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.Study;
import org.stillroom.lineage.Drink;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.spec.Version;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Parts;
import org.stillroom.workbench.widgets.FigureCanvas;

/** Every part of the window, worked with on a copy of the example library. */
class PartsTests {
    @TempDir private static Path folder;
    private static Window window;

    @BeforeAll
    static void open() throws IOException {
        Path library = Example.copy(folder);
        Files.writeString(
                library.resolve("sources/broken.md"), "---\ntitle: [unclosed\n---\nWords.\n");
        window = Window.open("-library", library.toString());
        window.until("the library is read", () -> library().study().isPresent());
        window.rest();
    }

    @AfterAll
    static void close() {
        window.close();
    }

    private static OpenLibrary library() {
        return window.context().get(OpenLibrary.class);
    }

    private static Study study() {
        return window.get(() -> library().study().orElseThrow());
    }

    /** Returns the version with the most lines that stands in our own place of the library. */
    private static Version richest() {
        return study().versions().stream()
                .filter(v -> v.reading().lines().stream().allMatch(l -> l.amountSpan().isPresent()))
                .max(java.util.Comparator.comparingInt(v -> v.reading().lines().size()))
                .orElseThrow();
    }

    private static Drink mostTold() {
        return study().drinks(Progress.SILENT).drinks().stream()
                .max(java.util.Comparator.comparingInt(d -> d.versions().size()))
                .orElseThrow();
    }

    private static void shoot(String name) {
        window.screenshot(name + "-light");
        window.command("org.stillroom.workbench.command.theme", Map.of());
        window.screenshot(name + "-dark");
        window.command("org.stillroom.workbench.command.theme", Map.of());
        window.rest();
    }

    private static List<String> lines(String tree) {
        return window.get(
                () -> {
                    Tree found = window.find(Tree.class, tree);
                    return List.of(found.getItems()).stream().map(TreeItem::getText).toList();
                });
    }

    @Test
    void treeShowsTheLibraryThreeWays() {
        window.part(Parts.LIBRARY);
        window.choose("By source");
        window.rest();
        assertEquals(study().sources().size(), lines("Library").size());
        window.choose("By decade");
        window.rest();
        assertTrue(lines("Library").stream().anyMatch(l -> l.matches("1\\d\\d0s .*recipes?")));
        shoot("library-by-decade");
        window.choose("By drink");
        window.rest();
        assertEquals(study().drinks(Progress.SILENT).drinks().size(), lines("Library").size());
        shoot("library-by-drink");
        window.type("Narrow the library down", mostTold().name());
        window.rest();
        assertTrue(lines("Library").size() < 20, () -> lines("Library").toString());
        window.type("Narrow the library down", "");
        window.choose("By source");
        window.rest();
    }

    @Test
    void enterInTheTreeOpensThePage() {
        window.part(Parts.LIBRARY);
        window.choose("By source");
        window.rest();
        window.run(
                () -> {
                    Tree tree = window.find(Tree.class, "Library");
                    Event enter = new Event();
                    enter.item = tree.getItem(0);
                    tree.notifyListeners(SWT.DefaultSelection, enter);
                });
        window.rest();
        String words =
                window.get(() -> window.find(StyledText.class, "Words of the source").getText());
        assertTrue(study().sources().stream().anyMatch(s -> s.text().toString().contains(words)));
    }

    @Test
    void selectedLineLightsItsWordsUp() {
        Version version = richest();
        window.run(() -> window.context().get(Navigator.class).page(version.id()));
        window.rest();
        assertEquals(version.spec().lines().size(), window.cells("Spec").size());
        window.select("Spec", 1);
        String name = version.reading().lines().get(1).ingredient().orElseThrow().name();
        List<String> lit = lit();
        assertTrue(
                lit.stream().anyMatch(w -> w.equalsIgnoreCase(name)),
                () -> "“" + name + "” among " + lit);
        window.open("Spec");
        window.rest();
        assertFalse(lines("Explanation").isEmpty());
        shoot("page");
    }

    /** Returns the words of the page whose ground is not the paper's. */
    private static List<String> lit() {
        return window.get(
                () -> {
                    StyledText text = window.find(StyledText.class, "Words of the source");
                    return java.util.Arrays.stream(text.getStyleRanges())
                            .filter(r -> r.background != null)
                            .map(
                                    r ->
                                            text.getText(r.start, r.start + r.length - 1)
                                                    .replace('\n', ' '))
                            .toList();
                });
    }

    @Test
    void caretInTheWordsSelectsTheLine() {
        Version version = richest();
        window.run(() -> window.context().get(Navigator.class).page(version.id()));
        window.rest();
        int place = version.reading().lines().get(2).ingredient().orElseThrow().span().start();
        window.run(
                () -> {
                    StyledText text = window.find(StyledText.class, "Words of the source");
                    String word = version.source().text().toString();
                    int zero = word.indexOf(text.getText());
                    text.setCaretOffset(version.source().text().toIndex(place) - zero);
                });
        window.rest();
        assertEquals(
                2,
                window.get(() -> window.find(Table.class, "Spec").getSelectionIndex())
                        - (version.spec().lines().size() - version.reading().lines().size()));
    }

    @Test
    void searchFindsAndAFacetKeepsToAPart() {
        window.part(Parts.SEARCH);
        window.type("Search", "sugar");
        window.until(
                "hits",
                () ->
                        window.find(Table.class, "Found recipes").getItemCount() > 0
                                && window.find(Table.class, "Found recipes").getItemCount()
                                        < study2());
        window.rest();
        int all = window.get(() -> window.find(Table.class, "Found recipes").getItemCount());
        shoot("search");
        window.run(
                () -> {
                    Tree facets = window.find(Tree.class, "Facets");
                    TreeItem decade =
                            List.of(facets.getItems()).stream()
                                    .filter(i -> i.getText().equals("Decade"))
                                    .findFirst()
                                    .orElseThrow();
                    TreeItem value = decade.getItem(0);
                    value.setChecked(true);
                    Event tick = new Event();
                    tick.item = value;
                    tick.detail = SWT.CHECK;
                    facets.notifyListeners(SWT.Selection, tick);
                });
        window.rest();
        int part = window.get(() -> window.find(Table.class, "Found recipes").getItemCount());
        assertTrue(part > 0 && part < all, part + " of " + all);
        window.open("Found recipes");
        window.rest();
        assertTrue(window.get(() -> window.shows(Table.class, "Spec")));
    }

    private static int study2() {
        return library().study().orElseThrow().versions().size();
    }

    @Test
    void versionsStandOnATimeLineWithTheLineage() {
        Drink drink = mostTold();
        window.run(() -> window.context().get(Navigator.class).drink(drink.id()));
        window.rest();
        window.until("the figure is drawn", () -> figureDrawn());
        assertEquals(drink.versions().size(), window.cells("Versions in order of time").size());
        window.select("Versions in order of time", drink.versions().size() - 1);
        assertFalse(window.cells("Possible parents").isEmpty());
        shoot("versions");
        window.open("Versions in order of time");
        window.rest();
        assertTrue(window.get(() -> window.shows(Table.class, "Spec")));
    }

    private static boolean figureDrawn() {
        return window.controls().stream()
                .anyMatch(c -> c instanceof FigureCanvas f && f.isVisible() && f.isDrawn());
    }

    @Test
    void driftShowsChartAndTable() {
        Drink drink = mostTold();
        window.run(() -> window.context().get(Navigator.class).drink(drink.id()));
        window.part(Parts.DRIFT);
        window.rest();
        window.until("the chart is drawn", () -> figureDrawn());
        assertFalse(
                window.get(() -> window.find(StyledText.class, "The result in words").getText())
                        .isBlank());
        shoot("drift");
        window.command("org.stillroom.command.table", Map.of());
        window.rest();
        assertFalse(window.cells("Shares of the whole").isEmpty());
        shoot("drift-table");
        window.command("org.stillroom.command.table", Map.of());
    }

    @Test
    void everyInquiryIsListedAndAnswers() {
        window.part(Parts.INQUIRIES);
        window.rest();
        List<String> names = window.cells("Inquiries").stream().map(r -> r.get(0)).toList();
        assertTrue(
                names.containsAll(List.of("find", "lineage", "sources", "versions")),
                names::toString);
        window.select("Inquiries", names.indexOf("lineage"));
        window.run(
                () ->
                        window.controls().stream()
                                .filter(
                                        c ->
                                                c instanceof org.eclipse.swt.widgets.Text t
                                                        && t.isVisible()
                                                        && org.stillroom.workbench.widgets.Names.of(
                                                                        t)
                                                                .orElse("")
                                                                .startsWith("drink:"))
                                .findFirst()
                                .ifPresent(
                                        c ->
                                                ((org.eclipse.swt.widgets.Text) c)
                                                        .setText(mostToldName())));
        window.press("Ask");
        window.rest();
        window.until("the figure is drawn", () -> figureDrawn());
        shoot("inquiries");
    }

    @Test
    void inquiryOfAnotherBundleAppearsAndAnswers() {
        window.part(Parts.INQUIRIES);
        window.rest();
        ServiceRegistration<Inquiry> own =
                FrameworkUtil.getBundle(PartsTests.class)
                        .getBundleContext()
                        .registerService(Inquiry.class, new OwnInquiry(), null);
        window.until("it appears", () -> inquiries().contains("count"));
        window.select("Inquiries", window.get(() -> inquiries().indexOf("count")));
        window.type("words: words of a title", "punch");
        window.press("Ask");
        window.rest();
        assertTrue(window.get(() -> window.shows(Tree.class, "Explanation")));
        window.screenshot("inquiry-of-another-bundle");
        own.unregister();
        window.until("it goes", () -> !inquiries().contains("count"));
    }

    private static List<String> inquiries() {
        return List.of(window.find(Table.class, "Inquiries").getItems()).stream()
                .map(i -> i.getText(0))
                .toList();
    }

    private static String mostToldName() {
        return library().study().orElseThrow().drinks(Progress.SILENT).drinks().stream()
                .max(java.util.Comparator.comparingInt(d -> d.versions().size()))
                .orElseThrow()
                .name();
    }

    @Test
    void brokenFileIsAProblemAndTheRestOpens() {
        window.part(Parts.PROBLEMS);
        window.rest();
        assertTrue(
                window.cells("Problems").stream()
                        .anyMatch(r -> r.get(0).contains("broken.md") && !r.get(3).isEmpty()));
        shoot("problems");
    }
}
