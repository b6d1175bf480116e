package org.stillroom.workbench.trace;

import com.fasterxml.jackson.databind.node.NullNode;
import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.e4.core.di.extensions.Service;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.stillroom.ingredients.Candidate;
import org.stillroom.ingredients.Sense;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.ingredients.ThesaurusEdit;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.Desk;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.SenseUse;
import org.stillroom.model.source.Circumstances;
import org.stillroom.workbench.Decider;
import org.stillroom.workbench.Lane;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Signals;
import org.stillroom.workbench.Topics;
import org.stillroom.workbench.Work;
import org.stillroom.workbench.widgets.DataTable;
import org.stillroom.workbench.widgets.FileChooser;
import org.stillroom.workbench.widgets.Names;
import org.stillroom.workbench.widgets.Sheet;

/**
 * What the names of ingredients mean: senses with names, figures, allergens and cautions, and how
 * the user changes them.
 *
 * <p>The answer is that of the inquiry “thesaurus”; every change is a decision that undo takes back.
 */
public final class IngredientsPart {
    private static final List<DataTable.Column> COLUMNS =
            List.of(
                    DataTable.Column.words("Ingredient", 40),
                    DataTable.Column.words("What it is", 26),
                    DataTable.Column.figures("Fit", 10));

    private final Signals signals;
    private final OpenLibrary library;
    private final Navigator navigator;
    private final Decider decider;
    private final Work work;
    private final IThemeEngine themes;
    private final FileChooser files;
    private final Lane finding;
    private final Lane asking;
    private final Map<SenseDialog.Deed, Button> buttons = new EnumMap<>(SenseDialog.Deed.class);
    private Optional<Inquiry> thesaurus = Optional.empty();
    private Text name;
    private DataTable senses;
    private AnswerPane answer;

    /** What was found under a name. */
    private record Found(List<DataTable.Row> rows) {}

    /** Makes a part that shows all senses. */
    @Inject
    public IngredientsPart(
            Signals signals,
            OpenLibrary library,
            Navigator navigator,
            Decider decider,
            Work work,
            IThemeEngine themes,
            FileChooser files) {
        this.signals = signals;
        this.library = library;
        this.navigator = navigator;
        this.decider = decider;
        this.work = work;
        this.themes = themes;
        this.files = files;
        this.finding = work.lane("Looking through the ingredients");
        this.asking = work.lane("Looking the ingredient up");
    }

    /** Takes the inquiry that the command line asks too. */
    @Inject
    void registered(@Service List<Inquiry> services) {
        thesaurus = services.stream().filter(i -> i.name().equals("thesaurus")).findFirst();
    }

