package org.stillroom.workbench.library;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.stillroom.inquiry.Review;
import org.stillroom.model.text.Anchor;
import org.stillroom.workbench.Decider;
import org.stillroom.workbench.Lane;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Signals;
import org.stillroom.workbench.Topics;
import org.stillroom.workbench.Work;
import org.stillroom.workbench.widgets.DataTable;
import org.stillroom.workbench.widgets.Names;
import org.stillroom.workbench.widgets.Sheet;

/** The doubtful readings of the library, first those whose correction would change most. */
public final class ReviewPart {
    /** So many rows are shown; nobody reviews more before the list is made anew. */
    private static final int MOST = 500;

    private final OpenLibrary library;
    private final Signals signals;
    private final Navigator navigator;
    private final Decider decider;
    private final Lane reviewing;
    private Label summary;
    private DataTable table;
    private Button right;

    /** Makes an empty list. */
    @Inject
    public ReviewPart(
            OpenLibrary library, Signals signals, Navigator navigator, Decider decider, Work work) {
        this.library = library;
        this.signals = signals;
        this.navigator = navigator;
        this.decider = decider;
        this.reviewing = work.lane("Looking for doubtful readings");
    }

    /** Lays out a sentence, the list and its buttons. */
    @PostConstruct
    void create(Composite owner) {
        Composite parent = Sheet.on(owner);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(parent);
        summary = new Label(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).indent(12, 6).applyTo(summary);
        table =
                new DataTable(
                        parent,
                        "Doubtful readings",
                        List.of(
                                DataTable.Column.figures("Gain", 6),
                                DataTable.Column.words("Recipe", 15),
                                DataTable.Column.words("As printed", 24),
                                DataTable.Column.words("Read as", 17),
                                DataTable.Column.words("Doubt", 23),
                                DataTable.Column.figures("Sure", 6),
                                DataTable.Column.words("Source", 12)));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table.control());
        table.onOpen(row -> correct(row.target(Review.Item.class)));
        table.onSelect(row -> right.setEnabled(row.isPresent()));
        Label gain = new Label(parent, SWT.WRAP);
        gain.setText(Review.GAIN);
        gain.setData("org.eclipse.e4.ui.css.CssClassName", "Quiet");
        GridDataFactory.fillDefaults().grab(true, false).indent(12, 2).hint(200, -1).applyTo(gain);
        Composite buttons = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(buttons);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(12, 4).applyTo(buttons);
        button(
                buttons,
                "Correct it",
                () -> table.selection().ifPresent(r -> correct(r.target(Review.Item.class))));
        right = button(buttons, "It is right", this::confirm);
        signals.on(Topics.OPENED, String.class, parent, folder -> find());
        find();
    }

    private static Button button(Composite row, String words, Runnable action) {
        Button button = new Button(row, SWT.PUSH);
        button.setText(words);
        Names.give(button, words);
        button.addListener(SWT.Selection, e -> action.run());
        return button;
    }

    private void find() {
        library.study().ifPresent(study -> reviewing.run(p -> Review.of(study, p), this::show));
    }

    private void show(List<Review.Item> items) {
        String some = items.size() > MOST ? "; the first " + MOST + " are shown" : "";
        summary.setText(
                items.isEmpty()
                        ? "Nothing in this library is read with doubt."
                        : (items.size() == 1
                                        ? "One doubtful reading"
                                        : items.size() + " doubtful readings")
                                + some
                                + ". Enter corrects one; “It is right” confirms it.");
        int at = Math.max(0, table.control().getSelectionIndex());
        table.rows(items.stream().limit(MOST).map(ReviewPart::row).toList());
        if (!items.isEmpty()) {
            table.select(Math.min(at, items.size() - 1));
        }
        right.setEnabled(!items.isEmpty());
    }

    private static DataTable.Row row(Review.Item i) {
        return new DataTable.Row(
                List.of(
                        String.format(Locale.ROOT, "%.2f", i.gain()),
                        i.version().witness().title(),
                        i.printed(),
                        i.read().isEmpty() ? "–" : i.read(),
                        capital(i.reason()),
                        Math.round(100 * i.sure()) + " %",
                        i.version().source().shortName()),
                i);
    }

    private static String capital(String words) {
        return words.isEmpty()
                ? words
                : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private void correct(Review.Item item) {
        navigator.words(
                new Navigator.Words(item.version().id(), item.words(), true, Optional.empty()));
    }

    private void confirm() {
        table.selection()
                .map(row -> row.target(Review.Item.class))
                .ifPresent(
                        i ->
                                decider.decide(
                                        "line",
                                        i.version().source().id(),
                                        Optional.of(
                                                Anchor.of(i.version().source().text(), i.words())),
                                        Map.of("action", "right")));
    }

    /** Puts the keyboard into the list. */
    @Focus
    void focus() {
        table.control().setFocus();
    }

    /** Drops what is still being looked for. */
    @PreDestroy
    void close() {
        reviewing.close();
    }
}
