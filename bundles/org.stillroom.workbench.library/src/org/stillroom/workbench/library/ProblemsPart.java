package org.stillroom.workbench.library;

import jakarta.annotation.PostConstruct;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Locale;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.stillroom.inquiry.Study;
import org.stillroom.model.explain.Problem;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Signals;
import org.stillroom.workbench.Topics;
import org.stillroom.workbench.widgets.DataTable;
import org.stillroom.workbench.widgets.Sheet;

/** What could not be read in the open library, where, why, and what would help. */
public final class ProblemsPart {
    private final Signals signals;
    private final OpenLibrary library;
    private Label summary;
    private DataTable table;

    /** Makes an empty list. */
    @Inject
    public ProblemsPart(Signals signals, OpenLibrary library) {
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
        summary = new Label(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).indent(12, 6).applyTo(summary);
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
        show();
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
