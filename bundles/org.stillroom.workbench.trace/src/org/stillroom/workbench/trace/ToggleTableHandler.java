package org.stillroom.workbench.trace;

import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.workbench.modeling.EPartService;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.Parts;

/** Shows the table behind the drift chart, or the chart again. */
public final class ToggleTableHandler {
    /** Brings the part to the front and turns it over. */
    @Execute
    void toggle(EPartService parts, Navigator navigator) {
        navigator.part(Parts.DRIFT);
        if (parts.findPart(Parts.DRIFT).getObject() instanceof DriftPart drift) {
            drift.toggle();
        }
    }
}
