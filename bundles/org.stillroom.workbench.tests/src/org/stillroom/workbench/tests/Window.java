package org.stillroom.workbench.tests;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.Platform;
import org.eclipse.e4.core.commands.ECommandService;
import org.eclipse.e4.core.commands.EHandlerService;
import org.eclipse.e4.core.contexts.IEclipseContext;
import org.eclipse.e4.ui.workbench.IWorkbench;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.osgi.framework.FrameworkUtil;
import org.osgi.util.tracker.ServiceTracker;
import org.stillroom.workbench.Themes;
import org.stillroom.workbench.Work;
import org.stillroom.workbench.widgets.Names;

/**
 * The real window, driven from outside: found by names as a screen reader finds it, moved by
 * events.
 *
 * <p>The workbench runs in a thread of its own; tests wait for what they want to see.
 */
final class Window implements AutoCloseable {
    private static final long PATIENCE_SECONDS = 40;

    /** So many looks without work mean that the window has come to rest. */
    private static final int QUIET_LOOKS = 8;

    /** The toolkit wants one thread for all windows that are opened in turn. */
    private static final UiThread THREAD = new UiThread();

    private final CompletableFuture<Object> end = new CompletableFuture<>();
    private Display display;
    private IWorkbench workbench;

    private Window(IApplication application, String... arguments) {
        THREAD.execute(() -> run(application, arguments));
    }

    /** Starts the workbench as the product does, with these arguments of a command line. */
    static Window open(String... arguments) {
        Window window = new Window(application(), arguments);
        window.workbench = window.service(IWorkbench.class);
        window.awaitShell();
        return window;
    }

    private static IApplication application() {
        try {
            for (IConfigurationElement element :
                    Platform.getExtensionRegistry()
                            .getExtension("org.stillroom.workbench.application")
                            .getConfigurationElements()) {
                for (IConfigurationElement run : element.getChildren("run")) {
                    return (IApplication) run.createExecutableExtension("class");
                }
            }
        } catch (CoreException broken) {
            throw new IllegalStateException(broken);
        }
        throw new IllegalStateException("The workbench declares no application");
    }

    private void run(IApplication application, String... arguments) {
        try {
            end.complete(application.start(new StartContext(arguments)));
        } catch (Exception | LinkageError failure) {
            end.completeExceptionally(failure);
        }
    }

    private void awaitShell() {
        await(
                "the window stands",
                () -> {
                    if (end.isDone()) {
                        throw new IllegalStateException("The workbench ended at once: " + end);
                    }
                    display = Display.findDisplay(THREAD.thread());
                    return display != null && get(() -> !shells().isEmpty());
                });
    }

    private <T> T service(Class<T> type) {
        ServiceTracker<T, T> tracker =
                new ServiceTracker<>(
                        FrameworkUtil.getBundle(Window.class).getBundleContext(), type, null);
        tracker.open();
        try {
            return Objects.requireNonNull(
                    tracker.waitForService(TimeUnit.SECONDS.toMillis(PATIENCE_SECONDS)),
                    type + " never came");
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        } finally {
            tracker.close();
        }
    }

