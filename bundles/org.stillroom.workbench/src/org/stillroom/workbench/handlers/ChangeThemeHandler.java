package org.stillroom.workbench.handlers;

import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.widgets.Display;
import org.stillroom.workbench.Themes;
import org.stillroom.workbench.Topics;

/** Changes between the light and the dark theme. */
public final class ChangeThemeHandler {
    /** Shows the other theme. */
    @Execute
    void change(IThemeEngine engine, Display display, IEventBroker events) {
        String other = Themes.shown(engine).equals(Themes.DARK) ? Themes.LIGHT : Themes.DARK;
        Themes.show(engine, other, display);
        events.post(Topics.THEME, other);
    }
}
