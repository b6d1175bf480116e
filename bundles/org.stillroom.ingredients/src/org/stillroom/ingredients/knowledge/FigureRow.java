package org.stillroom.ingredients.knowledge;

import org.stillroom.ingredients.Properties;
import org.stillroom.model.explain.Citation;

/**
 * A figure that a row states for a sense, in the unit of its quantity.
 *
 * @param sense id of the sense
 * @param quantity what was measured
 * @param low least reasonable value
 * @param likely most likely value
 * @param high greatest reasonable value
 * @param source who says so
 */
public record FigureRow(
        String sense,
        Properties.Quantity quantity,
        double low,
        double likely,
        double high,
        Citation source) {

    /** Returns the same figure for another sense. */
    public FigureRow withSense(String other) {
        return new FigureRow(other, quantity, low, likely, high, source);
    }
}
