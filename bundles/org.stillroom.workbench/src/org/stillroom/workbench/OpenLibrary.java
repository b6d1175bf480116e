package org.stillroom.workbench;

import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.ui.di.UISynchronize;
import org.stillroom.inquiry.Desk;
import org.stillroom.inquiry.InquiryException;
import org.stillroom.inquiry.Premises;
import org.stillroom.inquiry.Study;
import org.stillroom.inquiry.StudyDesk;
import org.stillroom.library.LibraryWatcher;
import org.stillroom.model.progress.Progress;
import org.stillroom.workbench.shell.Settings;

/**
 * The library that is open in the window.
 *
 * <p>Opening and reading run as jobs; a library that cannot be opened leaves the one before it
 * open. Belongs to the window's thread; the study that it hands out may be used on any.
 */
public final class OpenLibrary {
    private final Work work;
    private final IEventBroker events;
    private final UISynchronize window;
    private final Settings settings;
    private final Premises premises = Premises.here();
    private final Lane opening;
    private final Lane indexing;
    private Optional<Open> open = Optional.empty();
    private Optional<LibraryWatcher> watcher = Optional.empty();

    /** A desk with the study that was read on it. */
    private record Open(StudyDesk desk, Path folder, Study study) {}

    /** Makes a window's library, none being open. */
    @Inject
    public OpenLibrary(Work work, IEventBroker events, UISynchronize window, Settings settings) {
        this.work = work;
        this.events = events;
        this.window = window;
        this.settings = settings;
        this.opening = work.lane("Opening the library");
        this.indexing = work.lane("Making the index");
    }

    /** Returns the folder of the open library. */
    public Optional<Path> folder() {
        return open.map(Open::folder);
    }

    /** Returns the open library as it was read last. */
    public Optional<Study> study() {
        return open.map(Open::study);
    }

    /** Returns the desk that inquiries are made at. */
    public Optional<Desk> desk() {
        return open.map(Open::desk);
    }

    /** Opens a library, or reads it again where it is the open one. */
    public void open(Path folder) {
        open(() -> folder);
    }

    /** Tells whether this copy of the program has an example library. */
    public boolean hasExample() {
        return premises.hasExample();
    }

    /** Tells whether a folder is the example as it lies inside the program. */
    public boolean isShipped(Path folder) {
        return premises.shipped().filter(folder::equals).isPresent();
    }

    /** Opens the user's copy of the example library, making it first if need be. */
    public void openExample() {
        open(() -> premises.example().orElseThrow(OpenLibrary::exampleGone));
    }

    private static InquiryException exampleGone() {
        return new InquiryException(
                "The example library is no longer where it was.",
                "Choose another folder with Ctrl+O.");
    }

    private void open(Supplier<Path> library) {
        Optional<Open> before = open;
        opening.run(
                progress -> {
                    Path folder = library.get().toAbsolutePath().normalize();
                    return before.filter(b -> b.folder().equals(folder))
                            .map(b -> reread(b, progress))
                            .orElseGet(() -> read(folder, progress));
                },
                this::opened,
                this::failed);
    }

    /** Reads what changed in the open library's folder. */
    public void reread() {
        open.map(Open::folder).ifPresent(this::open);
    }

    private static Open reread(Open before, Progress progress) {
        return new Open(before.desk(), before.folder(), before.desk().reread(progress));
    }

    private Open read(Path folder, Progress progress) {
        StudyDesk desk = new StudyDesk(premises.caches());
        try {
            desk.lay(folder);
            return new Open(desk, folder, desk.reread(progress));
        } catch (InquiryException | java.util.concurrent.CancellationException refused) {
            desk.close();
            throw refused;
        }
    }

    private void opened(Open next) {
        Optional<StudyDesk> before = open.map(Open::desk).filter(desk -> desk != next.desk());
        settings.library(next.folder());
        watch(next);
        Study study = next.study();
        work.say(
                study.title()
                        + ": "
                        + count(study.sources().size(), "source")
                        + ", "
                        + count(study.versions().size(), "recipe")
                        + problems(study));
        show(next, before);
    }

    private void show(Open next, Optional<StudyDesk> before) {
        open = Optional.of(next);
        Study study = next.study();
        events.send(Topics.OPENED, next.folder().toString());
        indexing.run(
                progress -> {
                    before.ifPresent(StudyDesk::close);
                    study.index(progress);
                    return study.drinks(progress);
                },
                drinks -> events.send(Topics.INDEXED, next.folder().toString()));
    }

    private static String count(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }

    private static String problems(Study study) {
        int number = study.problems().size();
        return number == 0 ? "" : ", " + count(number, "problem") + " (Ctrl+8 shows them)";
    }

    private void failed(String words) {
        events.send(Topics.REFUSED, words);
    }

    private void watch(Open next) {
        stopWatching();
        try {
            watcher =
                    Optional.of(
                            LibraryWatcher.start(
                                    next.study().library().layout(),
                                    () -> window.asyncExec(this::changed)));
        } catch (IOException unwatchable) {
            work.say("Changes in this folder are not noticed by themselves. F5 reads again.");
        }
    }

    /** Reads the folder again; where only our own decision was written, nothing is new. */
    private void changed() {
        open.ifPresent(
                before ->
                        opening.run(
                                progress -> reread(before, progress),
                                next -> {
                                    if (isSame(next.study())) {
                                        open = Optional.of(next);
                                    } else {
                                        opened(next);
                                    }
                                },
                                this::failed));
    }

    private boolean isSame(Study next) {
        return study().filter(s -> s.library().files().equals(next.library().files()))
                .filter(s -> s.library().decisions().equals(next.library().decisions()))
                .filter(s -> s.library().problems().equals(next.library().problems()))
                .filter(s -> s.knowledge().digest().equals(next.knowledge().digest()))
                .isPresent();
    }

    /** Shows the library as it stands after a decision that was made at its desk. */
    void decided(StudyDesk desk, Study study) {
        open.filter(o -> o.desk() == desk)
                .ifPresent(o -> show(new Open(desk, o.folder(), study), Optional.empty()));
    }

    /** Returns the desk that decisions are made at. */
    Optional<StudyDesk> decisionDesk() {
        return open.map(Open::desk);
    }

    private void stopWatching() {
        watcher.ifPresent(
                w -> {
                    try {
                        w.close();
                    } catch (IOException gone) {
                        work.say("The folder is no longer watched.");
                    }
                });
        watcher = Optional.empty();
    }

    /** Closes the library with the window. */
    @PreDestroy
    void close() {
        stopWatching();
        opening.close();
        indexing.close();
        open.map(Open::desk).ifPresent(StudyDesk::close);
    }
}
