package org.stillroom.report.figure;

import java.util.List;
import java.util.OptionalDouble;
import org.stillroom.lineage.Descent;
import org.stillroom.model.spec.Version;

/**
 * Stretches of time that the versions of a figure are sorted into, so that it stays narrow enough.
 *
 * @param first first year of the first stretch
 * @param years length of each stretch
 * @param undated number of the stretch for versions without a date
 */
record Bands(int first, int years, int undated) {

    private static final int MOST = 8;
    private static final int[] LENGTHS = {1, 2, 5, 10, 20, 25, 50, 100, 200, 500};

    static Bands of(List<Descent> descents) {
        List<Double> known =
                descents.stream()
                        .map(d -> year(d.version()))
                        .filter(OptionalDouble::isPresent)
                        .map(OptionalDouble::getAsDouble)
                        .toList();
        if (known.isEmpty()) {
            return new Bands(0, 1, 0);
        }
        int low = (int) Math.floor(known.stream().min(Double::compare).orElseThrow());
        int high = (int) Math.floor(known.stream().max(Double::compare).orElseThrow());
        for (int length : LENGTHS) {
            int start = Math.floorDiv(low, length) * length;
            int last = (high - start) / length;
            if (last < MOST) {
                return new Bands(start, length, last + 1);
            }
        }
        return new Bands(low, high - low + 1, 1);
    }

    private static OptionalDouble year(Version version) {
        double year =
                version.source().bibliography().date().map(d -> d.middleYear()).orElse(Double.NaN);
        return Double.isNaN(year) ? OptionalDouble.empty() : OptionalDouble.of(year);
    }

    int of(Version version) {
        OptionalDouble year = year(version);
        return year.isEmpty() ? undated : (int) ((Math.floor(year.getAsDouble()) - first) / years);
    }

    /** Returns a stretch in words: “1800–1824”, “1862”, “undated”. */
    String label(int band) {
        int from = first + band * years;
        return band == undated
                ? "undated"
                : years == 1 ? Integer.toString(from) : from + "–" + (from + years - 1);
    }
}
