package org.stillroom.model.assertion;

import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.stillroom.model.text.Anchor;

/**
 * Something that a person decided about the library, kept beside the words and never in them.
 *
 * @param id unique and ordered by time
 * @param at when, ISO 8601 in UTC
 * @param by who, as the user calls himself
 * @param kind what sort of decision, a word such as {@code line}, {@code cut}, {@code drink}
 * @param source id of the source that it is about, or empty
 * @param anchor the words that it is about, if it is about words
 * @param values what was decided, by name
 * @param replaces id of the decision that this one takes the place of or takes back
 */
public record Assertion(
        String id,
        String at,
        String by,
        String kind,
        String source,
        Optional<Anchor> anchor,
        SortedMap<String, String> values,
        Optional<String> replaces) {

    /** The kind that takes another decision back. */
    public static final String TAKEN_BACK = "taken-back";

    /** Keeps the values in a map of its own. */
    public Assertion {
        values = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(values));
    }

    /** Returns a value by name. */
    public Optional<String> value(String name) {
        return Optional.ofNullable(((Map<String, String>) values).get(name));
    }
}
