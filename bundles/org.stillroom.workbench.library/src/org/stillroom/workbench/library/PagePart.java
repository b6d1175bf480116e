package org.stillroom.workbench.library;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.stillroom.inquiry.AmountReasons;
import org.stillroom.model.reading.Ingredient;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.Span;
import org.stillroom.workbench.Decider;
import org.stillroom.workbench.Lane;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Signals;
import org.stillroom.workbench.Topics;
import org.stillroom.workbench.Work;
import org.stillroom.workbench.widgets.DataTable;
import org.stillroom.workbench.widgets.Sheet;

/**
 * A page of a source: the printed words with what was read marked on them, the spec beside them.
 *
 * <p>A line that is pointed at on either side lights up on the other; an opened amount is
 * explained.
 */
public final class PagePart {
    private final Signals signals;
    private final OpenLibrary library;
    private final Navigator navigator;
    private final Lane finding;
    private Label title;
    private Label place;
    private RuleHint hint;
    private final Decider decider;
    private final Work work;
    private PageText words;
    private PageCorrections corrections;
    private PlaceStrip strip;
    private DataTable spec;
    private SpecNotes notes;
    private Optional<String> asked = Optional.empty();
    private Optional<Version> version = Optional.empty();

    /** Makes a part without a page. */
    @Inject
    public PagePart(
            Signals signals, OpenLibrary library, Navigator navigator, Decider decider, Work work) {
        this.decider = decider;
        this.work = work;
        this.signals = signals;
        this.library = library;
        this.navigator = navigator;
        this.finding = work.lane("Opening the page");
    }

