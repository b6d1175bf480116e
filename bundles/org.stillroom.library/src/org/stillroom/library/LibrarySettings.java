package org.stillroom.library;

import java.util.Optional;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;
import org.stillroom.model.source.Trade;

/**
 * What a library's {@code stillroom.json} says of it.
 *
 * @param title the library's name for its user
 * @param defaults what holds for a source that says nothing itself
 * @param measures the system of measures of every source, where the user decided so
 */
public record LibrarySettings(String title, Circumstances defaults, Optional<String> measures) {

    /** The format of a library's folder that this program writes and reads. */
    public static final int FORMAT = 1;

    static LibrarySettings of(
            String title,
            Optional<String> place,
            Optional<String> trade,
            Optional<String> language,
            Optional<String> measures) {
        return new LibrarySettings(
                title,
                new Circumstances(
                        place.map(Place::of), Optional.empty(), trade.flatMap(Trade::of), language),
                measures);
    }
}
