package org.stillroom.workbench.handlers;

import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.swt.widgets.Shell;
import org.stillroom.workbench.shell.CommandDialog;
import org.stillroom.workbench.shell.Commands;

/** Finds a command by its name and runs it. */
public final class AllCommandsHandler {
    /** Shows the list and runs what is chosen. */
    @Execute
    void choose(Shell shell, Commands commands) {
        new CommandDialog(shell, "All commands", commands.runnable())
                .choose()
                .ifPresent(commands::run);
    }
}
