package org.stillroom.model.reading;

import java.util.Locale;

/** What part a line plays in a drink. */
public enum LineKind {
    /** An ingredient that goes into the drink. */
    MEASURED,
    /** Ice. */
    ICE,
    /** Something put on or beside the finished drink. */
    GARNISH,
    /** A liquid that fills the glass up. */
    TOP,
    /** A liquid that only wets the glass. */
    RINSE,
    /** An ingredient that may stand in for the line before it. */
    ALTERNATIVE;

    /** Returns the word that files and commands use. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
