package org.stillroom.model.source;

import java.util.Optional;
import org.stillroom.model.date.UncertainDate;

/**
 * When, where and for whose work words were written.
 *
 * @param place where, if it is known
 * @param date when, if it is known
 * @param trade for whose work, if it is known
 * @param language language tag by BCP 47, if it is known
 */
public record Circumstances(
        Optional<Place> place,
        Optional<UncertainDate> date,
        Optional<Trade> trade,
        Optional<String> language) {

    /** Circumstances of which nothing is known. */
    public static final Circumstances UNKNOWN =
            new Circumstances(
                    Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** Returns these with what is missing taken from others. */
    public Circumstances orElse(Circumstances others) {
        return new Circumstances(
                place.or(others::place),
                date.or(others::date),
                trade.or(others::trade),
                language.or(others::language));
    }
}
