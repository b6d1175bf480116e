package org.stillroom.workbench.handlers;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;
import org.stillroom.workbench.OpenLibrary;

/** Opens the example library. */
public final class OpenExampleHandler {
    /** Tells whether there is an example. */
    @CanExecute
    boolean isThere(OpenLibrary library) {
        return library.hasExample();
    }

    /** Opens it. */
    @Execute
    void open(OpenLibrary library) {
        library.openExample();
    }
}
