package org.stillroom.workbench;

import org.eclipse.e4.core.contexts.IEclipseContext;
import org.eclipse.e4.ui.css.swt.theme.ITheme;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.widgets.Display;

/** The two themes of the window. */
public final class Themes {
    /** Ink on paper. */
    public static final String LIGHT = "org.stillroom.theme.light";

    /** Paper on ink. */
    public static final String DARK = "org.stillroom.theme.dark";

    private Themes() {}

    /** Returns the id of the theme that is shown. */
    public static String shown(IThemeEngine engine) {
        ITheme active = engine.getActiveTheme();
        return active != null && active.getId().equals(DARK) ? DARK : LIGHT;
    }

    /** Tells whether the window of an application's context shows the dark theme. */
    public static boolean isDark(IEclipseContext context) {
        return shown(context.get(IThemeEngine.class)).equals(DARK);
    }

    /** Shows a theme and remembers it for the next start. */
    public static void show(IThemeEngine engine, String id, Display display) {
        display.setDarkThemePreferred(id.equals(DARK));
        engine.setTheme(id, true);
    }

    /** Asks the system's own scroll bars, menus and headers to suit the theme that is shown. */
    public static void followNatively(IThemeEngine engine, Display display) {
        boolean dark = shown(engine).equals(DARK);
        display.setDarkThemePreferred(dark);
    }
}
