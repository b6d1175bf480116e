package org.stillroom.workbench.shell;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Shell;
import org.stillroom.workbench.widgets.DataTable;
import org.stillroom.workbench.widgets.PickDialog;

/** Lets a command be found by its name and be run. */
public final class CommandDialog {
    private static final List<DataTable.Column> COLUMNS =
            List.of(
                    DataTable.Column.words("Command", 32),
                    DataTable.Column.words("Key", 20),
                    DataTable.Column.words("What it does", 48));

    private final PickDialog dialog;

    /** Makes a dialog over these commands. */
    public CommandDialog(Shell shell, String title, List<Commands.Entry> entries) {
        List<DataTable.Row> rows =
                entries.stream()
                        .map(e -> new DataTable.Row(List.of(e.name(), e.key(), e.what()), e))
                        .toList();
        dialog = new PickDialog(shell, title, "Run", COLUMNS, rows);
    }

    /** Opens the dialog and returns the command that was chosen. */
    public Optional<Commands.Entry> choose() {
        return dialog.choose(Commands.Entry.class);
    }
}
