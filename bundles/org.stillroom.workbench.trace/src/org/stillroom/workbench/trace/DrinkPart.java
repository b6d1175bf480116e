package org.stillroom.workbench.trace;

import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.Optional;
import org.eclipse.e4.core.di.annotations.Creatable;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.stillroom.inquiry.AmountReasons;
import org.stillroom.inquiry.Study;
import org.stillroom.lineage.Drink;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.spec.Version;
import org.stillroom.workbench.Lane;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Signals;
import org.stillroom.workbench.Topics;
import org.stillroom.workbench.Work;
import org.stillroom.workbench.widgets.FileChooser;
import org.stillroom.workbench.widgets.Names;

/**
 * A part that shows something of the drink that is traced.
 *
 * @param <R> what is worked out of the drink
 */
abstract class DrinkPart<R> {
    private final Bench bench;
    private final Lane tracing;
    private Optional<String> asked = Optional.empty();
    private Label heading;
    private Label summary;

    /** What every part about a drink works with. */
    @Creatable
    static final class Bench {
        private final Signals signals;
        private final OpenLibrary library;
        private final Navigator navigator;
        private final Work work;
        private final DrinkChooser chooser;
        private final IThemeEngine themes;
        private final FileChooser files;

        @Inject
        Bench(
                Signals signals,
                OpenLibrary library,
                Navigator navigator,
                Work work,
                DrinkChooser chooser,
                IThemeEngine themes,
                FileChooser files) {
            this.files = files;
            this.signals = signals;
            this.library = library;
            this.navigator = navigator;
            this.work = work;
            this.chooser = chooser;
            this.themes = themes;
        }
    }

    DrinkPart(Bench bench, String what) {
        this.bench = bench;
        this.tracing = bench.work.lane(what);
    }

    Navigator navigator() {
        return bench.navigator;
    }

    /** Makes a place for a figure that follows the theme. */
    FigurePane figure(Composite place) {
        FigurePane pane = new FigurePane(place, bench.work, bench.themes, bench.files);
        bench.signals.on(Topics.THEME, String.class, pane.control(), id -> pane.redraw());
        return pane;
    }

    /** Lays out the drink's name, a line under it and the button that chooses another. */
    void createHead(Composite parent) {
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        Composite head = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(16, 8).applyTo(head);
        bench.signals.on(Topics.OPENED, String.class, head, this::opened);
        heading = new Label(head, SWT.NONE);
        heading.setData("org.eclipse.e4.ui.css.CssClassName", "Heading");
        heading.setText("No drink is traced");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(heading);
        Button choose = new Button(head, SWT.PUSH);
        choose.setText("Choose a drink…");
        choose.setToolTipText("Choose the drink to trace (Ctrl+D)");
        Names.give(choose, "Choose a drink");
        choose.addListener(SWT.Selection, e -> bench.chooser.choose(choose.getShell()));
        GridDataFactory.fillDefaults().span(1, 2).align(SWT.END, SWT.CENTER).applyTo(choose);
        summary = new Label(head, SWT.NONE);
        summary.setData("org.eclipse.e4.ui.css.CssClassName", "Quiet");
        summary.setText("Choose one with Ctrl+D, or in the library by drink.");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(summary);
    }

    /** Works out what is shown; on a thread of its own. */
    abstract R work(Study study, Drink drink, Progress progress);

    /** Shows it; on the window's thread. */
    abstract void show(Drink drink, R result);

    /** Returns the line under the drink's name. */
    abstract String summary(Drink drink, R result);

    /** Traces the drink that was asked for. */
    @Inject
    @org.eclipse.e4.core.di.annotations.Optional
    void trace(@Named(Navigator.DRINK) String id) {
        asked = Optional.of(id);
        trace();
    }

    /** Traces the drink again in the library that was opened or read again. */
    private void opened(String folder) {
        trace();
    }

    /** Returns why the amounts of a version are so. */
    Optional<Navigator.Reason> whole(Version version) {
        return bench.library
                .study()
                .map(Study::knowledge)
                .map(k -> new AmountReasons(k.thesaurus()).whole(version))
                .map(why -> new Navigator.Reason(version.witness().title(), why));
    }

    /** Returns a version of the open library. */
    Optional<Version> version(String id) {
        return bench.library.study().flatMap(study -> study.version(id));
    }

    /** A drink with what was worked out of it. */
    private record Traced<R>(Drink drink, R result) {}

    /** Traces the drink that was asked for, if any was and the part stands. */
    void trace() {
        if (heading == null || heading.isDisposed()) {
            return;
        }
        bench.library
                .study()
                .ifPresent(
                        study ->
                                asked.ifPresent(
                                        id ->
                                                tracing.run(
                                                        progress -> trace(study, id, progress),
                                                        this::traced)));
    }

    private Optional<Traced<R>> trace(Study study, String id, Progress progress) {
        Optional<Drink> drink = study.drinks(progress).byId(id);
        return drink.map(d -> new Traced<>(d, work(study, d, progress)));
    }

    private void traced(Optional<Traced<R>> found) {
        found.ifPresentOrElse(
                traced -> {
                    heading.setText(traced.drink().name().replace("&", "&&"));
                    String words = summary(traced.drink(), traced.result());
                    summary.setText(words.replace("&", "&&"));
                    summary.setToolTipText(words);
                    show(traced.drink(), traced.result());
                },
                () -> summary.setText("This drink is no longer in the library."));
    }

    /** Drops what is still being worked out. */
    @PreDestroy
    void close() {
        tracing.close();
    }
}
