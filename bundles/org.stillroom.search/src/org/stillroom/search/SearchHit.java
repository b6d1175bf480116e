package org.stillroom.search;

import java.util.List;
import org.stillroom.model.date.Certainty;
import org.stillroom.model.text.Span;

/**
 * A version that a search found.
 *
 * @param version the version's id
 * @param source the source's id
 * @param title the recipe's title
 * @param score how well it fits; only the order means something
 * @param certainty whether it fits for certain, or possibly because its date is uncertain
 * @param marks printed places in the source that the query's words hit, in order
 */
public record SearchHit(
        String version,
        String source,
        String title,
        float score,
        Certainty certainty,
        List<Span> marks) {

    /** Keeps the marks as an unchangeable list. */
    public SearchHit {
        marks = List.copyOf(marks);
    }
}
