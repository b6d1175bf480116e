package org.stillroom.model.source;

import org.stillroom.model.text.Span;

/**
 * Structure that a source's file states itself.
 *
 * @param kind what it is
 * @param label page number, heading level or recipe number as given, or empty
 * @param span where it holds; for a page, from its break to the next
 */
public record Mark(Kind kind, String label, Span span) {

    /** What a mark says. */
    public enum Kind {
        /** A page of the printed source. */
        PAGE,
        /** A heading; the label is its level, 1 for the highest. */
        HEADING,
        /** A division that the transcriber marked as a recipe. */
        RECIPE,
        /** A division that the transcriber marked as something else; the label says what. */
        OTHER,
        /** An item of a list. */
        ITEM,
        /** Emphasised words (italics, small capitals). */
        EMPHASIS,
        /** A table row. */
        ROW
    }
}
