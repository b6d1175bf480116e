package org.stillroom.workbench.shell;

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
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.stillroom.workbench.widgets.Names;

/** Lets a command be found by typing a part of its name and be run by Enter. */
public final class CommandDialog extends Dialog {
    private final String title;
    private final List<Commands.Entry> entries;
    private Text filter;
    private Table table;
    private Optional<Commands.Entry> chosen = Optional.empty();

    /** Makes a dialog over these commands. */
    public CommandDialog(Shell shell, String title, List<Commands.Entry> entries) {
        super(shell);
        this.title = title;
        this.entries = entries;
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    /** Opens the dialog and returns the command that was chosen. */
    public Optional<Commands.Entry> choose() {
        return open() == OK ? chosen : Optional.empty();
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(title);
    }

    @Override
    protected Point getInitialSize() {
        return new Point(720, 560);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        filter = new Text(area, SWT.SINGLE | SWT.BORDER | SWT.SEARCH);
        filter.setMessage("Type a part of the name");
        Names.give(filter, "Part of a command’s name");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
        table = new Table(area, SWT.FULL_SELECTION | SWT.SINGLE | SWT.BORDER);
        Names.give(table, "Commands");
        table.setHeaderVisible(true);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table);
        column("Command", 210);
        column("Key", 130);
        column("What it does", 330);
        filter.addListener(SWT.Modify, e -> fill());
        filter.addListener(SWT.KeyDown, e -> {
            if (e.keyCode == SWT.ARROW_DOWN) {
                table.setFocus();
            }
        });
        table.addListener(SWT.DefaultSelection, e -> okPressed());
        fill();
        return area;
    }

    private void column(String name, int width) {
        TableColumn column = new TableColumn(table, SWT.NONE);
        column.setText(name);
        column.setWidth(width);
    }

    private void fill() {
        String words = filter.getText().toLowerCase(Locale.ROOT).strip();
        table.removeAll();
        for (Commands.Entry entry : entries) {
            String all = (entry.name() + ' ' + entry.what()).toLowerCase(Locale.ROOT);
            if (all.contains(words)) {
                TableItem item = new TableItem(table, SWT.NONE);
                item.setText(new String[] {entry.name(), entry.key(), entry.what()});
                item.setData(entry);
            }
        }
        if (table.getItemCount() > 0) {
            table.select(0);
        }
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, "Run", true);
        createButton(parent, IDialogConstants.CANCEL_ID, "Close", false);
    }

    @Override
    protected void okPressed() {
        int row = table.getSelectionIndex();
        chosen = row < 0
                ? Optional.empty()
                : Optional.of((Commands.Entry) table.getItem(row).getData());
        super.okPressed();
    }
}
