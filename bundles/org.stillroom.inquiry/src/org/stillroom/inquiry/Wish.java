package org.stillroom.inquiry;

import java.util.Collections;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a user wants to decide, in words, before it is looked at.
 *
 * @param kind {@code system}, {@code sense}, {@code line}, {@code cut} or {@code drink}
 * @param source id of the source that it is about, if it is about one
 * @param words words of the source that it is about, as printed
 * @param line line of the source on which the words stand, from 1; alone it means the whole line
 * @param values what is decided, by name
 */
public record Wish(
        String kind,
        Optional<String> source,
        Optional<String> words,
        OptionalInt line,
        SortedMap<String, String> values) {

    /** Keeps the values unchangeable. */
    public Wish {
        values = Collections.unmodifiableSortedMap(new TreeMap<>(values));
    }
}
