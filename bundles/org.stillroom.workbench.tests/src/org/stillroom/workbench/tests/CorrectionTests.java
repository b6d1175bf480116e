package org.stillroom.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.model.application.ui.menu.MMenuItem;
import org.eclipse.e4.ui.workbench.modeling.EModelService;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.inquiry.Study;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.spec.Version;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Parts;

/** Readings put right by hand: on the words, by cutting, by rules, from the review list. */
class CorrectionTests {
    private static final String BOOK =
            "---\ntitle: The Keel Book\ntext-date: 1862\nplace: London, GB\ntrade: bar\n---\n"
                    + recipe("Anchor Sling", "2 spoons of sugar.\n1 wineglass gin.\n1 fill tatty.")
                    + recipe("Keel Fizz", "1 spoon of sugar.\n1 wineglass rum.\nA word of praise.")
                    + recipe("Capstan Sour", "3 spoons of honey.\n1 wineglass brandy.")
                    + recipe(
                            "Bowsprit", "1 spoon of orgeat.\n1 wineglass port.\n2 dashes bitters.");

    @TempDir private Path folder;
    private Path file;
    private Window window;

    private static String recipe(String title, String lines) {
        return "# " + title + "\n\n" + lines + "\nShake and strain.\n\n";
    }

    @BeforeEach
    void open() throws IOException {
        file = folder.resolve("library/sources/keel.md");
        Files.createDirectories(file.getParent());
        Files.writeString(file, BOOK);
        start();
    }

    private void start() {
        window = Window.open("-library", folder.resolve("library").toString());
        window.until(
                "the library is read",
                () ->
                        library().study().isPresent()
                                && library()
                                        .folder()
                                        .filter(f -> f.startsWith(folder))
                                        .isPresent());
        window.rest();
    }

    @AfterEach
    void close() {
        window.close();
    }

    private OpenLibrary library() {
        return window.context().get(OpenLibrary.class);
    }

    private Study study() {
        return window.get(() -> library().study().orElseThrow());
    }

