package org.stillroom.model.reading;

import org.stillroom.model.text.Span;

/**
 * Something that could not be read with certainty.
 *
 * @param reason what is doubtful, a sentence
 * @param span the words concerned
 * @param weight how much of the drink hangs on it, 0 to 1; the review list starts with the greatest
 */
public record Doubt(String reason, Span span, double weight) {}
