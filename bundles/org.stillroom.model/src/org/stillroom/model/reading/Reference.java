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

        /**
         * Another amount of the same ingredient.
         *
         * @param ingredient its name, or {@link #ALL} where every amount changes
         * @param words the change as worded (“half the quantity”, “two dashes”)
         * @param line the line as it becomes; empty where the words do not say how much, or where
         *     every line changes
         */
        record Change(String ingredient, String words, Optional<ReadingLine> line) implements Edit {

            /** Stands for every ingredient of the recipe. */
            public static final String ALL = "all";
        }
    }
}
