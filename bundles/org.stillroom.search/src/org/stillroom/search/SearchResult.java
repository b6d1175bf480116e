package org.stillroom.search;

import java.util.List;

/**
 * What a search found.
 *
 * @param words the query said back in words, hidden expansions included
 * @param total how many versions fit
 * @param hits the first of them, best first
 * @param facets how all of them are spread
 */
public record SearchResult(String words, int total, List<SearchHit> hits, List<Facet> facets) {

    /** Keeps the lists unchangeable. */
    public SearchResult {
        hits = List.copyOf(hits);
        facets = List.copyOf(facets);
    }
}