    /** Lays out words to the left and spec to the right. */
    @PostConstruct
    void create(Composite owner) {
        Composite parent = Sheet.on(owner);
        signals.on(Topics.OPENED, String.class, parent, this::opened);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        Composite head = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        GridLayoutFactory.fillDefaults().margins(20, 8).spacing(0, 2).applyTo(head);
        title = label(head, "Heading");
        place = label(head, "Quiet");
        hint = new RuleHint(head, work);
        SashForm sides = new SashForm(parent, SWT.HORIZONTAL);
        sides.setSashWidth(1);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sides);
        createWords(sides);
        createSpec(sides);
        sides.setWeights(49, 51);
        title.setText("No page is open");
        place.setText("Choose a recipe in the library, or search for one.");
        find();
    }

    private static Label label(Composite parent, String style) {
        Label label = new Label(parent, SWT.NONE);
        label.setData("org.eclipse.e4.ui.css.CssClassName", style);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(label);
        return label;
    }

    private void createWords(Composite parent) {
        Composite side = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(side);
        Legend legend = new Legend(side);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(legend.control());
        strip = new PlaceStrip(side, lost -> corrections.place(lost));
        words = new PageText(side);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(words.control());
        words.onMeet(this::meet);
        words.onOpen(this::open);
        words.onPutRight(right -> work.say(PageText.words(right) + "."));
        corrections = new PageCorrections(words, library, decider, work);
        words.onChosen(corrections::correct);
        PageMenu.on(words.control(), corrections);
    }

    /** Returns what can be decided about the words that are shown. */
    PageCorrections corrections() {
        return corrections;
    }

    private void createSpec(Composite parent) {
        SashForm side = new SashForm(parent, SWT.VERTICAL);
        side.setSashWidth(1);
        spec = new DataTable(side, "Spec", SpecRows.COLUMNS);
        spec.onSelect(row -> row.ifPresent(r -> lightUp(target(r), true)));
        spec.onOpen(row -> explain(target(row)));
        spec.control().addListener(SWT.MouseMove, this::hover);
        spec.control()
                .addListener(SWT.MouseUp, e -> spec.selection().ifPresent(r -> explain(target(r))));
        notes = new SpecNotes(side, this::explainWhole);
        side.setWeights(58, 42);
    }

    /** Shows the page of the witness, or of the source, that was asked for. */
    @Inject
    @org.eclipse.e4.core.di.annotations.Optional
    void show(@Named(Navigator.PAGE) String id) {
        asked = Optional.of(id);
        find();
    }

    /** Shows words, and what is to be done with them. */
    @Inject
    @org.eclipse.e4.core.di.annotations.Optional
    void show(@Named(Navigator.WORDS) Navigator.Words asked) {
        if (words == null || words.control().isDisposed()) {
            return;
        }
        library.study()
                .ifPresent(
                        study ->
                                finding.run(
                                        progress -> PageFinder.find(study, asked),
                                        found -> found.ifPresent(page -> show(page, asked))));
    }

    private void show(MarkedPage page, Navigator.Words asked) {
        this.asked = Optional.of(page.shown().map(Version::id).orElse(page.source().id()));
        show(page);
        int length = page.source().text().length();
        int end = Math.min(asked.span().end(), length);
        words.select(new Span(Math.min(asked.span().start(), end), end));
        strip.show(asked.lost());
        words.control().setFocus();
        if (asked.correct()) {
            corrections.correct();
        }
    }

    private void find() {
        if (words == null || words.control().isDisposed()) {
            return;
        }
        library.study()
                .ifPresent(
                        study ->
                                asked.ifPresent(
                                        id ->
                                                finding.run(
                                                        progress -> PageFinder.find(study, id),
                                                        this::show)));
    }

    private void show(Optional<MarkedPage> found) {
        found.ifPresentOrElse(
                this::show, () -> place.setText("This recipe is no longer in the library."));
    }

    private void show(MarkedPage next) {
        words.show(next);
        corrections.show(next);
        library.study().ifPresent(study -> hint.look(study, next.source().id()));
        next.shown()
                .ifPresentOrElse(
                        this::showSpec,
                        () -> {
                            version = Optional.empty();
                            title.setText(next.source().bibliography().title());
                            place.setText(Places.of(next.source()));
                            spec.rows(List.of());
                        });
    }

    private void showSpec(Version next) {
        version = Optional.of(next);
        title.setText(next.witness().title().replace("&", "&&"));
        place.setText(Places.of(next).replace("&", "&&"));
        spec.rows(SpecRows.of(next));
        notes.show(next);
        title.getParent().layout();
    }

    /** Pointer or caret met a mark in the words. */
    private void meet(MarkedPage.Mark mark) {
        if (version.filter(v -> v.id().equals(mark.version().id())).isEmpty()) {
            return;
        }
        int row = row(mark.line());
        spec.select(row);
        if (row >= 0) {
            lightUp(target(spec.rows().get(row)), false);
        }
    }

    /** A mark in the words was opened: of another recipe, go there; of this one, explain it. */
    private void open(MarkedPage.Mark mark) {
        if (version.filter(v -> v.id().equals(mark.version().id())).isEmpty()) {
            navigator.page(mark.version().id());
            return;
        }
        int row = row(mark.line());
        if (row >= 0) {
            explain(target(spec.rows().get(row)));
        }
    }

    private int row(int own) {
        List<DataTable.Row> rows = spec.rows();
        for (int i = 0; i < rows.size(); i++) {
            if (own >= 0 && target(rows.get(i)).own() == own) {
                return i;
            }
        }
        return -1;
    }

    private static SpecRows.Target target(DataTable.Row row) {
        return row.target(SpecRows.Target.class);
    }

    private void hover(Event event) {
        spec.at(event.x, event.y).ifPresent(row -> lightUp(target(row), false));
    }

    private void lightUp(SpecRows.Target target, boolean reveal) {
        List<Span> spans = new ArrayList<>();
        if (target.own() >= 0) {
            ReadingLine line = target.line().line();
            line.amountSpan().ifPresent(spans::add);
            line.ingredient().map(Ingredient::span).ifPresent(spans::add);
            if (spans.isEmpty()) {
                spans.add(line.span());
            }
        }
        if (!spans.equals(words.lit())) {
            words.light(spans, reveal);
        }
    }

    private void explain(SpecRows.Target target) {
        version.ifPresent(v -> navigator.explain(v, target.line()));
    }

    private void explainWhole(Version shown) {
        library.study()
                .map(s -> new AmountReasons(s.knowledge().thesaurus()).whole(shown))
                .ifPresent(why -> navigator.explain(shown.witness().title(), why));
    }

    /** Reads the page again after the library was read again. */
    private void opened(String folder) {
        strip.show(Optional.empty());
        find();
    }

    /** Puts the caret into the words. */
    @Focus
    void focus() {
        words.control().setFocus();
    }

    /** Drops what is still being looked for. */
    @PreDestroy
    void close() {
        corrections.close();
        finding.close();
        hint.close();
    }
}
