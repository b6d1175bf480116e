package org.stillroom.workbench;

/** Names of the events that the parts of the window tell each other. */
public final class Topics {
    /** How far the work in hand has come; carries a {@link Work.State}. */
    public static final String WORK = "org/stillroom/work";

    /** Another theme was chosen; carries its id. */
    public static final String THEME = "org/stillroom/theme";

    private Topics() {}
}
