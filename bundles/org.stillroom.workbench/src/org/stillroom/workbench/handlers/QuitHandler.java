package org.stillroom.workbench.handlers;

import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.workbench.IWorkbench;
import org.stillroom.workbench.Work;

/** Closes the window. */
public final class QuitHandler {
    /** Ends running work and closes. */
    @Execute
    void quit(IWorkbench workbench, Work work) {
        work.stop();
        workbench.close();
    }
}
