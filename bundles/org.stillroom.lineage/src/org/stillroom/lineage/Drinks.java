package org.stillroom.lineage;

import java.util.List;
import java.util.Optional;

/**
 * All drinks of a library.
 *
 * @param drinks every drink, by name
 */
public record Drinks(List<Drink> drinks) {

    /** Keeps the drinks as an unchangeable list. */
    public Drinks {
        drinks = List.copyOf(drinks);
    }

    /** Returns the drink of an identifier. */
    public Optional<Drink> byId(String id) {
        return drinks.stream().filter(d -> d.id().equals(id)).findFirst();
    }

    /** Returns the drink that a version belongs to. */
    public Optional<Drink> of(String versionId) {
        return drinks.stream()
                .filter(d -> d.versions().stream().anyMatch(v -> v.id().equals(versionId)))
                .findFirst();
    }
}
