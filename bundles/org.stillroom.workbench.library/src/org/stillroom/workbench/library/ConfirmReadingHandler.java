package org.stillroom.workbench.library;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.workbench.modeling.EPartService;

/** Says that the line at the words is read right. */
public final class ConfirmReadingHandler {
    /** Tells whether a page is shown. */
    @CanExecute
    boolean isReady(EPartService parts) {
        return Pages.shown(parts).isPresent();
    }

    /** Does it. */
    @Execute
    void run(EPartService parts) {
        Pages.shown(parts).ifPresent(page -> page.line("right"));
    }
}
