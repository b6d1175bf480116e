package org.stillroom.workbench.trace;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.Parameter;
import org.stillroom.workbench.widgets.Names;

/** A form with one field for each parameter that an inquiry declares. */
final class InquiryForm {
    private final Composite form;
    private final Runnable run;
    private final Map<String, Supplier<String>> fields = new LinkedHashMap<>();
    private Optional<Control> first = Optional.empty();

    /** Makes a form in a parent; the action is run by Enter in a field. */
    InquiryForm(Composite parent, Inquiry inquiry, Map<String, String> known, Runnable run) {
        this.run = run;
        form = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(16, 8).spacing(8, 6).applyTo(form);
        Label summary = new Label(form, SWT.WRAP);
        String words = inquiry.summary();
        summary.setText(inquiry.name() + ":  " + words.replace("&", "&&"));
        summary.setData("org.eclipse.e4.ui.css.CssClassName", "Heading");
        GridDataFactory.fillDefaults()
                .grab(true, false)
                .span(3, 1)
                .hint(300, SWT.DEFAULT)
                .applyTo(summary);
        for (Parameter parameter : inquiry.parameters()) {
            add(parameter, known.getOrDefault(parameter.name(), parameter.usual().orElse("")));
        }
    }

    Composite control() {
        return form;
    }

    /** Puts the keyboard into the first field. */
    void focus() {
        first.ifPresent(Control::setFocus);
    }

    /** Returns what was filled in; empty fields are left out. */
    Arguments arguments() {
        Map<String, String> values = new TreeMap<>();
        fields.forEach(
                (name, value) -> {
                    if (!value.get().isBlank()) {
                        values.put(name, value.get().strip());
                    }
                });
        return new Arguments(values);
    }

    private void add(Parameter parameter, String value) {
        Label label = new Label(form, SWT.NONE);
        label.setText(parameter.name() + (parameter.required() ? " (needed)" : ""));
        Control control =
                switch (parameter.kind()) {
                    case FLAG -> flag(parameter);
                    case CHOICE -> choice(parameter, value);
                    case FILE -> file(parameter, value);
                    case TEXT, NUMBER, DATE, PLACE, DRINK -> text(form, parameter, value);
                };
        Names.give(control, parameter.name() + ": " + parameter.words());
        if (first.isEmpty()) {
            first = Optional.of(control);
        }
        Label words = new Label(form, SWT.NONE);
        words.setData("org.eclipse.e4.ui.css.CssClassName", "Quiet");
        words.setText(parameter.words().replace("&", "&&"));
        words.setToolTipText(parameter.words());
        GridDataFactory.fillDefaults()
                .align(SWT.FILL, SWT.CENTER)
                .grab(true, false)
                .hint(200, SWT.DEFAULT)
                .applyTo(words);
    }

    private Text text(Composite parent, Parameter parameter, String value) {
        Text text = new Text(parent, SWT.SINGLE | SWT.BORDER);
        text.setText(value);
        text.setMessage(example(parameter));
        text.addListener(SWT.DefaultSelection, e -> run.run());
        GridDataFactory.fillDefaults().hint(240, SWT.DEFAULT).applyTo(text);
        fields.put(parameter.name(), text::getText);
        return text;
    }

    private static String example(Parameter parameter) {
        return switch (parameter.kind()) {
            case DATE -> "1862, 186X, 1860/1865";
            case PLACE -> "a town, region or country";
            case NUMBER -> "digits";
            case DRINK -> "a drink’s name";
            default -> "";
        };
    }

    private Button flag(Parameter parameter) {
        Button check = new Button(form, SWT.CHECK);
        check.setText("yes");
        check.setData("org.eclipse.e4.ui.css.CssClassName", "Plain");
        fields.put(parameter.name(), () -> check.getSelection() ? Arguments.YES : "");
        return check;
    }

    private Combo choice(Parameter parameter, String value) {
        Combo combo = new Combo(form, SWT.READ_ONLY | SWT.DROP_DOWN);
        combo.setItems(parameter.choices().toArray(String[]::new));
        combo.setText(value);
        fields.put(parameter.name(), combo::getText);
        return combo;
    }

    private Composite file(Parameter parameter, String value) {
        Composite row = new Composite(form, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(row);
        Text text = text(row, parameter, value);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        Names.give(text, parameter.name() + ": " + parameter.words());
        Button browse = new Button(row, SWT.PUSH);
        browse.setText("Choose…");
        Names.give(browse, "Choose the file");
        browse.addListener(
                SWT.Selection,
                e -> {
                    FileDialog dialog = new FileDialog(form.getShell(), SWT.OPEN);
                    Optional.ofNullable(dialog.open())
                            .map(Path::of)
                            .ifPresent(p -> text.setText(p.toString()));
                });
        return row;
    }
}
