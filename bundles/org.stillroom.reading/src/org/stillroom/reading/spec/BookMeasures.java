package org.stillroom.reading.spec;

import java.util.List;
import org.stillroom.measures.book.OwnTable;
import org.stillroom.measures.system.SystemOverride;
import org.stillroom.model.text.Span;

/**
 * What is known of one book's measures beside its words.
 *
 * @param ownTable the table that it prints itself
 * @param overrides the user's decisions about the system of the whole book
 * @param local the user's decisions about recipes and lines
 */
public record BookMeasures(OwnTable ownTable, List<SystemOverride> overrides, List<Local> local) {

    /** Nothing is known. */
    public static final BookMeasures NONE = new BookMeasures(OwnTable.NONE, List.of(), List.of());

    /** Keeps the lists unchangeable. */
    public BookMeasures {
        overrides = List.copyOf(overrides);
        local = List.copyOf(local);
    }

    /**
     * A decision about a part of the book.
     *
     * @param span the words that it is about
     * @param override the decision, for a recipe or a line
     */
    public record Local(Span span, SystemOverride override) {}
}
