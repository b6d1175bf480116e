package org.stillroom.workbench.library;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.workbench.modeling.EPartService;

/** Says that the words belong to no recipe. */
public final class NoRecipeHandler {
    /** Tells whether a page is shown. */
    @CanExecute
    boolean isReady(EPartService parts) {
        return Pages.shown(parts).isPresent();
    }

    /** Does it. */
    @Execute
    void cut(EPartService parts) {
        Pages.shown(parts).ifPresent(page -> page.cut("not-a-recipe"));
    }
}
