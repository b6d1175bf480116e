package org.stillroom.search;

import java.util.List;

/**
 * How the hits of a search are spread over the values of one field.
 *
 * @param field the field's name in a query
 * @param counts values with their numbers of hits, most first, then by name
 */
public record Facet(String field, List<Count> counts) {

    /**
     * A value with its number of hits.
     *
     * @param value the value
     * @param hits how many versions have it
     */
    public record Count(String value, int hits) {}

    /** Keeps the counts as an unchangeable list. */
    public Facet {
        counts = List.copyOf(counts);
    }
}
