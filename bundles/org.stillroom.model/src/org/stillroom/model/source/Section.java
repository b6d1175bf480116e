package org.stillroom.model.source;

import org.stillroom.model.text.Span;

/**
 * A stretch of a source that is kept and is not a recipe.
 *
 * @param kind what it is
 * @param span where it stands
 */
public record Section(Kind kind, Span span) {

    /** What a stretch of a source is, when it is not a recipe. */
    public enum Kind {
        /** Title page, preface, dedication. */
        FRONT,
        /** Table of contents. */
        CONTENTS,
        /** Index. */
        INDEX,
        /** A heading over a group of recipes. */
        HEADING,
        /** A table or list of measures. */
        MEASURES,
        /** Advice, history or story. */
        ANECDOTE,
        /** An advertisement. */
        ADVERTISEMENT,
        /** A note by author, editor or transcriber. */
        NOTE,
        /** Anything else. */
        OTHER
    }
}
