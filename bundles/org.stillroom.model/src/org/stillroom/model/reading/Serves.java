package org.stillroom.model.reading;

import org.stillroom.model.number.Rational;
import org.stillroom.model.text.Span;

/**
 * For how many a recipe is meant.
 *
 * @param low the number, or the lower one
 * @param high the number again, or the upper one
 * @param span where it stands
 */
public record Serves(Rational low, Rational high, Span span) {}
