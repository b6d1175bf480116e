package org.stillroom.measures.system;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.stillroom.model.date.UncertainDate;

/**
 * A stretch of whole years.
 *
 * @param from first year
 * @param to last year, not before the first
 */
public record YearRange(int from, int to) {

    /** How many years a circa date is widened on either side; common practice, no source. */
    private static final int CIRCA = 5;

    /** How far back or on a half-open date is followed; common practice, no source. */
    private static final int OPEN = 40;

    /** Returns the years that a date may be, unless both its ends are open. */
    public static Optional<YearRange> of(UncertainDate date) {
        OptionalInt first = date.earliestYear();
        OptionalInt last = date.latestYear();
        if (first.isEmpty() && last.isEmpty()) {
            return Optional.empty();
        }
        int from = first.orElseGet(() -> last.getAsInt() - OPEN);
        int to = last.orElseGet(() -> first.getAsInt() + OPEN);
        int wider = date.isApproximate() || date.isUncertain() ? CIRCA : 0;
        return Optional.of(new YearRange(from - wider, Math.max(from, to) + wider));
    }

    /** Returns at most so many years spread evenly over the range. */
    public IntStream sample(int most) {
        int years = to - from + 1;
        int n = Math.min(years, most);
        return IntStream.range(0, n)
                .map(i -> n == 1 ? from : from + (int) Math.round(i * (to - from) / (n - 1.0)));
    }

    /** Returns how many years lie between this range and another, 0 where they touch. */
    public int distance(OptionalInt otherFrom, OptionalInt otherTo) {
        int low = otherFrom.orElse(Integer.MIN_VALUE / 4);
        int high = otherTo.orElse(Integer.MAX_VALUE / 4);
        return Math.max(0, Math.max(low - to, from - high));
    }

    /** Returns the range in words: “1862”, “1860–1869”. */
    public String toText() {
        return from == to ? Integer.toString(from) : from + "–" + to;
    }
}
