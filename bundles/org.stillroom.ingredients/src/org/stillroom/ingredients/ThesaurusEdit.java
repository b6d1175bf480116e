package org.stillroom.ingredients;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * A user’s decision about senses, kept as data and replayed over whatever the program ships.
 *
 * <p>No edit but {@link RemoveLabel} takes a name away: merging moves the names of one sense to another, splitting moves some to
 * a new one. To undo an edit, replay the others without it.
 */
public sealed interface ThesaurusEdit {

    /** The kind of the assertions that carry edits in a library’s journal. */
    String ASSERTION_KIND = "thesaurus";

    /**
     * A new sense.
     *
     * @param id its slug, not in use
     * @param label its preferred label
     * @param kind what sort of thing it is
     * @param broader ids of broader senses
     * @param scope what it is, or empty
     */
    record AddSense(
            String id, String label, IngredientKind kind, List<String> broader, String scope)
            implements ThesaurusEdit {

        /** Keeps the list unchangeable. */
        public AddSense {
            broader = List.copyOf(broader);
        }
    }

    /**
     * A further name of a sense.
     *
     * @param sense id of the sense
     * @param text the name
     * @param kind alternative or hidden
     * @param language language tag
     */
    record AddLabel(String sense, String text, Label.Kind kind, String language)
            implements ThesaurusEdit {}

    /**
     * A name does not belong to a sense after all; taking the decision back brings it back.
     *
     * @param sense id of the sense
     * @param text the name, not the preferred one
     */
    record RemoveLabel(String sense, String text) implements ThesaurusEdit {}

    /**
     * Two senses are one.
     *
     * @param from id of the sense that ceases; it goes on to stand for the other
     * @param into id of the sense that takes its names
     */
    record Merge(String from, String into) implements ThesaurusEdit {}

    /**
     * One sense is two.
     *
     * @param sense id of the sense that is parted
     * @param id slug of the new sense, not in use
     * @param label preferred label of the new sense
     * @param labels names that go over to the new sense
     */
    record Split(String sense, String id, String label, List<String> labels)
            implements ThesaurusEdit {

        /** Keeps the list unchangeable. */
        public Split {
            labels = List.copyOf(labels);
        }
    }

    /** Returns the edit as named values for the journal. */
    default SortedMap<String, String> toValues() {
        return EditValues.of(this);
    }

    /** Returns the edit in words. */
    default String toText() {
        return switch (this) {
            case AddSense e -> "add the sense " + e.id() + " (" + e.label() + ")";
            case AddLabel e -> "add the name “" + e.text() + "” to " + e.sense();
            case RemoveLabel e -> "take the name “" + e.text() + "” from " + e.sense();
            case Merge e -> "merge " + e.from() + " into " + e.into();
            case Split e -> "split " + e.id() + " (" + e.label() + ") off " + e.sense();
        };
    }

    /** Returns the edit of named values, or nothing where they state none. */
    static Optional<ThesaurusEdit> fromValues(SortedMap<String, String> values) {
        return EditValues.read(values);
    }
}
