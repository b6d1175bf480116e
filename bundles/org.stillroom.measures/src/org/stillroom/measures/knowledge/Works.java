package org.stillroom.measures.knowledge;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.stillroom.measures.rows.Row;
import org.stillroom.measures.rows.Rows;
import org.stillroom.model.explain.Citation;

/** The published works that our statements come from, by their key. */
public final class Works {

    /**
     * A published work.
     *
     * @param key short key
     * @param year year of the edition read
     * @param shortName author or short title and year, for a table or a sentence
     * @param title author, title and edition in words
     */
    public record Work(String key, OptionalInt year, String shortName, String title) {}

    private final Map<String, Work> byKey = new HashMap<>();

    private Works() {}

    /** Returns the works that ship with this bundle. */
    public static Works shipped() {
        Works works = new Works();
        for (Row row : Rows.shipped("sources.csv")) {
            works.byKey.put(
                    row.get("key"),
                    new Work(row.get("key"), row.year("year"), row.get("short"), row.get("work")));
        }
        return works;
    }

    /** Returns a work. */
    public Optional<Work> find(String key) {
        return Optional.ofNullable(byKey.get(key));
    }

    /** Returns a citation of a work; words that are no key are taken as the work itself. */
    public Citation cite(String key, Citation.Status status) {
        return find(key)
                .map(w -> new Citation(key, w.title(), status))
                .orElseGet(() -> new Citation("", key, status));
    }

    /** Returns all keys. */
    public Collection<String> keys() {
        return Map.copyOf(byKey).keySet();
    }

    /** Returns the status of a letter: P, S, D, M, X or U; secondary for anything else. */
    public static Citation.Status status(String letter) {
        return switch (letter) {
            case "P" -> Citation.Status.PRIMARY;
            case "D" -> Citation.Status.DERIVED;
            case "M" -> Citation.Status.MEMORY;
            case "X" -> Citation.Status.DISPUTED;
            case "U" -> Citation.Status.USER;
            default -> Citation.Status.SECONDARY;
        };
    }
}
