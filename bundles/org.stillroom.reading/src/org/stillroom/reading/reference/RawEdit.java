package org.stillroom.reading.reference;

/**
 * A change that the words ask for, before it meets the recipe that it changes.
 *
 * @param op what is done
 * @param from the ingredient concerned, or empty
 * @param to what takes its place, is added, or says how much; or empty
 * @param start where the words start, by folded characters of the body
 * @param end where they end
 * @param toStart where {@code to} starts
 */
record RawEdit(Op op, String from, String to, int start, int end, int toStart) {

    /** What a change does. */
    enum Op {
        REPLACE,
        ADD,
        REMOVE,
        AMOUNT,
        /** Replaces what is of its kind in the other recipe, or is added where nothing is. */
        WITH
    }
}
