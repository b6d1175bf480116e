package org.stillroom.measures.system;

import java.util.Locale;
import java.util.Optional;
import org.stillroom.measures.place.Gazetteer;
import org.stillroom.measures.place.Locality;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;
import org.stillroom.model.source.Trade;

/**
 * Circumstances with the place looked up and the date as whole years.
 *
 * @param place the place, where the gazetteer knows it or its country
 * @param years the years, where a date is given
 * @param trade the trade, where it is given
 * @param language primary language subtag in lower case, where it is given
 * @param text the circumstances in words
 */
public record Where(
        Optional<Locality> place,
        Optional<YearRange> years,
        Optional<Trade> trade,
        Optional<String> language,
        String text) {

    /** Returns the circumstances looked up in a gazetteer. */
    public static Where of(Circumstances circumstances, Gazetteer gazetteer) {
        Optional<Locality> place = circumstances.place().flatMap(gazetteer::find);
        Optional<YearRange> years = circumstances.date().flatMap(YearRange::of);
        String where =
                place.map(Locality::name)
                        .or(() -> circumstances.place().map(Place::toText))
                        .orElse("place unknown");
        String when = circumstances.date().map(d -> d.toText()).orElse("date unknown");
        String trade = circumstances.trade().map(t -> ", " + t.word()).orElse("");
        return new Where(
                place,
                years,
                circumstances.trade(),
                circumstances.language().map(Where::primary),
                where + ", " + when + trade);
    }

    private static String primary(String tag) {
        int dash = tag.indexOf('-');
        return (dash < 0 ? tag : tag.substring(0, dash)).toLowerCase(Locale.ROOT);
    }

    /** Tells whether neither place nor date is missing. */
    public boolean isKnown() {
        return place.isPresent() && years.isPresent();
    }
}
