package org.stillroom.workbench.widgets;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Lets a row of a table be found by typing a part of it and be chosen by Enter. */
public final class PickDialog extends Dialog {
    private final String title;
    private final String verb;
    private final List<DataTable.Column> columns;
    private final List<DataTable.Row> rows;
    private Text filter;
    private DataTable table;
    private Optional<DataTable.Row> chosen = Optional.empty();

    /** Makes a dialog over these rows; the verb stands on the button that chooses. */
    public PickDialog(
            Shell shell,
            String title,
            String verb,
            List<DataTable.Column> columns,
            List<DataTable.Row> rows) {
        super(shell);
        this.title = title;
        this.verb = verb;
        this.columns = List.copyOf(columns);
        this.rows = List.copyOf(rows);
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    /** Opens the dialog and returns what was chosen. */
    public <T> Optional<T> choose(Class<T> type) {
        return open() == OK ? chosen.map(row -> row.target(type)) : Optional.empty();
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(title);
    }

    @Override
    protected Point getInitialSize() {
        return new Point(760, 580);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        filter = new Text(area, SWT.SINGLE | SWT.BORDER | SWT.SEARCH);
        filter.setMessage("Type to narrow down");
        Names.give(filter, "Narrow down");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
        table = new DataTable(area, title, columns);
        table.onOpen(row -> okPressed());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table.control());
        filter.addListener(SWT.Modify, e -> fill());
        filter.addListener(
                SWT.KeyDown,
                e -> {
                    if (e.keyCode == SWT.ARROW_DOWN) {
                        table.control().setFocus();
                    }
                });
        fill();
        return area;
    }

    private void fill() {
        String words = filter.getText().toLowerCase(Locale.ROOT).strip();
        table.rows(rows.stream().filter(r -> holds(r, words)).toList());
        table.select(0);
    }

    private static boolean holds(DataTable.Row row, String words) {
        return String.join(" ", row.cells()).toLowerCase(Locale.ROOT).contains(words);
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, verb, true);
        createButton(parent, IDialogConstants.CANCEL_ID, "Close", false);
    }

    @Override
    protected void okPressed() {
        chosen = table.selection();
        super.okPressed();
    }
}
