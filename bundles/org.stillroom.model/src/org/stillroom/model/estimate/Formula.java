package org.stillroom.model.estimate;

import java.util.Map;
import java.util.function.ToDoubleFunction;

/** The formula behind an estimate. */
sealed interface Formula {

    /** Returns the value where each unknown has the value that the function gives it. */
    double value(ToDoubleFunction<Origin> draw);

    /** Returns a lower and an upper limit by interval arithmetic (IEEE 1788 basic operations). */
    double[] interval();

    /** Adds the unknowns to a map; refuses two different unknowns of one name. */
    void collect(Map<String, Origin> origins);

    /** A number that is known. */
    record Constant(double number) implements Formula {
        @Override
        public double value(ToDoubleFunction<Origin> draw) {
            return number;
        }

        @Override
        public double[] interval() {
            return new double[] {number, number};
        }

        @Override
        public void collect(Map<String, Origin> origins) {
            // a constant has no unknowns
        }
    }

    /** One unknown. */
    record Unknown(Origin origin) implements Formula {
        @Override
        public double value(ToDoubleFunction<Origin> draw) {
            return draw.applyAsDouble(origin);
        }

        @Override
        public double[] interval() {
            return new double[] {origin.low(), origin.high()};
        }

        @Override
        public void collect(Map<String, Origin> origins) {
            Origin known = origins.putIfAbsent(origin.name(), origin);
            if (known != null && !known.equals(origin)) {
                throw new IllegalArgumentException(
                        "Two unknowns are both called "
                                + origin.name()
                                + ": "
                                + known
                                + " and "
                                + origin);
            }
        }
    }

    /** The sum of two formulas. */
    record Sum(Formula a, Formula b) implements Formula {
        @Override
        public double value(ToDoubleFunction<Origin> draw) {
            return a.value(draw) + b.value(draw);
        }

        @Override
        public double[] interval() {
            double[] x = a.interval();
            double[] y = b.interval();
            return new double[] {x[0] + y[0], x[1] + y[1]};
        }

        @Override
        public void collect(Map<String, Origin> origins) {
            a.collect(origins);
            b.collect(origins);
        }
    }

    /** The product of two formulas. */
    record Product(Formula a, Formula b) implements Formula {
        @Override
        public double value(ToDoubleFunction<Origin> draw) {
            return a.value(draw) * b.value(draw);
        }

        @Override
        public double[] interval() {
            return hull(a.interval(), b.interval());
        }

        @Override
        public void collect(Map<String, Origin> origins) {
            a.collect(origins);
            b.collect(origins);
        }

        static double[] hull(double[] x, double[] y) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (double p : x) {
                for (double q : y) {
                    low = Math.min(low, p * q);
                    high = Math.max(high, p * q);
                }
            }
            return new double[] {low, high};
        }
    }

    /** The quotient of two formulas. */
    record Quotient(Formula a, Formula b) implements Formula {
        @Override
        public double value(ToDoubleFunction<Origin> draw) {
            return a.value(draw) / b.value(draw);
        }

        @Override
        public double[] interval() {
            double[] y = b.interval();
            if (y[0] <= 0 && y[1] >= 0) {
                return new double[] {Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY};
            }
            return Product.hull(a.interval(), new double[] {1 / y[1], 1 / y[0]});
        }

        @Override
        public void collect(Map<String, Origin> origins) {
            a.collect(origins);
            b.collect(origins);
        }
    }
}
