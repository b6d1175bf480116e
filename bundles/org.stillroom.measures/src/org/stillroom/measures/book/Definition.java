package org.stillroom.measures.book;

import java.util.List;

/**
 * A measure of a book in terms of another that is known elsewhere.
 *
 * @param name the measure, with its size where one is named
 * @param base canonical word of the measure that it is so many of
 * @param ratio how many of the base one of it is
 * @param said the statements that it follows from, the one about the measure itself first
 */
public record Definition(String name, String base, Ratio ratio, List<Equation> said) {

    /** Keeps the statements unchangeable. */
    public Definition {
        said = List.copyOf(said);
    }
}
