package org.stillroom.workbench.library;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
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
import org.eclipse.swt.widgets.Text;
import org.stillroom.inquiry.AmountReasons;
import org.stillroom.inquiry.Study;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.spec.Version;
import org.stillroom.search.SearchResult;
import org.stillroom.workbench.Explains;
import org.stillroom.workbench.Lane;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Signals;
import org.stillroom.workbench.Topics;
import org.stillroom.workbench.Work;
import org.stillroom.workbench.widgets.DataTable;
import org.stillroom.workbench.widgets.Names;
import org.stillroom.workbench.widgets.Sheet;

/** Searches words and specs together; facets keep to a part of what was found. */
public final class SearchPart implements Explains {
    private final Signals signals;
    private static final int MOST = 500;
    private static final int PAUSE_MILLIS = 200;

    private final OpenLibrary library;
    private final Navigator navigator;
    private final Lane searching;
    private final Question question = new Question();
    private final Runnable later = this::search;
    private Text field;
    private Label said;
    private FacetTree facets;
    private HitTable hits;

    /** A result with its rows made ready. */
    private record Found(SearchResult result, List<DataTable.Row> rows) {}

    /** Makes a part that has found nothing yet. */
    @Inject
    public SearchPart(Signals signals, OpenLibrary library, Navigator navigator, Work work) {
        this.signals = signals;
        this.library = library;
        this.navigator = navigator;
        this.searching = work.lane("Searching");
    }

    /** Lays out the field above, facets to the left and hits to the right. */
    @PostConstruct
    void create(Composite owner) {
        Composite parent = Sheet.on(owner);
        signals.on(Topics.OPENED, String.class, parent, this::opened);
        GridLayoutFactory.fillDefaults().margins(12, 10).spacing(0, 6).applyTo(parent);
        field = new Text(parent, SWT.SINGLE | SWT.BORDER | SWT.SEARCH | SWT.ICON_CANCEL);
        field.setMessage("Words, “words side by side”, ingredient:gin, date:186X, -egg, or");
        Names.give(field, "Search");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(field);
        said = new Label(parent, SWT.NONE);
        said.setData("org.eclipse.e4.ui.css.CssClassName", "Quiet");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(said);
        SashForm sides = new SashForm(parent, SWT.HORIZONTAL);
        sides.setSashWidth(1);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sides);
        facets = new FacetTree(sides, question, this::search);
        hits = new HitTable(sides);
        sides.setWeights(24, 76);
        hits.onOpen(navigator::page);
        hits.offer("Open the page\tEnter", navigator::page);
        hits.offer("Explain the amounts\tCtrl+E", id -> reason().ifPresent(navigator::explain));
        field.addListener(SWT.Modify, e -> field.getDisplay().timerExec(PAUSE_MILLIS, later));
        field.addListener(SWT.KeyDown, this::key);
        search();
    }

    private void key(Event event) {
        if (event.keyCode == SWT.ARROW_DOWN) {
            hits.control().setFocus();
        } else if (event.character == SWT.CR) {
            search();
        } else if (event.keyCode == SWT.ESC) {
            question.clear();
            field.setText("");
        }
    }

    private void search() {
        if (field == null || field.isDisposed()) {
            return;
        }
        question.type(field.getText());
        library.study()
                .ifPresent(
                        study -> {
                            String words = question.words(study);
                            searching.run(p -> find(study, words, p), this::show, this::refused);
                        });
    }

    private static Found find(Study study, String words, Progress progress) {
        SearchResult result = study.search(words, MOST, progress);
        List<DataTable.Row> rows =
                result.hits().stream()
                        .flatMap(
                                h ->
                                        study.version(h.version()).stream()
                                                .map(v -> HitTable.row(h, v)))
                        .toList();
        return new Found(result, rows);
    }

    private void show(Found found) {
        SearchResult result = found.result();
        String first = result.total() > MOST ? ", the first " + MOST + " shown" : "";
        String number = result.total() == 1 ? "1 recipe" : result.total() + " recipes";
        said.setText((number + first + ": " + result.words()).replace("&", "&&"));
        said.setToolTipText(result.words());
        facets.show(result.facets());
        hits.show(found.rows());
    }

    @Override
    public Optional<Navigator.Reason> reason() {
        return library.study()
                .flatMap(
                        study -> hits.selected().flatMap(study::version).map(v -> whole(study, v)));
    }

    private static Navigator.Reason whole(Study study, Version version) {
        AmountReasons reasons = new AmountReasons(study.knowledge().thesaurus());
        return new Navigator.Reason(version.witness().title(), reasons.whole(version));
    }

    private void refused(String words) {
        said.setText(words.replace("&", "&&"));
        said.setToolTipText(words);
    }

    /** Searches again in the library that was opened or read again. */
    private void opened(String folder) {
        question.clear();
        search();
    }

    /** Puts the keyboard into the field. */
    @Focus
    void focus() {
        field.setFocus();
        field.selectAll();
    }

    /** Drops what is still being searched for. */
    @PreDestroy
    void close() {
        searching.close();
    }
}
