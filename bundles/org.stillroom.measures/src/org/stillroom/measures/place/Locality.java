package org.stillroom.measures.place;

import java.util.List;
import java.util.Optional;

/**
 * A place that the gazetteer knows, with what it lies in.
 *
 * @param name its usual name
 * @param kind town, region or country
 * @param codes codes of itself and of what it lies in, the narrowest first
 * @param country two-letter code by ISO 3166-1, if it is known
 */
public record Locality(String name, Kind kind, List<String> codes, Optional<String> country) {

    /** How wide a place is. */
    public enum Kind {
        /** A town or village. */
        TOWN,
        /** A county, state or larger part of a country. */
        REGION,
        /** A country. */
        COUNTRY
    }

    /** Keeps the codes unchangeable. */
    public Locality {
        codes = List.copyOf(codes);
    }

    /** Tells whether it is, or lies in, the place of a code. */
    public boolean isWithin(String code) {
        return codes.contains(code);
    }

    /** Returns the narrowest region or country that it lies in. */
    public Optional<String> region() {
        return codes.stream().findFirst();
    }
}
