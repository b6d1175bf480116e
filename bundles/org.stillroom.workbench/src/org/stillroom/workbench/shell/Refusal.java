package org.stillroom.workbench.shell;

import jakarta.annotation.PostConstruct;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Display;
import org.stillroom.workbench.Signals;
import org.stillroom.workbench.Topics;

/** Says in a dialog why a library could not be opened, and what would work. */
public final class Refusal {
    /** Waits for a refusal. */
    @PostConstruct
    void listen(Signals signals) {
        signals.on(Topics.REFUSED, String.class, this::show);
    }

    /** Shows the reason. */
    private void show(String words) {
        MessageDialog dialog =
                new MessageDialog(
                        Display.getCurrent().getActiveShell(),
                        "The library was not opened",
                        null,
                        words,
                        MessageDialog.INFORMATION,
                        0,
                        "Close");
        dialog.setBlockOnOpen(false);
        dialog.open();
    }
}
