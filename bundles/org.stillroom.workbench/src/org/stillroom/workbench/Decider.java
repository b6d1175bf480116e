package org.stillroom.workbench;

import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.model.application.ui.menu.MMenuItem;
import org.eclipse.e4.ui.workbench.modeling.EModelService;
import org.stillroom.inquiry.DecisionWords;
import org.stillroom.inquiry.Study;
import org.stillroom.inquiry.StudyDesk;
import org.stillroom.library.journal.History;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.text.Anchor;

/**
 * Makes decisions about the open library, undoes and redoes them.
 *
 * <p>Writing and reading again run as jobs; then every part follows. Belongs to the window's thread.
 */
public final class Decider {
    private static final String UNDO = "org.stillroom.workbench.menu.undo";
    private static final String REDO = "org.stillroom.workbench.menu.redo";

    private final OpenLibrary library;
    private final Work work;
    private final MApplication application;
    private final EModelService models;
    private final IEventBroker events;
    private final Lane naming;
    private Names names = Names.NONE;

    /** What undo and redo would do, in words. */
    private record Names(Optional<String> undo, Optional<String> redo) {
        static final Names NONE = new Names(Optional.empty(), Optional.empty());
    }

    /** What a decision led to. */
    private record Decided(StudyDesk desk, Study study, String words) {}

    /** Makes decisions for a window. */
    @Inject
    public Decider(
            OpenLibrary library,
            Work work,
            Signals signals,
            MApplication application,
            EModelService models,
            IEventBroker events) {
        this.library = library;
        this.work = work;
        this.application = application;
        this.models = models;
        this.events = events;
        this.naming = work.lane("Looking at the decisions");
        signals.on(Topics.OPENED, String.class, folder -> name());
    }

    /** Decides something about words of a source. */
    public void decide(
            String kind, String source, Optional<Anchor> at, Map<String, String> values) {
        carryOut("", desk -> Optional.of(desk.decide(kind, source, at, values)));
    }

    /** Decides something in the place of an earlier decision. */
    public void replace(Assertion earlier, Map<String, String> values) {
        carryOut("", desk -> Optional.of(desk.replace(earlier, values)));
    }

    /** Lets an earlier decision hold for the words that stand for its own now. */
    public void placeAgain(Assertion earlier, Anchor at) {
        carryOut("Placed again: ", desk -> Optional.of(desk.placeAgain(earlier, at)));
    }

    /** Takes a decision back. */
    public void takeBack(Assertion decision) {
        carryOut("", desk -> Optional.of(desk.takeBack(decision)));
    }

    /** Undoes what was decided last. */
    public void undo() {
        carryOut("Undone: ", StudyDesk::undo);
    }

    /** Does again what was undone last. */
    public void redo() {
        carryOut("Done again: ", StudyDesk::redo);
    }

    /** Returns what undo would undo, in words. */
    public Optional<String> undoable() {
        return names.undo();
    }

    /** Returns what redo would do again, in words. */
    public Optional<String> redoable() {
        return names.redo();
    }

    /** Every deed has a lane of its own, so that no decision ends another. */
    private void carryOut(String lead, Function<StudyDesk, Optional<Assertion>> deed) {
        library.decisionDesk()
                .ifPresent(
                        desk ->
                                work.lane("Deciding")
                                        .run(
                                                progress -> decided(desk, deed, lead, progress),
                                                this::show,
                                                words -> events.send(Topics.REFUSED, words)));
    }

    private static Decided decided(
            StudyDesk desk,
            Function<StudyDesk, Optional<Assertion>> deed,
            String lead,
            Progress progress) {
        Study before = desk.study(progress);
        Optional<Assertion> done = deed.apply(desk);
        DecisionWords words = new DecisionWords(before, desk.decisions());
        String said = done.map(words::of).map(w -> lead + w).orElse("There is nothing to undo");
        return new Decided(desk, desk.study(progress), capital(said) + ".");
    }

    private void show(Decided decided) {
        library.decided(decided.desk(), decided.study());
        work.say(decided.words());
    }

    private void name() {
        Optional<StudyDesk> open = library.decisionDesk();
        Optional<Study> study = library.study();
        if (open.isPresent() && study.isPresent()) {
            naming.run(progress -> names(study.get(), open.get().decisions()), this::named);
        }
    }

    private static Names names(Study study, History history) {
        DecisionWords words = new DecisionWords(study, history);
        return new Names(history.undoable().map(words::of), history.redoable().map(words::of));
    }

    private void named(Names next) {
        names = next;
        label(UNDO, "Undo", next.undo());
        label(REDO, "Redo", next.redo());
    }

    private void label(String id, String verb, Optional<String> what) {
        String label = what.map(w -> verb + ": " + shortened(w)).orElse(verb);
        models.findElements(application, id, MMenuItem.class, null, EModelService.IN_MAIN_MENU)
                .forEach(item -> item.setLabel(label.replace("&", "&&")));
    }

    private static String shortened(String words) {
        return words.length() > 70 ? words.substring(0, 69) + "…" : words;
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }

    /** Drops what is still being looked for. */
    @PreDestroy
    void close() {
        naming.close();
    }
}
