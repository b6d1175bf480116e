package org.stillroom.ingredients;

import java.util.Optional;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;

/** Circumstances for tests. */
final class Where {

    private Where() {}

    static Circumstances of(String date, String place) {
        return new Circumstances(
                place.isEmpty() ? Optional.empty() : Optional.of(Place.of(place)),
                UncertainDate.parse(date),
                Optional.empty(),
                Optional.empty());
    }
}
