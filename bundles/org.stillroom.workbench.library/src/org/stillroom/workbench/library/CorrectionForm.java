package org.stillroom.workbench.library;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.eclipse.jface.fieldassist.ContentProposal;
import org.eclipse.jface.fieldassist.ContentProposalAdapter;
import org.eclipse.jface.fieldassist.IContentProposal;
import org.eclipse.jface.fieldassist.TextContentAdapter;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.stillroom.ingredients.Sense;
import org.stillroom.model.reading.Size;
import org.stillroom.workbench.widgets.Names;

/**
 * A small form beside words of a page, to say what they are.
 *
 * <p>Filled with what was read; shows the line in millilitres while it is being changed. Enter
 * saves, Escape leaves.
 */
final class CorrectionForm {
    private static final Map<String, String> KINDS = kinds();
    private static final int WIDTH = 420;
    private static final String USUAL = "what the name usually means then and there";

    private final Shell shell;
    private final CorrectionValues before;
    private final Completions completions;
    private final Combo is;
    private final Text quantity;
    private final Text most;
    private final Combo measure;
    private final Combo size;
    private final Text name;
    private final Combo meaning;
    private List<Sense> meanings = List.of();
    private final Label preview;
    private final Button save;
    private Consumer<Map<String, String>> changed = values -> {};
    private Consumer<Map<String, String>> saved = values -> {};

    CorrectionForm(
            Control words, String printed, CorrectionValues before, Completions completions) {
        this.before = before;
        this.completions = completions;
        this.shell = new Shell(words.getShell(), SWT.TITLE | SWT.CLOSE | SWT.TOOL);
        shell.setText("Correct the reading");
        GridLayoutFactory.fillDefaults().numColumns(4).margins(14, 12).spacing(8, 8).applyTo(shell);
        heading(printed);
        is = combo("What it is", SWT.READ_ONLY, List.copyOf(KINDS.values()), 3);
        quantity = text("Quantity");
        most = text("up to");
        measure = combo("Measure", SWT.NONE, completions.measures(), 1);
        size = combo("Size", SWT.READ_ONLY, sizes(), 1);
        name = text("Ingredient");
        GridDataFactory.fillDefaults().span(3, 1).grab(true, false).applyTo(name);
        complete();
        meaning = combo("Meaning", SWT.READ_ONLY, List.of(USUAL), 3);
        preview = label(shell, "", "Quiet");
        GridDataFactory.fillDefaults()
                .span(4, 1)
                .grab(true, false)
                .hint(WIDTH, 40)
                .applyTo(preview);
        Names.give(preview, "The line as it would be");
        save = buttons();
        fill();
        Stream.of(quantity, most).forEach(t -> t.addListener(SWT.Modify, e -> change()));
        name.addListener(SWT.Modify, e -> renamed());
        Stream.of(is, measure, size, meaning)
                .forEach(c -> c.addListener(SWT.Modify, e -> change()));
    }

    private static Map<String, String> kinds() {
        Map<String, String> kinds = new LinkedHashMap<>();
        kinds.put("measured", "an ingredient");
        kinds.put("ice", "ice");
        kinds.put("garnish", "a garnish");
        kinds.put("top", "what fills the glass up");
        kinds.put("rinse", "what only wets the glass");
        kinds.put("alternative", "another choice for the line before");
        kinds.put("vessel", "a vessel");
        kinds.put("step", "something to do");
        return kinds;
    }

    private static List<String> sizes() {
        return Stream.concat(Stream.of(""), Stream.of(Size.values()).map(Size::word)).toList();
    }

    private void heading(String printed) {
        String words = printed.strip().replaceAll("\\s+", " ");
        String shown = words.length() > 60 ? words.substring(0, 59) + "…" : words;
        Label heading = label(shell, "“" + shown.replace("&", "&&") + "”", "Heading");
        GridDataFactory.fillDefaults().span(4, 1).grab(true, false).applyTo(heading);
    }

    private static Label label(Composite parent, String words, String style) {
        Label label = new Label(parent, SWT.WRAP);
        label.setText(words);
        label.setData("org.eclipse.e4.ui.css.CssClassName", style);
        return label;
    }

    private Combo combo(String label, int style, List<String> choices, int columns) {
        label(shell, label, "");
        Combo combo = new Combo(shell, SWT.DROP_DOWN | style);
        combo.setItems(choices.toArray(String[]::new));
        combo.setVisibleItemCount(14);
        Names.give(combo, label);
        GridDataFactory.fillDefaults()
                .span(columns, 1)
                .grab(true, false)
                .hint(110, SWT.DEFAULT)
                .applyTo(combo);
        return combo;
    }

