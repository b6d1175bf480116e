package org.stillroom.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.model.application.commands.MCommand;
import org.eclipse.e4.ui.model.application.commands.MKeyBinding;
import org.eclipse.jface.bindings.keys.KeySequence;
import org.eclipse.jface.bindings.keys.ParseException;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Parts;
import org.stillroom.workbench.widgets.Names;

/** Everything can be reached by keyboard and has a name for assistive technology. */
class AccessTests {
    private static final List<String> PARTS =
            List.of(
                    Parts.LIBRARY,
                    Parts.PAGE,
                    Parts.SEARCH,
                    Parts.VERSIONS,
                    Parts.DRIFT,
                    Parts.MEASURES,
                    Parts.INGREDIENTS,
                    Parts.INQUIRIES,
                    Parts.EXPLANATION,
                    Parts.PROBLEMS,
                    Parts.REVIEW,
                    Parts.RULES);

    @TempDir private Path folder;

    @Test
    void everyFocusableControlHasANameAndEveryPartAKey() throws IOException {
        try (Window window = Window.open("-library", Example.copy(folder).toString())) {
            window.until(
                    "the library is read",
                    () -> window.context().get(OpenLibrary.class).study().isPresent());
            List<String> nameless = new ArrayList<>();
            for (String part : PARTS) {
                window.part(part);
                window.rest();
                nameless.addAll(window.get(() -> nameless(window)));
            }
            assertEquals(List.of(), nameless);
            assertEquals(List.of(), window.get(() -> withoutKey(window)));
        }
    }

    private static List<String> nameless(Window window) {
        return window.controls().stream()
                .filter(Control::isVisible)
                .filter(AccessTests::takesTheKeyboard)
                .filter(c -> name(c).isEmpty())
                .map(c -> c.getClass().getSimpleName() + " in " + c.getParent())
                .toList();
    }

    private static boolean takesTheKeyboard(Control control) {
        boolean layout =
                control instanceof Shell
                        || control instanceof SashForm
                        || control instanceof ScrolledComposite
                        || control instanceof CTabFolder;
        return !layout
                && (control instanceof Text
                        || control instanceof StyledText
                        || control instanceof Table
                        || control instanceof Tree
                        || control instanceof Combo
                        || control instanceof Button
                        || control.getClass() != Canvas.class && control instanceof Canvas);
    }

    private static Optional<String> name(Control control) {
        return Names.of(control)
                .or(
                        () ->
                                control instanceof Button button && !button.getText().isEmpty()
                                        ? Optional.of(button.getText())
                                        : Optional.empty());
    }

    /** Returns the parts that no key brings to the front. */
    private static List<String> withoutKey(Window window) {
        MApplication application = window.context().get(MApplication.class);
        List<MKeyBinding> keys =
                application.getBindingTables().stream()
                        .flatMap(t -> t.getBindings().stream())
                        .toList();
        return PARTS.stream()
                .filter(
                        part ->
                                keys.stream()
                                        .flatMap(k -> k.getParameters().stream())
                                        .noneMatch(p -> part.equals(p.getValue())))
                .toList();
    }

    @Test
    void everyCommandHasAHandlerAndWordsAndTheListShowsThem() throws IOException {
        try (Window window = Window.open("-library", Example.copy(folder).toString())) {
            window.until(
                    "the library is read",
                    () -> window.context().get(OpenLibrary.class).study().isPresent());
            window.rest();
            List<String> poor =
                    window.get(
                            () ->
                                    window.context().get(MApplication.class).getCommands().stream()
                                            .filter(
                                                    c ->
                                                            c.getElementId()
                                                                    .startsWith("org.stillroom"))
                                            .filter(AccessTests::isPoor)
                                            .map(MCommand::getElementId)
                                            .toList());
            assertEquals(List.of(), poor);
            window.start("org.stillroom.workbench.command.commands", Map.of());
            window.until("the list stands", () -> window.shows(Table.class, "All commands"));
            assertTrue(
                    window.cells("All commands").stream()
                            .anyMatch(r -> r.get(0).equals("Show Search") && !r.get(1).isEmpty()));
            window.screenshot("all-commands");
            window.run(() -> window.shells().get(1).close());
        }
    }

    @Test
    void noTwoCommandsShareAKey() throws IOException, ParseException {
        try (Window window = Window.open("-library", Example.copy(folder).toString())) {
            window.rest();
            List<MKeyBinding> keys = window.get(() -> keys(window));
            List<String> clashes = new ArrayList<>();
            for (MKeyBinding one : keys) {
                for (MKeyBinding other : keys) {
                    boolean same = sequence(other).startsWith(sequence(one), true);
                    if (one != other && same) {
                        clashes.add(one.getElementId() + " with " + other.getElementId());
                    }
                }
            }
            assertEquals(List.of(), clashes);
            assertTrue(keys.size() > 30, keys.size() + " keys");
        }
    }

    private static List<MKeyBinding> keys(Window window) {
        return window.context().get(MApplication.class).getBindingTables().stream()
                .flatMap(t -> t.getBindings().stream())
                .toList();
    }

    private static KeySequence sequence(MKeyBinding key) throws ParseException {
        return KeySequence.getInstance(key.getKeySequence());
    }

    @Test
    void theMenuOfThePageNamesTheKeysThatWork() throws IOException, ParseException {
        try (Window window = Window.open("-library", Example.copy(folder).toString())) {
            window.part(Parts.PAGE);
            window.rest();
            List<String> items =
                    window.get(
                            () ->
                                    List.of(
                                                    window.find(
                                                                    StyledText.class,
                                                                    "Words of the source")
                                                            .getMenu()
                                                            .getItems())
                                            .stream()
                                            .map(MenuItem::getText)
                                            .filter(t -> !t.isEmpty())
                                            .toList());
            assertEquals(9, items.size(), items::toString);
            for (String item : items) {
                String[] parts = item.split("\t");
                KeySequence promised = KeySequence.getInstance(parts[1]);
                List<String> bound = new ArrayList<>();
                for (MKeyBinding key : window.get(() -> keys(window))) {
                    if (sequence(key).equals(promised)) {
                        bound.add(key.getCommand().getCommandName());
                    }
                }
                assertEquals(List.of(parts[0]), bound, item);
            }
        }
    }

    private static boolean isPoor(MCommand command) {
        return command.getCommandName() == null
                || command.getDescription() == null
                || command.getDescription().isBlank();
    }
}
