package org.stillroom.workbench.library;

import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.workbench.modeling.EPartService;

/** Puts words of the transcription right, beside the file. */
public final class PutRightHandler {
    /** Tells whether a page is shown. */
    @CanExecute
    boolean isReady(EPartService parts) {
        return Pages.shown(parts).isPresent();
    }

    /** Does it. */
    @Execute
    void putRight(EPartService parts) {
        Pages.shown(parts).ifPresent(PageCorrections::putRight);
    }
}
