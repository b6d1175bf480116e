package org.stillroom.workbench.handlers;

import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.swt.widgets.Shell;
import org.stillroom.workbench.shell.CommandDialog;
import org.stillroom.workbench.shell.Commands;

/** Lists what the keys do. */
public final class KeysHandler {
    /** Shows every command that has a key; Enter runs one. */
    @Execute
    void show(Shell shell, Commands commands) {
        new CommandDialog(shell, "Keys", commands.withKeys()).choose().ifPresent(commands::run);
    }
}
