package org.stillroom.model.reading;

import org.stillroom.model.text.Span;

/**
 * A vessel that a recipe names.
 *
 * @param word its name, lower case (“cocktail glass”)
 * @param span where it stands
 * @param use what it serves for
 */
public record Vessel(String word, Span span, Use use) {

    /** What a vessel serves for. */
    public enum Use {
        /** The drink is mixed in it. */
        MIXING,
        /** The drink is served in it. */
        SERVING
    }
}
