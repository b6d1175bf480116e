package org.stillroom.workbench.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.fieldassist.AutoCompleteField;
import org.eclipse.jface.fieldassist.ComboContentAdapter;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.stillroom.ingredients.IngredientKind;
import org.stillroom.ingredients.Label.Kind;
import org.stillroom.ingredients.Sense;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.ingredients.ThesaurusEdit;
import org.stillroom.workbench.widgets.Names;

/** Asks for a change of the senses, says what is wrong with it and which lines it touches. */
final class SenseDialog extends Dialog {

    /** What is to be done. */
    enum Deed {
        /** A sense that the thesaurus lacks. */
        ADD("Add an ingredient", "Add"),
        /** A further name. */
        NAME("Add a name", "Add"),
        /** A name that does not belong. */
        UNNAME("Take a name off", "Take off"),
        /** Two that are one. */
        MERGE("Merge into another", "Merge"),
        /** One that is two. */
        SPLIT("Split in two", "Split");

        private final String title;
        private final String verb;

        Deed(String title, String verb) {
            this.title = title;
            this.verb = verb;
        }

        String words() {
            return title + "…";
        }
    }

    private final Deed deed;
    private final Thesaurus thesaurus;
    private final Optional<Sense> sense;
    private final Function<ThesaurusEdit, String> touched;
    private Optional<Text> label = Optional.empty();
    private Optional<Combo> choice = Optional.empty();
    private Optional<Combo> broader = Optional.empty();
    private Optional<Table> names = Optional.empty();
    private Label told;
    private Optional<ThesaurusEdit> edit = Optional.empty();

    /**
     * Makes a dialog.
     *
     * @param sense the sense that is changed; empty for a new one
     * @param touched says which lines of the library a change touches
     */
    SenseDialog(
            Shell shell,
            Deed deed,
            Thesaurus thesaurus,
            Optional<Sense> sense,
            Function<ThesaurusEdit, String> touched) {
        super(shell);
        this.deed = deed;
        this.thesaurus = thesaurus;
        this.sense = sense;
        this.touched = touched;
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    /** Opens the dialog and returns the change that was asked for. */
    Optional<ThesaurusEdit> ask() {
        return open() == OK ? edit : Optional.empty();
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(deed.title);
    }

    @Override
    protected Point getInitialSize() {
        return new Point(560, deed == Deed.SPLIT ? 520 : 360);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        Composite fields = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(fields);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(10, 8).applyTo(fields);
        sense.ifPresent(s -> row(fields, "Ingredient").setText(s.label() + " (" + s.id() + ")"));
        switch (deed) {
            case ADD -> {
                label = Optional.of(text(fields, "Name"));
                choice = Optional.of(combo(fields, "What it is", kinds(), SWT.READ_ONLY));
                broader = Optional.of(combo(fields, "A kind of", senses(), SWT.NONE));
            }
            case NAME -> label = Optional.of(text(fields, "Further name"));
            case UNNAME -> choice = Optional.of(combo(fields, "Name", ownNames(), SWT.READ_ONLY));
            case MERGE -> choice = Optional.of(combo(fields, "The same as", senses(), SWT.NONE));
            case SPLIT -> {
                label = Optional.of(text(fields, "Name of the new one"));
                names = Optional.of(ticks(fields, "Names that go over"));
            }
        }
        told = new Label(area, SWT.WRAP);
        Names.give(told, "What it touches");
        GridDataFactory.fillDefaults().grab(true, false).hint(480, 90).applyTo(told);
        return area;
    }

    private static Label row(Composite fields, String words) {
        new Label(fields, SWT.NONE).setText(words);
        Label value = new Label(fields, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(value);
        return value;
    }

    private Text text(Composite fields, String words) {
        new Label(fields, SWT.NONE).setText(words);
        Text text = new Text(fields, SWT.SINGLE | SWT.BORDER);
        Names.give(text, words);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        text.addListener(SWT.Modify, e -> look());
        return text;
    }

    private Combo combo(Composite fields, String words, List<String> items, int style) {
        new Label(fields, SWT.NONE).setText(words);
        Combo combo = new Combo(fields, SWT.DROP_DOWN | style);
        combo.setItems(items.toArray(String[]::new));
        if (style == SWT.NONE) {
            new AutoCompleteField(combo, new ComboContentAdapter(), items.toArray(String[]::new));
        }
        Names.give(combo, words);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(combo);
        combo.addListener(SWT.Modify, e -> look());
        combo.addListener(SWT.Selection, e -> look());
        return combo;
    }

    private Table ticks(Composite fields, String words) {
        Label caption = new Label(fields, SWT.NONE);
        caption.setText(words);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.BEGINNING).applyTo(caption);
        Table table = new Table(fields, SWT.CHECK | SWT.BORDER | SWT.V_SCROLL);
        Names.give(table, words);
        ownNames().forEach(n -> new TableItem(table, SWT.NONE).setText(n));
        GridDataFactory.fillDefaults().grab(true, true).hint(200, 160).applyTo(table);
        table.addListener(SWT.Selection, e -> look());
        return table;
    }

    private static List<String> kinds() {
        return Arrays.stream(IngredientKind.values()).map(IngredientKind::word).toList();
    }

    private List<String> senses() {
        return thesaurus.senses().values().stream().map(Sense::label).distinct().sorted().toList();
    }

    /** Returns the names of the sense but the preferred one. */
    private List<String> ownNames() {
        return sense.map(
                        s ->
                                thesaurus.labels(s.id()).stream()
                                        .filter(l -> l.kind() != Kind.PREFERRED)
                                        .map(org.stillroom.ingredients.Label::text)
                                        .distinct()
                                        .sorted()
                                        .toList())
                .orElse(List.of());
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, deed.verb, true);
        createButton(parent, IDialogConstants.CANCEL_ID, "Close", false);
        look();
    }

