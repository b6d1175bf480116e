package org.stillroom.workbench.library;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.workbench.modeling.EPartService;

/** Joins the recipe with the one before it. */
public final class JoinRecipesHandler {
    /** Tells whether a page is shown. */
    @CanExecute
    boolean isReady(EPartService parts) {
        return Pages.shown(parts).isPresent();
    }

    /** Does it. */
    @Execute
    void cut(EPartService parts) {
        Pages.shown(parts).ifPresent(page -> page.cut("join"));
    }
}
