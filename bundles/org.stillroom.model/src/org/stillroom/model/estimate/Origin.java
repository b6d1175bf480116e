package org.stillroom.model.estimate;

/**
 * A named unknown, such as what a wineglass held in one book.
 *
 * <p>Two estimates that rest on origins of the same name share the unknown: they rise and fall
 * together. Two origins of one name must be equal.
 *
 * @param name what is unknown, unique within what is compared (“wineglass, Wickham 1862”)
 * @param low the least that is reasonable
 * @param likely the most likely value, between low and high
 * @param high the most that is reasonable
 * @param shape how the values between are spread
 */
public record Origin(String name, double low, double likely, double high, Shape shape)
        implements Comparable<Origin> {

    /** How the values of an unknown are spread between its ends. */
    public enum Shape {
        /** Beta distribution by the PERT rule: mean (low + 4 likely + high) / 6. */
        PERT,
        /** Straight lines from the ends to the likely value. */
        TRIANGULAR,
        /** Every value between the ends equally likely. */
        RECTANGULAR
    }

    /** Refuses values that are out of order or not finite. */
    public Origin {
        if (!(low <= likely && likely <= high) || !Double.isFinite(low + high)) {
            throw new IllegalArgumentException(
                    name
                            + ": low ≤ likely ≤ high is needed, not "
                            + low
                            + ", "
                            + likely
                            + ", "
                            + high);
        }
    }

    /** Returns an unknown of PERT shape. */
    public static Origin pert(String name, double low, double likely, double high) {
        return new Origin(name, low, likely, high, Shape.PERT);
    }

    /**
     * Returns the mean; formulas of the three shapes after JCGM 100:2008 4.3 and the PERT rule
     * (Malcolm et al., Operations Research 7, 1959).
     */
    public double mean() {
        return switch (shape) {
            case PERT -> (low + 4 * likely + high) / 6;
            case TRIANGULAR -> (low + likely + high) / 3;
            case RECTANGULAR -> (low + high) / 2;
        };
    }

    /** Returns the standard uncertainty by the same sources as {@link #mean()}. */
    public double uncertainty() {
        return switch (shape) {
            case PERT -> Math.sqrt((mean() - low) * (high - mean()) / 7);
            case TRIANGULAR ->
                    Math.sqrt(
                            (low * low
                                            + likely * likely
                                            + high * high
                                            - low * likely
                                            - low * high
                                            - likely * high)
                                    / 18);
            case RECTANGULAR -> (high - low) / Math.sqrt(12);
        };
    }

    @Override
    public int compareTo(Origin other) {
        return name.compareTo(other.name);
    }
}
