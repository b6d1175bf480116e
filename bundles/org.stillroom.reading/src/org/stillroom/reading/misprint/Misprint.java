package org.stillroom.reading.misprint;

import org.stillroom.model.text.Span;

/**
 * A word that type or a scanner has probably damaged, and what it probably was.
 *
 * <p>It is a proposal: the words of a file are never changed.
 *
 * @param span where the word stands
 * @param printed the word as it stands
 * @param meant the word that it probably was, in small letters
 * @param confused which letters were taken for which, in words
 * @param probability how likely that is, 0 to 1
 */
public record Misprint(
        Span span, String printed, String meant, String confused, double probability) {}
