package org.stillroom.workbench.handlers;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;
import org.stillroom.workbench.Work;

/** Ends the work that the status bar shows. */
public final class StopHandler {
    /** Tells whether anything is running. */
    @CanExecute
    boolean isBusy(Work work) {
        return work.isBusy();
    }

    /** Asks it to end. */
    @Execute
    void stop(Work work) {
        work.stop();
    }
}
