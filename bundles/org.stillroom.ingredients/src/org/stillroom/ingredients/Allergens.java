package org.stillroom.ingredients;

import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What is known of the allergens in a thing.
 *
 * <p>Where a thing was not assessed nothing may be concluded: unknown is never “free from”.
 *
 * @param contains what it holds
 * @param possible what some makings of it hold
 * @param assessed whether somebody has stated that the two lists are complete
 */
public record Allergens(
        SortedSet<Allergen> contains, SortedSet<Allergen> possible, boolean assessed) {

    /** Nothing is known. */
    public static final Allergens UNKNOWN = new Allergens(new TreeSet<>(), new TreeSet<>(), false);

    /** Keeps the sets unchangeable. */
    public Allergens {
        contains = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(contains));
        SortedSet<Allergen> rest = new TreeSet<>(possible);
        rest.removeAll(contains);
        possible = java.util.Collections.unmodifiableSortedSet(rest);
    }

    /** Returns what two things together hold; assessed only where both are. */
    public Allergens and(Allergens other) {
        SortedSet<Allergen> both = new TreeSet<>(contains);
        both.addAll(other.contains);
        SortedSet<Allergen> perhaps = new TreeSet<>(possible);
        perhaps.addAll(other.possible);
        return new Allergens(both, perhaps, assessed && other.assessed);
    }
}
