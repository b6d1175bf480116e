package org.stillroom.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.ServiceRegistration;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.Study;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Parts;
import org.stillroom.workbench.Signals;
import org.stillroom.workbench.Topics;
import org.stillroom.workbench.Work;

/** What is running can be stopped, and nothing is left half done. */
class StopTests {
    private static final int FILES = 150;
    private static final int RECIPES = 24;

    @TempDir private Path folder;
    private Window window;

    @BeforeEach
    void open() throws IOException {
        window = Window.open("-library", Example.copy(folder).toString());
        window.until("the library is read", () -> library().study().isPresent());
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

    private void awaitWork(String words, boolean halfway) {
        AtomicReference<String> seen = new AtomicReference<>("");
        window.run(
                () ->
                        window.context()
                                .get(Signals.class)
                                .on(
                                        Topics.WORK,
                                        Work.State.class,
                                        state -> {
                                            if (state.busy()
                                                    && state.words().startsWith(words)
                                                    && (!halfway || state.done() > 0)) {
                                                seen.set(state.words());
                                            }
                                        }));
        window.until(words, () -> !seen.get().isEmpty());
    }

    @Test
    void anInquiryThatTakesLongIsStopped() {
        ServiceRegistration<Inquiry> slow =
                FrameworkUtil.getBundle(StopTests.class)
                        .getBundleContext()
                        .registerService(Inquiry.class, new WaitingInquiry(), null);
        try {
            window.part(Parts.INQUIRIES);
            window.rest();
            window.until("it appears", () -> row("wait") >= 0);
            window.select("Inquiries", window.get(() -> row("wait")));
            Study before = study();
            window.press("Ask");
            window.until("the button", () -> window.shows(Button.class, "Stop what is running"));
            assertTrue(window.said().startsWith("Asking"), window::said);
            window.screenshotWhileBusy("stop-light");
            window.press("Stop what is running");
            window.rest();
            assertEquals("Asking: stopped", window.said());
            assertSame(before, study());
            assertFalse(window.get(() -> window.shows(Button.class, "Stop what is running")));
            window.select("Inquiries", window.get(() -> row("sources")));
            window.press("Ask");
            window.rest();
            assertTrue(window.get(() -> window.controls().stream().anyMatch(this::isAnswer)));
        } finally {
            slow.unregister();
        }
    }

    private boolean isAnswer(org.eclipse.swt.widgets.Control control) {
        return control instanceof Table table
                && table.isVisible()
                && table.getItemCount() >= library().study().orElseThrow().sources().size();
    }

    private int row(String inquiry) {
        return List.of(window.find(Table.class, "Inquiries").getItems()).stream()
                .map(i -> i.getText(0))
                .toList()
                .indexOf(inquiry);
    }

    @Test
    void theReadingOfALargeLibraryIsStoppedAndTheOneBeforeStaysOpen() throws IOException {
        Path large = generate();
        List<Path> files = files(large);
        Study before = study();
        Path open = window.get(() -> library().folder().orElseThrow());
        window.run(() -> library().open(large));
        awaitWork("Opening the library", true);
        window.command("org.stillroom.workbench.command.stop", Map.of());
        window.rest();
        assertEquals("Opening the library: stopped", window.said());
        assertSame(before, study());
        assertEquals(open, window.get(() -> library().folder().orElseThrow()));
        assertEquals(files, files(large), "nothing was left in the folder");
        window.part(Parts.SEARCH);
        window.type("Search", "sugar");
        window.until(
                "the library before is searched",
                () -> window.find(Table.class, "Found recipes").getItemCount() > 0);
        window.run(() -> library().open(large));
        window.until("it opens after all", () -> study2().sources().size() == FILES);
        window.command("org.stillroom.workbench.command.stop", Map.of());
        window.rest();
    }

    private Study study2() {
        return library().study().orElseThrow();
    }

    private static List<Path> files(Path library) throws IOException {
        try (Stream<Path> all = Files.walk(library)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private Path generate() throws IOException {
        Path library = folder.resolve("large");
        Path sources = Files.createDirectories(library.resolve("sources"));
        for (int file = 0; file < FILES; file++) {
            StringBuilder book =
                    new StringBuilder("---\ntitle: Logbook " + file + "\ntext-date: 1862\n---\n");
            for (int recipe = 0; recipe < RECIPES; recipe++) {
                book.append("# Watch ").append(file).append(" Bell ").append(recipe);
                book.append("\n\n").append(recipe + 1).append(" spoons of sugar.\n");
                book.append("1 wineglass rum.\nThe juice of half a lemon.\nShake and strain.\n\n");
            }
            Files.writeString(sources.resolve("logbook-" + file + ".md"), book);
        }
        return library;
    }
}
