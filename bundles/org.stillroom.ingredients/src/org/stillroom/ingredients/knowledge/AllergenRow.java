package org.stillroom.ingredients.knowledge;

import java.util.Optional;
import org.stillroom.ingredients.Allergen;
import org.stillroom.model.explain.Citation;

/**
 * What a row says about an allergen in a sense.
 *
 * @param sense id of the sense
 * @param allergen which; nothing where the row says that none of them is in it
 * @param presence whether it is in every making
 * @param source who says so
 */
public record AllergenRow(
        String sense, Optional<Allergen> allergen, Presence presence, Citation source) {

    /** How surely it is there. */
    public enum Presence {
        /** In every making. */
        CONTAINS,
        /** In some makings. */
        POSSIBLE,
        /** None of the listed allergens belongs in it. */
        NONE,
        /** Not known, whatever broader senses say. */
        UNKNOWN
    }

    /** Returns the same statement about another sense. */
    public AllergenRow withSense(String other) {
        return new AllergenRow(other, allergen, presence, source);
    }
}
