package org.stillroom.workbench.shell;

import jakarta.inject.Inject;
import org.eclipse.e4.core.di.annotations.Optional;
import org.eclipse.e4.ui.di.UIEventTopic;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Display;
import org.stillroom.workbench.Topics;

/** Says in a dialog why a library could not be opened, and what would work. */
public final class Refusal {
    /** Shows the reason. */
    @Inject
    @Optional
    void show(@UIEventTopic(Topics.REFUSED) String words) {
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
