package org.stillroom.measures.system;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.stillroom.measures.book.OwnTable;

/**
 * What a book tells about its own measures, and what the user decided about them.
 *
 * @param words canonical words of measure that occur in the book
 * @param ownTable the table of measures that the book itself prints
 * @param overrides the user's decisions
 */
public record BookContext(Set<String> words, OwnTable ownTable, List<SystemOverride> overrides) {

    /** A book of which nothing is known. */
    public static final BookContext NONE = new BookContext(Set.of(), OwnTable.NONE, List.of());

    /** Keeps the parts unchangeable. */
    public BookContext {
        words = Set.copyOf(words);
        overrides = List.copyOf(overrides);
    }

    /** Returns a context with only the words that occur in the book. */
    public static BookContext ofWords(Set<String> words) {
        return new BookContext(words, OwnTable.NONE, List.of());
    }

    /** Returns this context with further decisions of the user. */
    public BookContext with(List<SystemOverride> more) {
        List<SystemOverride> all = new java.util.ArrayList<>(overrides);
        all.addAll(more);
        return new BookContext(words, ownTable, all);
    }

    /** Returns the narrowest decision; of two alike the later one. */
    public Optional<SystemOverride> override() {
        return overrides.stream().reduce((a, b) -> b.level().compareTo(a.level()) >= 0 ? b : a);
    }
}
