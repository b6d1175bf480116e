package org.stillroom.workbench.widgets;

import java.util.Locale;
import org.stillroom.model.estimate.Estimate;

/** Writes figures for reading: as many digits as they deserve. */
public final class Numbers {
    private Numbers() {}

    /** Returns an estimate as its likely value and, where it is not exact, its limits. */
    public static String range(Estimate estimate) {
        String likely = plain(estimate.likely());
        String low = plain(estimate.low());
        String high = plain(estimate.high());
        boolean narrow = low.equals(likely) && high.equals(likely);
        return narrow ? likely : likely + " (" + low + "–" + high + ")";
    }

    /** Returns a figure with one decimal below 10, and none from there on. */
    public static String plain(double value) {
        double size = Math.abs(value);
        if (size >= 9.95 || value == Math.rint(value)) {
            return String.format(Locale.ROOT, "%d", Math.round(value));
        }
        return String.format(Locale.ROOT, size < 0.095 ? "%.2f" : "%.1f", value);
    }

    /** Returns a share, 0 to 1, in per cent. */
    public static String percent(double share) {
        return plain(100 * share) + " %";
    }
}