    /** Tries the change and says what it touches, or what is missing. */
    private void look() {
        edit = wanted();
        Optional<String> wrong = edit.flatMap(this::wrong);
        told.setText(
                edit.map(e -> wrong.orElseGet(() -> touched.apply(e)))
                        .orElse("Fill in the fields above.")
                        .replace("&", "&&"));
        Button ok = getButton(IDialogConstants.OK_ID);
        if (ok != null) {
            ok.setEnabled(edit.isPresent() && wrong.isEmpty());
        }
    }

    private Optional<String> wrong(ThesaurusEdit tried) {
        Thesaurus.Loaded loaded = thesaurus.apply(List.of(tried));
        return loaded.problems().stream().findFirst().map(p -> p.reason());
    }

    private Optional<ThesaurusEdit> wanted() {
        return switch (deed) {
            case ADD -> typed().flatMap(this::added);
            case NAME ->
                    typed().map(n -> new ThesaurusEdit.AddLabel(id(), n, Kind.ALTERNATIVE, "en"));
            case UNNAME -> chosen().map(n -> new ThesaurusEdit.RemoveLabel(id(), n));
            case MERGE ->
                    chosen().flatMap(this::byLabel).map(o -> new ThesaurusEdit.Merge(id(), o));
            case SPLIT -> typed().flatMap(this::split);
        };
    }

    private Optional<ThesaurusEdit> added(String name) {
        List<String> over = broader.flatMap(c -> byLabel(c.getText())).stream().toList();
        return chosen().flatMap(IngredientKind::of)
                .map(k -> new ThesaurusEdit.AddSense(slug(name), name, k, over, ""));
    }

    private Optional<ThesaurusEdit> split(String name) {
        List<String> going = new ArrayList<>();
        names.ifPresent(
                t ->
                        Arrays.stream(t.getItems())
                                .filter(TableItem::getChecked)
                                .forEach(i -> going.add(i.getText())));
        return going.isEmpty()
                ? Optional.empty()
                : Optional.of(new ThesaurusEdit.Split(id(), slug(name), name, going));
    }

    private String id() {
        return sense.map(Sense::id).orElse("");
    }

    private Optional<String> typed() {
        return label.map(t -> t.getText().strip()).filter(t -> !t.isEmpty());
    }

    private Optional<String> chosen() {
        return choice.map(c -> c.getText().strip()).filter(t -> !t.isEmpty());
    }

    private Optional<String> byLabel(String words) {
        return thesaurus.senses().values().stream()
                .filter(s -> s.label().equalsIgnoreCase(words.strip()))
                .map(Sense::id)
                .findFirst();
    }

    /** Returns an id in the manner of the thesaurus: “Quay cordial” is quay-cordial. */
    static String slug(String name) {
        String plain =
                java.text.Normalizer.normalize(name, java.text.Normalizer.Form.NFD)
                        .replaceAll("\\p{M}+", "")
                        .toLowerCase(Locale.ROOT);
        return plain.replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    }
}
