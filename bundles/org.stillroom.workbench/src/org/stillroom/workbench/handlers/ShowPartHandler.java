package org.stillroom.workbench.handlers;

import jakarta.inject.Named;
import org.eclipse.e4.core.di.annotations.Execute;
import org.stillroom.workbench.Navigator;

/** Brings a part of the window to the front. */
public final class ShowPartHandler {
    /** The parameter that names the part. */
    public static final String PART = "org.stillroom.workbench.command.show.part";

    /** Shows it. */
    @Execute
    void show(@Named(PART) String part, Navigator navigator) {
        navigator.part(part);
    }
}
