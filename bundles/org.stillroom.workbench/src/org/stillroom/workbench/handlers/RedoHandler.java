package org.stillroom.workbench.handlers;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;
import org.stillroom.workbench.Decider;

/** Does again what was undone last. */
public final class RedoHandler {
    /** Tells whether there is anything to redo. */
    @CanExecute
    boolean isThere(Decider decider) {
        return decider.redoable().isPresent();
    }

    /** Does it. */
    @Execute
    void redo(Decider decider) {
        decider.redo();
    }
}
