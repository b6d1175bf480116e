package org.stillroom.workbench.library;

import java.util.Optional;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.workbench.modeling.EPartService;
import org.stillroom.workbench.Parts;

/** Finds the page that is shown. */
final class Pages {
    private Pages() {}

    /** Returns what can be decided about the page that is shown, if one is. */
    static Optional<PageCorrections> shown(EPartService parts) {
        return Optional.ofNullable(parts.findPart(Parts.PAGE))
                .map(MPart::getObject)
                .filter(PagePart.class::isInstance)
                .map(PagePart.class::cast)
                .map(PagePart::corrections)
                .filter(PageCorrections::isReady);
    }
}
