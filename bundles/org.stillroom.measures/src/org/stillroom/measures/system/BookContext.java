package org.stillroom.measures.system;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.stillroom.measures.knowledge.Authority;

/**
 * What a book tells about its own measures, and what the user decided about them.
 *
 * @param words canonical words of measure that occur in the book
 * @param ownTable statements of the table of measures that the book itself prints
 * @param overrides the user's decisions
 */
public record BookContext(
        Set<String> words, List<Authority> ownTable, List<SystemOverride> overrides) {

    /** A book of which nothing is known. */
    public static final BookContext NONE = new BookContext(Set.of(), List.of(), List.of());

    /** Keeps the parts unchangeable. */
    public BookContext {
        words = Set.copyOf(words);
        ownTable = List.copyOf(ownTable);
        overrides = List.copyOf(overrides);
    }

    /** Returns a context with only the words that occur in the book. */
    public static BookContext ofWords(Set<String> words) {
        return new BookContext(words, List.of(), List.of());
    }

    /** Returns the narrowest decision. */
    public Optional<SystemOverride> override() {
        return overrides.stream().max(Comparator.comparing(SystemOverride::level));
    }
}