    /** Lays out names to the left, the sense to the right, what can be done below the names. */
    @PostConstruct
    void create(Composite owner) {
        Composite parent = Sheet.on(owner);
        signals.on(Topics.THEME, String.class, parent, id -> answer.theme());
        signals.on(Topics.OPENED, String.class, parent, folder -> find());
        GridLayoutFactory.fillDefaults().applyTo(parent);
        SashForm sides = new SashForm(parent, SWT.HORIZONTAL);
        sides.setSashWidth(1);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sides);
        Composite side = new Composite(sides, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 6).applyTo(side);
        name = new Text(side, SWT.SINGLE | SWT.BORDER | SWT.SEARCH);
        name.setMessage("A name as printed");
        Names.give(name, "Name of an ingredient");
        GridDataFactory.fillDefaults().grab(true, false).indent(12, 8).applyTo(name);
        name.addListener(SWT.Modify, e -> find());
        senses = new DataTable(side, "Ingredients", COLUMNS);
        senses.onSelect(row -> row.ifPresent(r -> ask(r.target(Sense.class))));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(senses.control());
        createButtons(side);
        answer = new AnswerPane(sides, work, themes, files, navigator);
        sides.setWeights(40, 60);
        find();
    }

    private void createButtons(Composite side) {
        Composite row = new Composite(side, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(12, 6).applyTo(row);
        for (SenseDialog.Deed deed : SenseDialog.Deed.values()) {
            Button button = new Button(row, SWT.PUSH);
            button.setText(deed.words());
            Names.give(button, deed.words());
            button.addListener(SWT.Selection, e -> change(deed));
            GridDataFactory.fillDefaults().grab(true, false).applyTo(button);
            buttons.put(deed, button);
        }
    }

    private void find() {
        String typed = name.getText().strip();
        Optional<Sense> before = selected();
        library.desk()
                .ifPresentOrElse(
                        desk ->
                                finding.run(
                                        progress -> found(desk, typed),
                                        found -> show(found, before),
                                        answer::refuse),
                        () -> answer.refuse("No library is open. Choose a folder with Ctrl+O."));
    }

    private static Found found(Desk desk, String typed) {
        Thesaurus thesaurus = desk.knowledge().thesaurus();
        List<DataTable.Row> rows = new ArrayList<>();
        if (!typed.isEmpty()) {
            for (Candidate c : thesaurus.find(typed, Circumstances.UNKNOWN)) {
                rows.add(row(c.sense(), String.format(Locale.ROOT, "%.2f", c.score())));
            }
        }
        if (rows.isEmpty()) {
            String part = typed.toLowerCase(Locale.ROOT);
            thesaurus.senses().values().stream()
                    .filter(s -> s.label().toLowerCase(Locale.ROOT).contains(part))
                    .sorted(java.util.Comparator.comparing(Sense::label))
                    .forEach(s -> rows.add(row(s, "")));
        }
        return new Found(rows);
    }

    private static DataTable.Row row(Sense sense, String fit) {
        return new DataTable.Row(List.of(sense.label(), sense.kind().word(), fit), sense);
    }

    private void show(Found found, Optional<Sense> before) {
        senses.rows(found.rows());
        List<String> ids = found.rows().stream().map(r -> r.target(Sense.class).id()).toList();
        int again = before.map(s -> ids.indexOf(s.id())).orElse(-1);
        senses.select(found.rows().isEmpty() ? -1 : Math.max(0, again));
        selected()
                .ifPresentOrElse(
                        this::ask,
                        () ->
                                answer.refuse(
                                        "Nothing is called so. Try another spelling, or add it."));
        enable();
    }

    private void enable() {
        boolean any = selected().isPresent();
        buttons.forEach((deed, b) -> b.setEnabled(any || deed == SenseDialog.Deed.ADD));
    }

    private Optional<Sense> selected() {
        return senses == null
                ? Optional.empty()
                : senses.selection().map(r -> r.target(Sense.class));
    }

    private void ask(Sense sense) {
        Arguments arguments = new Arguments(new TreeMap<>(Map.of("name", sense.id())));
        library.desk()
                .ifPresent(
                        desk ->
                                asking.run(
                                        progress -> answer(desk, sense, arguments, progress),
                                        answer::show,
                                        answer::refuse));
    }

    private Answer answer(
            Desk desk,
            Sense sense,
            Arguments arguments,
            org.stillroom.model.progress.Progress progress) {
        String use = SenseUse.of(desk.study(progress), sense.id()).words();
        List<Answer.Block> blocks = new ArrayList<>(List.of(new Answer.Block.Paragraph(use)));
        Optional<Answer> told = thesaurus.map(i -> i.answer(desk, arguments, progress));
        told.ifPresent(t -> blocks.addAll(t.blocks()));
        return new Answer(
                sense.label(),
                blocks,
                told.map(Answer::json).orElse(NullNode.getInstance()),
                List.of());
    }

    private void change(SenseDialog.Deed deed) {
        Optional<Sense> sense = deed == SenseDialog.Deed.ADD ? Optional.empty() : selected();
        library.desk()
                .ifPresent(
                        desk -> {
                            Thesaurus thesaurus = desk.knowledge().thesaurus();
                            new SenseDialog(name.getShell(), deed, thesaurus, sense, this::touched)
                                    .ask()
                                    .ifPresent(this::decide);
                        });
    }

    private String touched(ThesaurusEdit edit) {
        return library.study()
                .map(study -> SenseUse.of(study, edit).words())
                .orElse("The library is still being read.");
    }

    private void decide(ThesaurusEdit edit) {
        decider.decide(ThesaurusEdit.ASSERTION_KIND, "", Optional.empty(), edit.toValues());
    }

    /** Puts the keyboard into the name. */
    @Focus
    void focus() {
        name.setFocus();
    }

    /** Drops what is still being looked up. */
    @PreDestroy
    void close() {
        finding.close();
        asking.close();
    }
}
