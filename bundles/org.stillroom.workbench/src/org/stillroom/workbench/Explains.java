package org.stillroom.workbench;

import java.util.Optional;

/** A part that can say why the amounts of what is selected in it are so. */
public interface Explains {
    /** Returns the reason of what is selected, if anything with amounts is. */
    Optional<Navigator.Reason> reason();
}
