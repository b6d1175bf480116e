package org.stillroom.workbench.handlers;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;
import org.stillroom.workbench.OpenLibrary;

/** Reads what changed in the open library's folder. */
public final class RereadHandler {
    /** Tells whether a library is open. */
    @CanExecute
    boolean isOpen(OpenLibrary library) {
        return library.folder().isPresent();
    }

    /** Reads it again. */
    @Execute
    void reread(OpenLibrary library) {
        library.reread();
    }
}
