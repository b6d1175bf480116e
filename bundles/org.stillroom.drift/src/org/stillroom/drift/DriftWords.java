package org.stillroom.drift;

import java.util.ArrayList;
import java.util.List;

/** Says what a drift analysis found, effect first. */
final class DriftWords {

    private DriftWords() {}

    /** Returns the sentences: trends, events, then what they rest on. */
    static List<String> of(
            int versions,
            int independent,
            List<Drift.Point> points,
            List<Drift.Trend> trends,
            List<Drift.Event> events,
            List<String> left) {
        List<String> words = new ArrayList<>();
        trends.stream()
                .filter(t -> t instanceof Drift.Trend.Tested)
                .map(Drift.Trend::words)
                .forEach(words::add);
        boolean none = trends.stream().allMatch(t -> t instanceof Drift.Trend.Refused);
        trends.stream()
                .filter(t -> t instanceof Drift.Trend.Refused)
                .map(t -> none ? refusal(t) : t.words())
                .distinct()
                .forEach(words::add);
        events.stream().map(Drift.Event::words).distinct().forEach(words::add);
        words.add(basis(versions, independent, points, left.size()));
        return words;
    }

    private static String refusal(Drift.Trend refused) {
        return refused.words().replace(" for " + refused.role(), "");
    }

    private static String basis(int versions, int independent, List<Drift.Point> points, int left) {
        long standing = points.stream().filter(Drift.Point::independent).count();
        String lines = independent == 1 ? " line of copies" : " independent lines of copies";
        String held =
                versions == 1 ? "1 version is held, in " : versions + " versions are held, in ";
        String compared =
                "; "
                        + points.size()
                        + " can be compared by amounts, "
                        + standing
                        + " of them independent";
        String aside =
                switch (left) {
                    case 0 -> "";
                    case 1 -> "; 1 is left out";
                    default -> "; " + left + " are left out";
                };
        return held + independent + lines + compared + aside + ".";
    }
}
