package org.stillroom.inquiry;

import java.util.List;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.measures.MeasureTable;
import org.stillroom.model.explain.Problem;
import org.stillroom.reading.Reader;

/**
 * What is known of measures and ingredients, and the reader that goes by it.
 *
 * @param measures words of measure and their authorities
 * @param thesaurus ingredients and their senses
 * @param reader reads books into recipes
 * @param problems rows of the user's own knowledge that were left out
 * @param digest changes whenever what is known changes
 */
public record Knowledge(
        MeasureTable measures,
        Thesaurus thesaurus,
        Reader reader,
        List<Problem> problems,
        String digest) {

    /** Keeps the problems as an unchangeable list. */
    public Knowledge {
        problems = List.copyOf(problems);
    }
}
