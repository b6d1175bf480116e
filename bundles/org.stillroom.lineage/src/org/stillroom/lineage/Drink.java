package org.stillroom.lineage;

import java.util.List;
import org.stillroom.model.spec.Version;

/**
 * The thing that several witnesses describe.
 *
 * @param id stable identifier, the same after every opening of the same library
 * @param name the name that most versions bear, the earliest where two are equal
 * @param names every name that versions bear, by first appearance
 * @param versions its versions, earliest first, undated ones last
 */
public record Drink(String id, String name, List<String> names, List<Version> versions) {

    /** Keeps the lists unchangeable. */
    public Drink {
        names = List.copyOf(names);
        versions = List.copyOf(versions);
    }
}
