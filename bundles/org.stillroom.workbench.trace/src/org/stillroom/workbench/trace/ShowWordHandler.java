package org.stillroom.workbench.trace;

import java.util.Optional;
import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;
import org.stillroom.inquiry.Arguments;
import org.stillroom.workbench.Navigator;

/** Shows the word of measure of the amount that is explained in the part Measures. */
public final class ShowWordHandler {
    /** Tells whether the explained amount hangs on a word of measure. */
    @CanExecute
    boolean hasWord(Navigator navigator) {
        return word(navigator).isPresent();
    }

    /** Shows it. */
    @Execute
    void show(Navigator navigator) {
        word(navigator).ifPresent(navigator::measure);
    }

    private static Optional<Arguments> word(Navigator navigator) {
        return navigator.explained().flatMap(Navigator.Reason::word);
    }
}
