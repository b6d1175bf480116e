package org.stillroom.model.source;

import java.util.Optional;

/**
 * A town, region or country, as a source names it.
 *
 * @param name the words (“Saltmarch”), never blank
 * @param country two-letter code by ISO 3166-1, upper case, where it was given
 */
public record Place(String name, Optional<String> country) {

    /** Returns the place of words such as “London”, “Saltmarch, GB”, “US”. */
    public static Place of(String words) {
        String trimmed = words.strip();
        int comma = trimmed.lastIndexOf(',');
        String last = trimmed.substring(comma + 1).strip();
        boolean code = last.length() == 2 && last.chars().allMatch(c -> c >= 'A' && c <= 'Z');
        if (!code) {
            return new Place(trimmed, Optional.empty());
        }
        String name = comma < 0 ? trimmed : trimmed.substring(0, comma).strip();
        return new Place(name, Optional.of(last));
    }

    /** Returns the place as {@link #of(String)} reads it. */
    public String toText() {
        return country.filter(c -> !c.equals(name)).map(c -> name + ", " + c).orElse(name);
    }
}
