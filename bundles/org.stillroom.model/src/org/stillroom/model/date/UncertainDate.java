package org.stillroom.model.date;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A date that may be uncertain, approximate or a stretch of time, in the Extended Date/Time Format.
 *
 * <p>Levels 0 and 1 of EDTF (ISO 8601-2:2019, annex A; Library of Congress specification of 4
 * February 2019) are read whole; of level 2 sets, lists, unspecified digits anywhere and
 * qualification of single components. Seasons have no months in the standard: a date that names a
 * season has the limits of its year.
 */
public final class UncertainDate {

    private final String edtf;
    private final Form form;
    private final Optional<LocalDate> earliest;
    private final Optional<LocalDate> latest;
    private final boolean uncertain;
    private final boolean approximate;

    UncertainDate(
            String edtf,
            Form form,
            Optional<LocalDate> earliest,
            Optional<LocalDate> latest,
            boolean uncertain,
            boolean approximate) {
        this.edtf = edtf;
        this.form = form;
        this.earliest = earliest;
        this.latest = latest;
        this.uncertain = uncertain;
        this.approximate = approximate;
    }

    /** What sort of expression a date is. */
    public enum Form {
        /** One date of any precision. */
        DATE,
        /** From one date to another. */
        INTERVAL,
        /** One of several dates, it is not known which. */
        ONE_OF,
        /** All of several dates. */
        ALL_OF
    }

    /**
     * Reads a date in EDTF.
     *
     * @return the date, or nothing where the words are not EDTF as described above
     */
    public static Optional<UncertainDate> parse(String edtf) {
        return EdtfParser.parse(edtf.strip());
    }

    /** Returns a year that is known. */
    public static UncertainDate of(int year) {
        String digits = String.format(java.util.Locale.ROOT, "%04d", year);
        return parse(digits).orElseThrow();
    }

    /** Returns a stretch of whole years. */
    public static UncertainDate between(int from, int to) {
        return parse(of(from).edtf + "/" + of(to).edtf).orElseThrow();
    }

    /** Returns what sort of expression it is. */
    public Form form() {
        return form;
    }

    /** Returns the first day that it may be, unless its beginning is open or unknown. */
    public Optional<LocalDate> earliest() {
        return earliest;
    }

    /** Returns the last day that it may be, unless its end is open or unknown. */
    public Optional<LocalDate> latest() {
        return latest;
    }

    /** Returns the first year that it may be. */
    public OptionalInt earliestYear() {
        return earliest.map(d -> OptionalInt.of(d.getYear())).orElseGet(OptionalInt::empty);
    }

    /** Returns the last year that it may be. */
    public OptionalInt latestYear() {
        return latest.map(d -> OptionalInt.of(d.getYear())).orElseGet(OptionalInt::empty);
    }

    /** Tells whether the source of the date is doubted ({@code ?} or {@code %}). */
    public boolean isUncertain() {
        return uncertain;
    }

    /** Tells whether the date is only near the truth ({@code ~} or {@code %}). */
    public boolean isApproximate() {
        return approximate;
    }

    /** Returns the middle of its limits in years; of a half-open one the end that is known. */
    public double middleYear() {
        if (earliest.isEmpty() && latest.isEmpty()) {
            return Double.NaN;
        }
        double low = earliest.or(() -> latest).map(UncertainDate::asYear).orElseThrow();
        double high = latest.or(() -> earliest).map(UncertainDate::asYear).orElseThrow();
        return (low + high) / 2;
    }

    private static double asYear(LocalDate day) {
        return day.getYear() + (day.getDayOfYear() - 1) / (double) day.lengthOfYear();
    }

    /**
     * Tells whether this date lies before another.
     *
     * <p>Certain where its last day comes before the other's first; possible where its first day
     * comes before the other's last. An end that is open or unknown makes nothing certain.
     */
    public Certainty before(UncertainDate other) {
        if (latest.isPresent()
                && other.earliest.isPresent()
                && latest.get().isBefore(other.earliest.get())) {
            return Certainty.CERTAIN;
        }
        boolean possible =
                earliest.isEmpty()
                        || other.latest.isEmpty()
                        || earliest.get().isBefore(other.latest.get());
        return possible ? Certainty.POSSIBLE : Certainty.NO;
    }

    /** Tells whether this date and another have a day in common. */
    public Certainty overlaps(UncertainDate other) {
        boolean apart =
                before(other) == Certainty.CERTAIN || other.before(this) == Certainty.CERTAIN;
        if (apart) {
            return Certainty.NO;
        }
        return equals(other) ? Certainty.CERTAIN : Certainty.POSSIBLE;
    }

    /** Returns the date in words for a reader: “1862”, “about 1862”, “the 1860s”, “before 1861”. */
    public String toText() {
        return DateWords.of(this);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof UncertainDate that && edtf.equals(that.edtf);
    }

    @Override
    public int hashCode() {
        return edtf.hashCode();
    }

    /** Returns the date in EDTF, as it was read. */
    @Override
    public String toString() {
        return edtf;
    }
}