    private Version version(String title) {
        return study().versions().stream()
                .filter(v -> v.witness().title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    private ReadingLine line(String recipe, int number) {
        return version(recipe).reading().lines().get(number);
    }

    private void page(String recipe) {
        String id = version(recipe).id();
        window.run(() -> window.context().get(Navigator.class).page(id));
        window.rest();
    }

    private void select(String words) {
        window.run(
                () -> {
                    StyledText text = window.find(StyledText.class, "Words of the source");
                    int at = text.getText().indexOf(words);
                    assertTrue(at >= 0, words + " on the page");
                    text.setSelection(at, at + words.length());
                });
    }

    private void command(String id) {
        window.command("org.stillroom.command." + id, Map.of());
        window.rest();
    }

    private void shoot(String name) {
        window.screenshot(name + "-light");
        window.command("org.stillroom.workbench.command.theme", Map.of());
        window.screenshot(name + "-dark");
        window.command("org.stillroom.workbench.command.theme", Map.of());
        window.rest();
    }

    private String menu(String id) {
        return window.get(
                () ->
                        window.context()
                                .get(EModelService.class)
                                .findElements(
                                        window.context().get(MApplication.class),
                                        "org.stillroom.workbench.menu." + id,
                                        MMenuItem.class,
                                        null,
                                        EModelService.IN_MAIN_MENU)
                                .get(0)
                                .getLabel());
    }

    /** Corrects a measure through the form, as the keyboard does. */
    private void correctMeasure(String recipe, String words, String measure) {
        page(recipe);
        select(words);
        window.key(() -> window.find(StyledText.class, "Words of the source"), SWT.CR, SWT.CR);
        window.run(() -> window.find(Combo.class, "Measure").setText(measure));
        window.rest();
        window.press("Save");
        window.rest();
    }

    @Test
    void wordsAreCorrectedInTheFormAndEverythingFollows() throws IOException {
        byte[] before = Files.readAllBytes(file);
        page("Anchor Sling");
        select("2 spoons of sugar");
        window.key(() -> window.find(StyledText.class, "Words of the source"), SWT.CR, SWT.CR);
        window.run(
                () -> {
                    assertEquals("spoon", window.find(Combo.class, "Measure").getText());
                    window.find(Combo.class, "Measure").setText("tablespoon");
                });
        window.type("Quantity", "1/2");
        window.rest();
        String preview =
                window.get(() -> window.find(Label.class, "The line as it would be").getText());
        assertTrue(preview.startsWith("1/2 tablespoon sugar:"), preview);
        shoot("correction-form");
        window.press("Save");
        window.rest();
        assertEquals("tablespoon", line("Anchor Sling", 0).measure());
        assertTrue(
                window.cells("Spec").get(0).toString().contains("100 %"),
                () -> window.cells("Spec").toString());
        assertArrayEquals(before, Files.readAllBytes(file));
        assertEquals("Undo: line of Anchor Sling corrected", menu("undo"));
    }

    @Test
    void theMeaningOfANameIsChosen() {
        page("Anchor Sling");
        select("1 wineglass gin");
        command("correct");
        window.run(
                () -> {
                    Combo meaning = window.find(Combo.class, "Meaning");
                    assertTrue(meaning.getItemCount() > 2, "gin may mean several things");
                    meaning.select(meaning.getItemCount() - 1);
                    meaning.notifyListeners(SWT.Modify, new org.eclipse.swt.widgets.Event());
                });
        window.rest();
        window.screenshot("correction-meaning");
        window.press("Save");
        window.rest();
        assertEquals(1, line("Anchor Sling", 1).ingredient().orElseThrow().senses().size());
        assertTrue(menu("undo").startsWith("Undo: line of Anchor Sling corrected"), menu("undo"));
    }

    @Test
    void aNumberThatIsNoneCannotBeSaved() {
        page("Anchor Sling");
        select("2 spoons of sugar");
        command("correct");
        window.type("Quantity", "some");
        window.rest();
        assertFalse(window.get(() -> window.find(Button.class, "Save").isEnabled()));
        window.press("Leave");
        assertEquals("spoon", line("Anchor Sling", 0).measure());
    }

    @Test
    void decisionsAreUndoneAfterARestart() {
        correctMeasure("Anchor Sling", "2 spoons of sugar", "teaspoon");
        assertEquals("teaspoon", line("Anchor Sling", 0).measure());
        window.close();
        start();
        assertEquals("teaspoon", line("Anchor Sling", 0).measure());
        assertEquals("Undo: line of Anchor Sling corrected", menu("undo"));
        window.command("org.stillroom.workbench.command.undo", Map.of());
        window.rest();
        assertEquals("spoon", line("Anchor Sling", 0).measure());
        assertEquals("Redo: line of Anchor Sling corrected", menu("redo"));
        window.command("org.stillroom.workbench.command.redo", Map.of());
        window.rest();
        assertEquals("teaspoon", line("Anchor Sling", 0).measure());
    }

    /** Answers the question for the right words. */
    private void putRight(String right) {
        window.get(
                () -> {
                    MenuItem item = menuItem("Put the words right…");
                    item.getDisplay().asyncExec(() -> item.notifyListeners(SWT.Selection, null));
                    return item;
                });
        window.until("the question is asked", () -> window.shells().size() > 1);
        window.rest();
        window.screenshot("put-right-" + (right.equals("rum") ? "back" : "question"));
        window.run(
                () -> {
                    Shell asked = window.shells().getLast();
                    window.controls().stream()
                            .filter(c -> c instanceof Text && c.getShell() == asked)
                            .map(Text.class::cast)
                            .filter(Text::getEditable)
                            .forEach(t -> t.setText(right));
                    asked.getDefaultButton().notifyListeners(SWT.Selection, null);
                });
        window.until("it is answered", () -> window.shells().size() == 1);
        window.rest();
    }

    @Test
    void wordsArePutRightBesideTheFile() throws IOException {
        byte[] before = Files.readAllBytes(file);
        page("Keel Fizz");
        select("rum");
        putRight("gin");
        assertEquals("gin", line("Keel Fizz", 1).ingredientName());
        assertEquals("1 wineglass rum", line("Keel Fizz", 1).text());
        assertTrue(menu("undo").startsWith("Undo: “rum” put right as “gin”"), menu("undo"));
        shoot("words-put-right");
        select("rum");
        putRight("rum");
        assertEquals("rum", line("Keel Fizz", 1).ingredientName());
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void wordsAreTakenOutOfARecipe() {
        page("Bowsprit");
        int before = version("Bowsprit").reading().lines().size();
        select("2 dashes bitters");
        command("remove");
        assertEquals(before - 1, version("Bowsprit").reading().lines().size());
        assertEquals("Undo: words taken out of Bowsprit", menu("undo"));
    }

    @Test
    void aPageIsCutFromItsMenuInTwoClicks() throws IOException {
        byte[] before = Files.readAllBytes(file);
        int recipes = study().versions().size();
        page("Keel Fizz");
        select("A word of praise.");
        choose("The recipe ends here");
        assertTrue(version("Keel Fizz").words().endsWith("A word of praise."));
        select("A word of praise");
        choose("A recipe begins here");
        assertEquals(recipes + 1, study().versions().size());
        shoot("cut-by-hand");
        select("A word of praise");
        choose("This is no recipe");
        assertEquals(recipes, study().versions().size());
        page("Bowsprit");
        select("1 spoon of orgeat");
        choose("Join with the recipe before");
        assertEquals(recipes - 1, study().versions().size());
        assertArrayEquals(before, Files.readAllBytes(file));
        for (int i = 0; i < 4; i++) {
            window.command("org.stillroom.workbench.command.undo", Map.of());
            window.rest();
        }
        assertEquals(recipes, study().versions().size());
        assertEquals("Undo", menu("undo"));
    }

    @Test
    void aTitleIsNamedOnThePage() throws IOException {
        byte[] before = Files.readAllBytes(file);
        int recipes = study().versions().size();
        page("Keel Fizz");
        select("A word of praise");
        choose("This is the title");
        assertEquals(recipes, study().versions().size());
        assertTrue(study().versions().stream().noneMatch(v -> isCalled(v, "Keel Fizz")));
        assertTrue(study().versions().stream().anyMatch(v -> isCalled(v, "A word of praise")));
        assertTrue(window.get(() -> shown("A word of praise")), "over the page");
        assertTrue(menu("undo").startsWith("Undo: title named"), () -> menu("undo"));
        assertArrayEquals(before, Files.readAllBytes(file));
        window.command("org.stillroom.workbench.command.undo", Map.of());
        window.rest();
        assertTrue(window.get(() -> shown("Keel Fizz")), "over the page again");
        assertEquals("Undo", menu("undo"));
    }

    private static boolean isCalled(Version version, String title) {
        return version.witness().title().equals(title);
    }

    private boolean shown(String words) {
        return window.controls().stream()
                .anyMatch(c -> c instanceof Label l && l.isVisible() && l.getText().equals(words));
    }

    private void choose(String item) {
        window.run(
                () -> {
                    org.eclipse.swt.widgets.Event event = new org.eclipse.swt.widgets.Event();
                    menuItem(item).notifyListeners(SWT.Selection, event);
                });
        window.rest();
    }

    private MenuItem menuItem(String item) {
        Menu menu = window.find(StyledText.class, "Words of the source").getMenu();
        return Stream.of(menu.getItems())
                .filter(each -> each.getText().startsWith(item))
                .findFirst()
                .orElseThrow(() -> new AssertionError("No “" + item + "” in the menu"));
    }

    @Test
    void whatLostItsWordsIsPlacedAgain() throws IOException {
        correctMeasure("Anchor Sling", "2 spoons of sugar", "teaspoon");
        Files.writeString(
                file,
                BOOK.replace(
                        "Anchor Sling\n\n2 spoons of sugar.\n1 wineglass gin",
                        "Anchor Sling\n\nGin, one wineglass; powder, two spoons"));
        window.command("org.stillroom.workbench.command.reread", Map.of());
        window.rest();
        window.part(Parts.PROBLEMS);
        window.rest();
        int row = rowOf("cannot be found again");
        window.select("Problems", row);
        shoot("lost-correction");
        window.press("Place it again");
        window.rest();
        select("powder, two spoons");
        shoot("place-again");
        window.press("Place it here");
        window.rest();
        assertTrue(
                version("Anchor Sling").reading().lines().stream()
                        .anyMatch(l -> l.measure().equals("teaspoon")));
        assertEquals(List.of(), study().books().get(0).reading().unplaced());
        window.command("org.stillroom.workbench.command.undo", Map.of());
        window.rest();
        window.part(Parts.PROBLEMS);
        window.select("Problems", rowOf("cannot be found again"));
        window.press("Take it back");
        window.rest();
        assertEquals(List.of(), study().books().get(0).reading().unplaced());
    }

    private int rowOf(String words) {
        List<List<String>> rows = window.cells("Problems");
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).toString().contains(words)) {
                return i;
            }
        }
        throw new AssertionError(rows.toString());
    }

