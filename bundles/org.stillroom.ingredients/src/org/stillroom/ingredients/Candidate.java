package org.stillroom.ingredients;

/**
 * One sense that words may have.
 *
 * @param sense the sense
 * @param score how well it fits, 0 to 1; comparable within one answer only
 * @param label the name of the sense that the words matched
 * @param reason a sentence for the reader
 */
public record Candidate(Sense sense, double score, Label label, String reason) {}