    /** Runs something on the window's thread and returns its result. */
    <T> T get(Callable<T> action) {
        CompletableFuture<T> result = new CompletableFuture<>();
        display.asyncExec(
                () -> {
                    try {
                        result.complete(action.call());
                    } catch (Exception | AssertionError failure) {
                        result.completeExceptionally(failure);
                    }
                });
        try {
            return result.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (ExecutionException failure) {
            throw new AssertionError(failure.getCause());
        } catch (InterruptedException | TimeoutException stuck) {
            throw new AssertionError("The window does not answer", stuck);
        }
    }

    /** Runs something on the window's thread. */
    void run(Runnable action) {
        get(
                () -> {
                    action.run();
                    return true;
                });
    }

    /** Waits until something is so, asked on the window's thread. */
    void until(String what, BooleanSupplier condition) {
        await(what, () -> get(condition::getAsBoolean));
    }

    private static void await(String what, BooleanSupplier condition) {
        long limit = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (!condition.getAsBoolean()) {
            if (System.nanoTime() > limit) {
                throw new AssertionError("Waited in vain: " + what);
            }
            pause();
        }
    }

    private static void pause() {
        try {
            Thread.sleep(20);
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }

    /** Waits until no engine work is running and the window has painted. */
    void rest() {
        int quiet = 0;
        while (quiet < QUIET_LOOKS) {
            quiet = get(() -> context().get(Work.class).isBusy()) ? 0 : quiet + 1;
            pause();
        }
    }

    /** Returns the application's context. */
    IEclipseContext context() {
        return workbench.getApplication().getContext();
    }

    /** Returns the visible shells, the workbench's window first. */
    List<Shell> shells() {
        return Stream.of(display.getShells()).filter(Control::isVisible).toList();
    }

    /** Tells whether the dark theme is shown. */
    static boolean isDark(IEclipseContext context) {
        return Themes.isDark(context);
    }

    /** Runs a command of the application model and waits until it is done. */
    void command(String id, Map<String, Object> values) {
        start(id, values);
        run(() -> {});
    }

    /** Starts a command of the application model, as its key does; it may open a dialog. */
    void start(String id, Map<String, Object> values) {
        display.asyncExec(
                () -> {
                    IEclipseContext window =
                            workbench.getApplication().getContext().getActiveLeaf();
                    ParameterizedCommand command =
                            window.get(ECommandService.class).createCommand(id, values);
                    window.get(EHandlerService.class).executeHandler(command);
                });
    }

    /** Returns every visible control below the window, parents before children. */
    List<Control> controls() {
        List<Control> all = new ArrayList<>();
        shells().forEach(shell -> collect(shell, all));
        return all;
    }

    private static void collect(Control control, List<Control> all) {
        all.add(control);
        if (control instanceof Composite composite) {
            for (Control child : composite.getChildren()) {
                collect(child, all);
            }
        }
    }

    /** Returns the visible control of this type and name; to be called on the window's thread. */
    <T extends Control> T find(Class<T> type, String name) {
        Predicate<Control> named = c -> Names.of(c).filter(name::equals).isPresent();
        return controls().stream()
                .filter(c -> type.isInstance(c) && c.isVisible() && named.test(c))
                .map(type::cast)
                .findFirst()
                .orElseThrow(
                        () ->
                                new AssertionError(
                                        "No "
                                                + type.getSimpleName()
                                                + " “"
                                                + name
                                                + "” among "
                                                + names()));
    }

    private List<String> names() {
        return controls().stream().flatMap(c -> Names.of(c).stream()).toList();
    }

    /** Tells whether a control of this type and name is visible. */
    boolean shows(Class<? extends Control> type, String name) {
        return controls().stream()
                .anyMatch(
                        c ->
                                type.isInstance(c)
                                        && c.isVisible()
                                        && Names.of(c).filter(name::equals).isPresent());
    }

    /** Sends an event to a control as the toolkit would. */
    void send(Supplier<? extends Control> target, int type) {
        run(() -> target.get().notifyListeners(type, new Event()));
    }

    /** Types words into a text field. */
    void type(String field, String words) {
        run(() -> find(Text.class, field).setText(words));
    }

    /** Presses a button. */
    void press(String button) {
        send(() -> find(Button.class, button), SWT.Selection);
    }

    /** Chooses one of several buttons. */
    void choose(String radio) {
        run(() -> find(Button.class, radio).setSelection(true));
        press(radio);
    }

    /** Brings a part to the front. */
    void part(String id) {
        command(
                "org.stillroom.workbench.command.show",
                Map.of("org.stillroom.workbench.command.show.part", id));
    }

    /** Returns the words of a table's cells, row by row. */
    List<List<String>> cells(String table) {
        return get(
                () -> {
                    Table found = find(Table.class, table);
                    List<List<String>> rows = new ArrayList<>();
                    for (TableItem item : found.getItems()) {
                        List<String> cells = new ArrayList<>();
                        for (int i = 0; i < found.getColumnCount(); i++) {
                            cells.add(item.getText(i));
                        }
                        rows.add(cells);
                    }
                    return rows;
                });
    }

    /** Selects a row of a table, as the arrow keys do. */
    void select(String table, int row) {
        run(
                () -> {
                    find(Table.class, table).setSelection(row);
                    find(Table.class, table).notifyListeners(SWT.Selection, new Event());
                });
    }

    /** Opens the selected row of a table, as Enter does. */
    void open(String table) {
        send(() -> find(Table.class, table), SWT.DefaultSelection);
    }

    /** Presses a key in a control. */
    void key(Supplier<? extends Control> target, int keyCode, char character) {
        run(
                () -> {
                    Event event = new Event();
                    event.keyCode = keyCode;
                    event.character = character;
                    target.get().notifyListeners(SWT.KeyDown, event);
                });
    }

    /** Returns the line that the status bar shows, which stands beside the bar of progress. */
    String said() {
        return get(
                () ->
                        controls().stream()
                                .filter(ProgressBar.class::isInstance)
                                .flatMap(bar -> Stream.of(bar.getParent().getChildren()))
                                .filter(Label.class::isInstance)
                                .map(label -> ((Label) label).getText())
                                .findFirst()
                                .orElseThrow());
    }

    /** Returns the thread that the windows belong to. */
    static Thread thread() {
        return THREAD.thread();
    }

    /** Writes what the window shows into a PNG file, also while something is running. */
    Path screenshotWhileBusy(String name) {
        Path file = screenshots().resolve(name + ".png");
        run(() -> shoot(shells().get(0), file));
        return file;
    }

    /** Writes what the window shows into a PNG file below the folder of screenshots. */
    Path screenshot(String name) {
        rest();
        return screenshotWhileBusy(name);
    }

    /** Writes what a shell shows into a PNG file. */
    static void shoot(Shell shell, Path file) {
        shell.update();
        Rectangle bounds = shell.getBounds();
        Rectangle client = shell.getDisplay().map(shell, null, shell.getClientArea());
        int height = client.y + client.height - bounds.y;
        Image image = new Image(shell.getDisplay(), client.width, height);
        GC gc = new GC(shell.getDisplay());
        gc.copyArea(image, bounds.x, bounds.y);
        gc.dispose();
        ImageLoader loader = new ImageLoader();
        loader.data = new org.eclipse.swt.graphics.ImageData[] {image.getImageData()};
        loader.save(file.toString(), SWT.IMAGE_PNG);
        image.dispose();
    }

    private static Path screenshots() {
        Path folder = Path.of(System.getProperty("stillroom.screenshots", "target/screenshots"));
        try {
            return Files.createDirectories(folder);
        } catch (IOException unwritable) {
            throw new IllegalStateException(unwritable);
        }
    }

    @Override
    public void close() {
        display.asyncExec(() -> workbench.close());
        try {
            end.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException | ExecutionException | TimeoutException stuck) {
            throw new AssertionError("The window did not close", stuck);
        }
    }
}