    @Test
    void threeCorrectionsProposeARuleForTheRestOfTheBook() {
        correctMeasure("Anchor Sling", "2 spoons of sugar", "teaspoon");
        correctMeasure("Keel Fizz", "1 spoon of sugar", "teaspoon");
        assertFalse(window.get(() -> window.shows(Label.class, "Proposed rules")));
        correctMeasure("Capstan Sour", "3 spoons of honey", "teaspoon");
        window.until("the page tells", () -> window.shows(Label.class, "Proposed rules"));
        String hint = window.get(() -> window.find(Label.class, "Proposed rules").getText());
        assertTrue(hint.startsWith("A rule for this book is proposed"), hint);
        assertTrue(hint.endsWith("Ctrl+0 shows it."), hint);
        shoot("rule-hint");
        window.part(Parts.RULES);
        window.rest();
        assertEquals(1, window.cells("Rules").size(), () -> window.cells("Rules").toString());
        assertTrue(window.cells("Rules").get(0).toString().contains("spoon"));
        assertEquals("Bowsprit", window.cells("What the rule changes").get(0).get(0));
        shoot("rules");
        window.press("Accept the rule");
        window.rest();
        assertEquals("teaspoon", line("Bowsprit", 0).measure());
        assertEquals("holds", window.cells("Rules").get(0).get(2));
        page("Bowsprit");
        assertFalse(window.get(() -> window.shows(Label.class, "Proposed rules")));
        window.part(Parts.RULES);
        window.rest();
        window.run(() -> window.find(Table.class, "Rules").setSelection(0));
        window.press("Take the rule back");
        window.rest();
        assertEquals("spoon", line("Bowsprit", 0).measure());
    }

    @Test
    void theReviewListLeadsToTheWordsAndConfirms() {
        window.part(Parts.REVIEW);
        window.rest();
        List<List<String>> rows = window.cells("Doubtful readings");
        assertFalse(rows.isEmpty());
        shoot("review");
        window.select("Doubtful readings", 0);
        window.open("Doubtful readings");
        window.rest();
        assertTrue(window.get(() -> window.shows(Combo.class, "Measure")));
        window.press("Leave");
        window.part(Parts.REVIEW);
        window.rest();
        window.select("Doubtful readings", 0);
        window.press("It is right");
        window.rest();
        assertEquals(rows.size() - 1, window.cells("Doubtful readings").size());
    }
}
