package org.stillroom.lineage;

import java.util.Comparator;
import org.stillroom.model.spec.Version;

/** The order that versions of a drink stand in: by date, then by source and place in it. */
public final class VersionOrder {

    /** Earliest first, undated ones last. */
    public static final Comparator<Version> BY_DATE =
            Comparator.comparingDouble(VersionOrder::year)
                    .thenComparing(v -> v.source().id())
                    .thenComparing(v -> v.witness().ordinal());

    private VersionOrder() {}

    private static double year(Version version) {
        double year =
                version.source().bibliography().date().map(d -> d.middleYear()).orElse(Double.NaN);
        return Double.isNaN(year) ? Double.MAX_VALUE : year;
    }
}
