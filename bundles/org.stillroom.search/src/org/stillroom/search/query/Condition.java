package org.stillroom.search.query;

import java.util.List;

/** What a query asks of a version. */
public sealed interface Condition {

    /**
     * Words that must stand in a field.
     *
     * @param field the field, {@code words} where none is named
     * @param words the words
     * @param phrase whether they must stand side by side
     */
    record Words(String field, String words, boolean phrase) implements Condition {}

    /**
     * A date that the version's must not lie outside.
     *
     * @param from first year
     * @param to last year
     * @param said the date as it was typed
     */
    record Years(int from, int to, String said) implements Condition {}

    /** A condition that must not hold. */
    record Not(Condition condition) implements Condition {}

    /** Conditions of which one must hold. */
    record Any(List<Condition> conditions) implements Condition {

        /** Keeps the conditions as an unchangeable list. */
        public Any {
            conditions = List.copyOf(conditions);
        }
    }

    /** Conditions that must all hold. */
    record All(List<Condition> conditions) implements Condition {

        /** Keeps the conditions as an unchangeable list. */
        public All {
            conditions = List.copyOf(conditions);
        }
    }
}
