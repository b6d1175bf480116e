package org.stillroom.workbench.library;

import jakarta.annotation.PostConstruct;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.stillroom.inquiry.Study;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.explain.Problem;
import org.stillroom.reading.anchor.Unplaced;
import org.stillroom.workbench.Decider;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Signals;
import org.stillroom.workbench.Topics;
import org.stillroom.workbench.widgets.DataTable;
import org.stillroom.workbench.widgets.Names;
import org.stillroom.workbench.widgets.Sheet;

/** What could not be read in the open library, where, why, and what would help. */
public final class ProblemsPart {
    private final Signals signals;
    private final OpenLibrary library;
    private final Navigator navigator;
    private final Decider decider;
    private Button place;
    private Button back;
    private Label summary;
    private DataTable table;

    /** Makes an empty list. */
    @Inject
    public ProblemsPart(
            Signals signals, OpenLibrary library, Navigator navigator, Decider decider) {
        this.navigator = navigator;
        this.decider = decider;
        this.signals = signals;
        this.library = library;
    }

    /** Lays out a sentence and the list. */
    @PostConstruct
    void create(Composite owner) {
        Composite parent = Sheet.on(owner);
        signals.on(Topics.OPENED, String.class, parent, this::opened);
        signals.on(Topics.INDEXED, String.class, parent, this::indexed);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(parent);
        createHead(parent);
        table =
                new DataTable(
                        parent,
                        "Problems",
                        List.of(
                                DataTable.Column.words("File", 20),
                                DataTable.Column.figures("Line", 6),
                                DataTable.Column.words("What was wrong", 34),
                                DataTable.Column.words("What would help", 32),
                                DataTable.Column.words("How bad", 8)));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table.control());
        table.onSelect(row -> offer());
        table.onOpen(row -> placeAgain());
        show();
    }

    /** Lays the sentence and what can be done about a problem side by side. */
    private void createHead(Composite parent) {
        Composite row = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        GridLayoutFactory.fillDefaults().numColumns(3).extendedMargins(12, 10, 4, 0).applyTo(row);
        summary = new Label(row, SWT.NONE);
        GridDataFactory.fillDefaults()
                .align(SWT.FILL, SWT.CENTER)
                .grab(true, false)
                .applyTo(summary);
        place = button(row, "Place it again", this::placeAgain);
        back = button(row, "Take it back", () -> unplaced().ifPresent(decider::takeBack));
    }

    private static Button button(Composite row, String words, Runnable action) {
        Button button = new Button(row, SWT.PUSH);
        button.setText(words);
        Names.give(button, words);
        button.addListener(SWT.Selection, e -> action.run());
        return button;
    }

    /** The buttons are for decisions that could not be carried out. */
    private void offer() {
        boolean lost = unplaced().isPresent();
        place.setVisible(lost && unplaced().flatMap(Assertion::anchor).isPresent());
        back.setVisible(lost);
    }

    /** Returns the decision that the selected problem is about. */
    private Optional<Assertion> unplaced() {
        return table.selection()
                .map(row -> row.target(Problem.class))
                .flatMap(
                        problem ->
                                library.study().stream()
                                        .flatMap(s -> s.books().stream())
                                        .flatMap(b -> b.reading().unplaced().stream())
                                        .filter(u -> u.problem().equals(problem))
                                        .map(Unplaced::decision)
                                        .findFirst());
    }

    private void placeAgain() {
        unplaced()
                .filter(d -> d.anchor().isPresent())
                .ifPresent(
                        d ->
                                navigator.words(
                                        new Navigator.Words(
                                                d.source(),
                                                d.anchor().orElseThrow().position(),
                                                false,
                                                Optional.of(d))));
    }

    private void show() {
        List<Problem> problems = library.study().map(Study::problems).orElse(List.of());
        summary.setText(
                switch (problems.size()) {
                    case 0 -> "Everything in this library could be read.";
                    case 1 -> "One problem; everything else works.";
                    default -> problems.size() + " problems; everything else works.";
                });
        table.rows(problems.stream().map(ProblemsPart::row).toList());
        offer();
    }

    private static DataTable.Row row(Problem problem) {
        String words = problem.words().isEmpty() ? "" : " “" + problem.words() + "”";
        String line = problem.line().isPresent() ? "" + problem.line().getAsInt() : "";
        return new DataTable.Row(
                List.of(
                        problem.file(),
                        line,
                        problem.reason() + words,
                        problem.remedy(),
                        problem.severity().name().toLowerCase(Locale.ROOT)),
                problem);
    }

    /** Shows the problems of the library that was opened or read again. */
    private void opened(String folder) {
        refresh();
    }

    /** Shows also what came up while the index was made. */
    private void indexed(String folder) {
        refresh();
    }

    private void refresh() {
        if (table != null && !table.control().isDisposed()) {
            show();
        }
    }

    /** Puts the keyboard into the list. */
    @Focus
    void focus() {
        table.control().setFocus();
    }
}
