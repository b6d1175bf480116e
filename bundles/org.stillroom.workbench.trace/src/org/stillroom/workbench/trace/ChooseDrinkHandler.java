package org.stillroom.workbench.trace;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.swt.widgets.Shell;
import org.stillroom.workbench.OpenLibrary;

/** Lets the user choose the drink to trace. */
public final class ChooseDrinkHandler {
    /** Tells whether a library is open. */
    @CanExecute
    boolean isOpen(OpenLibrary library) {
        return library.study().isPresent();
    }

    /** Shows the drinks. */
    @Execute
    void choose(Shell shell, DrinkChooser chooser) {
        chooser.choose(shell);
    }
}
