package org.stillroom.workbench.handlers;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.shell.FirstLibrary;

/** Opens the example library. */
public final class OpenExampleHandler {
    /** Tells whether there is an example. */
    @CanExecute
    boolean isThere() {
        return FirstLibrary.example().isPresent();
    }

    /** Opens it. */
    @Execute
    void open(OpenLibrary library) {
        FirstLibrary.example().ifPresent(library::open);
    }
}
