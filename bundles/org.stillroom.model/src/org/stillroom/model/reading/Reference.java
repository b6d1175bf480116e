package org.stillroom.model.reading;

import java.util.List;
import java.util.Optional;
import org.stillroom.model.text.Span;

/**
 * A recipe’s words that send the reader to another recipe.
 *
 * @param words the words as printed
 * @param span where they stand
 * @param target what is named: a title, a number, or empty for “the foregoing”
 * @param chain ids of the witnesses that it leads to, nearest first; empty where it is unresolved
 * @param edits what is changed on the way
 * @param confidence how sure the resolution is
 */
public record Reference(
        String words,
        Span span,
        Optional<String> target,
        List<String> chain,
        List<Edit> edits,
        Confidence confidence) {

    /** Keeps the lists unchangeable. */
    public Reference {
        chain = List.copyOf(chain);
        edits = List.copyOf(edits);
    }

    /** Tells whether it leads to a recipe. */
    public boolean isResolved() {
        return !chain.isEmpty();
    }

    /** One change to the recipe that is referred to. */
    public sealed interface Edit {

        /** Another ingredient in the place of one. */
        record Replace(String from, String to) implements Edit {}

        /** A further line. */
        record Add(ReadingLine line) implements Edit {}

        /** A line left out. */
        record Remove(String ingredient) implements Edit {}
    }
}