    private Text text(String label) {
        label(shell, label, "");
        Text text = new Text(shell, SWT.SINGLE | SWT.BORDER);
        Names.give(text, label);
        GridDataFactory.fillDefaults().grab(true, false).hint(90, SWT.DEFAULT).applyTo(text);
        return text;
    }

    private void complete() {
        ContentProposalAdapter adapter =
                new ContentProposalAdapter(
                        name,
                        new TextContentAdapter(),
                        (typed, at) ->
                                completions.ingredients(typed.substring(0, at)).stream()
                                        .map(ContentProposal::new)
                                        .toArray(IContentProposal[]::new),
                        null,
                        null);
        adapter.setProposalAcceptanceStyle(ContentProposalAdapter.PROPOSAL_REPLACE);
        adapter.setAutoActivationDelay(150);
    }

    private Button buttons() {
        Composite row = new Composite(shell, SWT.NONE);
        GridDataFactory.fillDefaults().span(4, 1).align(SWT.END, SWT.CENTER).applyTo(row);
        GridLayoutFactory.fillDefaults().numColumns(2).equalWidth(true).applyTo(row);
        Button yes = button(row, "Save", this::save);
        button(row, "Leave", this::close);
        shell.setDefaultButton(yes);
        return yes;
    }

    private static Button button(Composite row, String words, Runnable action) {
        Button button = new Button(row, SWT.PUSH);
        button.setText(words);
        Names.give(button, words);
        button.addListener(SWT.Selection, e -> action.run());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(button);
        return button;
    }

    private void fill() {
        is.setText(KINDS.getOrDefault(before.is(), "an ingredient"));
        quantity.setText(before.quantity());
        most.setText(before.most());
        measure.setText(before.measure());
        size.setText(before.size());
        name.setText(before.name());
        offerMeanings();
    }

    /** Offers what the name may mean in this book. */
    private void offerMeanings() {
        meanings = completions.meanings().apply(name.getText().strip());
        List<String> items = new ArrayList<>(List.of(USUAL));
        meanings.forEach(s -> items.add(s.label()));
        meaning.setItems(items.toArray(String[]::new));
        meaning.select(0);
    }

    private void renamed() {
        offerMeanings();
        change();
    }

    private String sense() {
        int at = meaning.getSelectionIndex() - 1;
        return at >= 0 && at < meanings.size() ? meanings.get(at).id() : "";
    }

    /** Calls the consumer with what would be decided, at every change. */
    void onChange(Consumer<Map<String, String>> consumer) {
        changed = consumer;
    }

    /** Calls the consumer with what was decided. */
    void onSave(Consumer<Map<String, String>> consumer) {
        saved = consumer;
    }

    /** Shows the form below a point of the display, moved into sight where it would not be. */
    void open(Point at) {
        shell.pack();
        Point extent = shell.getSize();
        Rectangle screen = shell.getMonitor().getClientArea();
        int x = Math.min(at.x, screen.x + screen.width - extent.x);
        int y = Math.min(at.y, screen.y + screen.height - extent.y);
        shell.setLocation(Math.max(screen.x, x), Math.max(screen.y, y));
        shell.open();
        quantity.setFocus();
        quantity.selectAll();
        change();
    }

    private CorrectionValues values() {
        String kind =
                KINDS.entrySet().stream()
                        .filter(e -> e.getValue().equals(is.getText()))
                        .map(Map.Entry::getKey)
                        .findFirst()
                        .orElse("measured");
        return new CorrectionValues(
                kind,
                quantity.getText(),
                most.getText(),
                measure.getText(),
                size.getText(),
                name.getText(),
                sense());
    }

    private void change() {
        CorrectionValues now = values();
        Stream.of(quantity, most, measure, size, meaning).forEach(c -> c.setEnabled(!now.isPart()));
        Optional<String> wrong = now.wrong();
        save.setEnabled(wrong.isEmpty());
        if (wrong.isPresent()) {
            preview.setText(wrong.get());
        } else {
            changed.accept(now.since(before));
        }
    }

    /** Shows what the line would be. */
    void preview(String words) {
        if (!preview.isDisposed() && values().wrong().isEmpty()) {
            preview.setText(words.replace("&", "&&"));
        }
    }

    private void save() {
        Map<String, String> values = values().since(before);
        close();
        saved.accept(values);
    }

    /** Returns the form's window while it is open. */
    Optional<Shell> shell() {
        return Optional.of(shell).filter(s -> !s.isDisposed());
    }

    void close() {
        if (!shell.isDisposed()) {
            shell.close();
        }
    }
}
