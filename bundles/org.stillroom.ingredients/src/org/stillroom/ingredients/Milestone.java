package org.stillroom.ingredients;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.stillroom.model.explain.Citation;

/**
 * When something began or ended: an ingredient, a unit, a technique, a law.
 *
 * @param id slug (“imperial-measures”)
 * @param kind what sort of thing it is
 * @param subjects ids of senses, or folded words of a unit, technique or vessel
 * @param first first year, if there is one
 * @param last last year, if there is one
 * @param place country it holds for, or empty for everywhere
 * @param statement what happened, a sentence
 * @param source who says so
 */
public record Milestone(
        String id,
        Kind kind,
        List<String> subjects,
        OptionalInt first,
        OptionalInt last,
        String place,
        String statement,
        Citation source) {

    /** What sort of thing began or ended. */
    public enum Kind {
        /** Something to drink or to put into a drink. */
        INGREDIENT,
        /** A word of measure. */
        UNIT,
        /** A way of working, or a tool for it. */
        TECHNIQUE,
        /** A statute: for information, never an anachronism by itself. */
        LAW;

        /** Returns the kind of this word. */
        public static Optional<Kind> of(String word) {
            return Stream.of(values())
                    .filter(k -> k.name().equals(word.strip().toUpperCase(Locale.ROOT)))
                    .findFirst();
        }
    }

    /** Keeps the list unchangeable. */
    public Milestone {
        subjects = List.copyOf(subjects);
    }
}
