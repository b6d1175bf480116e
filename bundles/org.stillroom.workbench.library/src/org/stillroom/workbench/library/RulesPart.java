package org.stillroom.workbench.library;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.stillroom.inquiry.BookRules;
import org.stillroom.reading.idiom.Idiom;
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

/** The rules of the books, proposed and accepted, with the lines that each changes. */
public final class RulesPart {
    private final OpenLibrary library;
    private final Signals signals;
    private final Navigator navigator;
    private final Decider decider;
    private final Lane finding;
    private Label summary;
    private DataTable rules;
    private DataTable changes;
    private Button accept;
    private Button edit;
    private Button drop;

    /** Makes an empty list. */
    @Inject
    public RulesPart(
            OpenLibrary library, Signals signals, Navigator navigator, Decider decider, Work work) {
        this.library = library;
        this.signals = signals;
        this.navigator = navigator;
        this.decider = decider;
        this.finding = work.lane("Looking for rules");
    }

    /** Lays out the rules over the lines that the selected one changes. */
    @PostConstruct
    void create(Composite owner) {
        Composite parent = Sheet.on(owner);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(parent);
        summary = new Label(parent, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).indent(12, 6).applyTo(summary);
        SashForm sides = new SashForm(parent, SWT.VERTICAL);
        sides.setSashWidth(1);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sides);
        rules =
                new DataTable(
                        sides,
                        "Rules",
                        List.of(
                                DataTable.Column.words("Book", 24),
                                DataTable.Column.words("Rule", 40),
                                DataTable.Column.words("State", 24),
                                DataTable.Column.figures("Changes", 12)));
        changes =
                new DataTable(
                        sides,
                        "What the rule changes",
                        List.of(
                                DataTable.Column.words("Recipe", 22),
                                DataTable.Column.words("As printed", 30),
                                DataTable.Column.words("Without the rule", 24),
                                DataTable.Column.words("With it", 24)));
        rules.onSelect(row -> showChanges());
        changes.onOpen(row -> go(row.target(BookRules.Change.class)));
        buttons(parent);
        signals.on(Topics.OPENED, String.class, parent, folder -> find());
        find();
    }

    private void buttons(Composite parent) {
        Composite row = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(12, 4).applyTo(row);
        accept = button(row, "Accept the rule", this::accept);
        edit = button(row, "Change it…", this::edit);
        drop = button(row, "Not a rule here", this::drop);
    }

    private static Button button(Composite row, String words, Runnable action) {
        Button button = new Button(row, SWT.PUSH);
        button.setText(words);
        Names.give(button, words);
        button.addListener(SWT.Selection, e -> action.run());
        return button;
    }

    private void find() {
        library.study().ifPresent(study -> finding.run(p -> BookRules.all(study, p), this::show));
    }

    private void show(List<BookRules.Rule> found) {
        summary.setText(summary(found));
        rules.rows(found.stream().map(RulesPart::row).toList());
        rules.select(0);
        showChanges();
    }

    private static String summary(List<BookRules.Rule> found) {
        long open = found.stream().filter(r -> r.decision().isEmpty()).count();
        long hold = found.size() - open;
        if (found.isEmpty()) {
            return "No rules yet. Three corrections of one sort in a book propose one.";
        }
        List<String> parts = new ArrayList<>();
        if (open > 0) {
            parts.add(open == 1 ? "One rule is proposed" : open + " rules are proposed");
        }
        if (hold > 0) {
            parts.add(hold == 1 ? "one rule holds" : hold + " rules hold");
        }
        String words = String.join("; ", parts) + ".";
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static DataTable.Row row(BookRules.Rule rule) {
        String against = rule.against() == 0 ? "" : ", " + rule.against() + " against";
        String state =
                rule.decision().isPresent()
                        ? "holds"
                        : "proposed by " + rule.evidence() + " corrections" + against;
        return new DataTable.Row(
                List.of(
                        rule.source().bibliography().title(),
                        rule.idiom().sentence(),
                        state,
                        "" + rule.changes().size()),
                rule);
    }

    private Optional<BookRules.Rule> selected() {
        return rules.selection().map(r -> r.target(BookRules.Rule.class));
    }

    private void showChanges() {
        Optional<BookRules.Rule> rule = selected();
        changes.rows(
                rule.map(BookRules.Rule::changes).orElse(List.of()).stream()
                        .map(RulesPart::row)
                        .toList());
        accept.setEnabled(rule.filter(r -> r.decision().isEmpty()).isPresent());
        edit.setEnabled(rule.filter(r -> editable(r.idiom()).isPresent()).isPresent());
        drop.setEnabled(rule.isPresent());
        String words =
                rule.filter(r -> r.decision().isPresent()).isPresent()
                        ? "Take the rule back"
                        : "Not a rule here";
        drop.setText(words);
        Names.give(drop, words);
        drop.getParent().layout();
    }

    private static DataTable.Row row(BookRules.Change c) {
        return new DataTable.Row(List.of(c.recipe(), c.printed(), c.before(), c.after()), c);
    }

    private void go(BookRules.Change change) {
        selected()
                .ifPresent(
                        r ->
                                navigator.words(
                                        new Navigator.Words(
                                                r.source().id(),
                                                change.words(),
                                                false,
                                                Optional.empty())));
    }

    private void accept() {
        selected().ifPresent(r -> decide(r, Idiom.KIND, r.idiom().decision()));
    }

    private void decide(BookRules.Rule rule, String kind, Map<String, String> values) {
        decider.decide(kind, rule.source().id(), Optional.empty(), values);
    }

    private void drop() {
        selected()
                .ifPresent(
                        r ->
                                r.decision()
                                        .ifPresentOrElse(
                                                decider::takeBack,
                                                () ->
                                                        decide(
                                                                r,
                                                                Idiom.DECLINED,
                                                                r.idiom().decision())));
    }

    /** Returns the name of the value that a person may change. */
    private static Optional<String> editable(Idiom idiom) {
        return switch (idiom.on()) {
            case MEASURE -> Optional.of("measure");
            case WORDS -> Optional.of("reads");
            case INGREDIENT -> Optional.of("ingredient").filter(i -> !idiom.value(i).isEmpty());
            case HEADING -> Optional.empty();
        };
    }

    private void edit() {
        Optional<BookRules.Rule> rule = selected();
        Optional<String> name = rule.flatMap(r -> editable(r.idiom()));
        if (name.isEmpty()) {
            return;
        }
        Idiom idiom = rule.orElseThrow().idiom();
        InputDialog dialog =
                new InputDialog(
                        rules.control().getShell(),
                        "Change the rule",
                        "“" + idiom.printed() + "” in this book is:",
                        idiom.value(name.get()),
                        typed -> typed.isBlank() ? "Say what it is." : null);
        if (dialog.open() == Window.OK) {
            Map<String, String> values = new TreeMap<>(idiom.decision());
            values.put(name.get(), dialog.getValue().strip());
            rule.get()
                    .decision()
                    .ifPresentOrElse(
                            d -> decider.replace(d, values),
                            () -> decide(rule.get(), Idiom.KIND, values));
        }
    }

    /** Puts the keyboard into the list. */
    @Focus
    void focus() {
        rules.control().setFocus();
    }

    /** Drops what is still being looked for. */
    @PreDestroy
    void close() {
        finding.close();
    }
}
