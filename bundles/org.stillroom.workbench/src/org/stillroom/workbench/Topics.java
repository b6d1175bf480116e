package org.stillroom.workbench;

/** Names of the events that the parts of the window tell each other. */
public final class Topics {
    /** How far the work in hand has come; carries a {@link Work.State}. */
    public static final String WORK = "org/stillroom/work";

    /** Another theme was chosen; carries its id. */
    public static final String THEME = "org/stillroom/theme";

    /** A library was opened or read again; carries its folder. */
    public static final String OPENED = "org/stillroom/library/opened";

    /** The open library was indexed and its drinks were found; carries its folder. */
    public static final String INDEXED = "org/stillroom/library/indexed";

    /** A library could not be opened; carries the reason and what would work. */
    public static final String REFUSED = "org/stillroom/library/refused";

    private Topics() {}
}
