package org.stillroom.ingredients;

import java.util.List;
import java.util.OptionalInt;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.source.Trade;

/**
 * When, where and for whose work a name or a sense holds; what is not limited holds everywhere.
 *
 * @param from first year, if it is limited
 * @param to last year, if it is limited
 * @param places countries by ISO 3166-1, upper case; empty for every place
 * @param trades trades; empty for every trade
 */
public record Validity(OptionalInt from, OptionalInt to, List<String> places, List<Trade> trades) {

    /** Holds at every time and place. */
    public static final Validity ALWAYS =
            new Validity(OptionalInt.empty(), OptionalInt.empty(), List.of(), List.of());

    /** Keeps the lists unchangeable. */
    public Validity {
        places = List.copyOf(places);
        trades = List.copyOf(trades);
    }

    /** Tells whether it is limited in time. */
    public boolean isDated() {
        return from.isPresent() || to.isPresent();
    }

    /** Returns the years, as a reader would write them: “1870–1925”, “until 1885”, or nothing. */
    public String years() {
        if (from.isPresent() && to.isPresent()) {
            return from.getAsInt() + "–" + to.getAsInt();
        }
        if (from.isPresent()) {
            return "from " + from.getAsInt();
        }
        return to.isPresent() ? "until " + to.getAsInt() : "";
    }

    /**
     * Returns what share of a date lies within the years, from 0 to 1; 1 where there are no limits.
     *
     * <p>A date without a beginning or an end is taken as its known end alone.
     */
    public double shareOf(UncertainDate date) {
        if (!isDated() || (date.earliest().isEmpty() && date.latest().isEmpty())) {
            return 1;
        }
        int first = date.earliestYear().orElseGet(() -> date.latestYear().getAsInt());
        int last = date.latestYear().orElseGet(() -> date.earliestYear().getAsInt());
        int low = Math.max(first, from.orElse(Integer.MIN_VALUE));
        int high = Math.min(last, to.orElse(Integer.MAX_VALUE));
        return high < low ? 0 : (high - low + 1.0) / (last - first + 1.0);
    }
}
