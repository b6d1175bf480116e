package org.stillroom.reading.reference;

import java.util.List;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.text.SourceText;

/** Finds and follows the references between the recipes of one source. */
public final class References {

    private References() {}

    /** Returns the readings with their references resolved as far as that is possible. */
    public static List<Reading> resolve(List<Reading> readings, SourceText text) {
        return readings;
    }
}
