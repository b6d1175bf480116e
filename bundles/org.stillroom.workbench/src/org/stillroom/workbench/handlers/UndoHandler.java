package org.stillroom.workbench.handlers;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;
import org.stillroom.workbench.Decider;

/** Undoes what was decided last. */
public final class UndoHandler {
    /** Tells whether there is anything to undo. */
    @CanExecute
    boolean isThere(Decider decider) {
        return decider.undoable().isPresent();
    }

    /** Does it. */
    @Execute
    void undo(Decider decider) {
        decider.undo();
    }
}
