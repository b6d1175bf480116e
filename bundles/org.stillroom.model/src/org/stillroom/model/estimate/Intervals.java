package org.stillroom.model.estimate;

/** Basic operations of interval arithmetic (IEEE Std 1788-2015), without directed rounding. */
final class Intervals {

    private Intervals() {}

    static double[] plus(double[] x, double[] y) {
        return new double[] {x[0] + y[0], x[1] + y[1]};
    }

    static double[] times(double[] x, double[] y) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double p : x) {
            for (double q : y) {
                double product = p == 0 || q == 0 ? 0 : p * q;
                low = Math.min(low, product);
                high = Math.max(high, product);
            }
        }
        return new double[] {low, high};
    }

    static double[] over(double[] x, double[] y) {
        if (y[0] <= 0 && y[1] >= 0) {
            return new double[] {Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY};
        }
        return times(x, new double[] {1 / y[1], 1 / y[0]});
    }
}
