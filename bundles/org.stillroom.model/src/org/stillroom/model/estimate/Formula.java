package org.stillroom.model.estimate;

import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The formula behind an estimate. */
sealed interface Formula {

    /** Returns the value where each unknown has the value that the function gives it. */
    double value(ToDoubleFunction<Origin> draw);

    /** Returns the values of many draws at once, given the draws of each unknown. */
    double[] values(Function<Origin, double[]> draws, int count);

    /**
     * Returns a lower and an upper limit by interval arithmetic (IEEE 1788 basic operations).
     *
     * @param box the limits of each unknown
     */
    double[] interval(Function<Origin, double[]> box);

    /** Returns limits of the slope against one unknown, anywhere in a box. */
    double[] slope(Origin origin, Function<Origin, double[]> box);

    /** Returns how it depends on one unknown when all others are held. */
    Degree degree(Origin origin);

    /** How a formula depends on one unknown. */
    enum Degree {
        /** Not at all. */
        NONE,
        /** As a straight line. */
        LINE,
        /** As a quotient of two straight lines, which has no peak between the ends. */
        FRACTION,
        /** In another way. */
        OTHER;

        boolean isNone() {
            return this == NONE;
        }
    }

    /** Adds the unknowns to a map; refuses two different unknowns of one name. */
    void collect(Map<String, Origin> origins);

    /** A number that is known. */
    record Constant(double number) implements Formula {
        @Override
        public double value(ToDoubleFunction<Origin> draw) {
            return number;
        }

        @Override
        public double[] values(Function<Origin, double[]> draws, int count) {
            double[] all = new double[count];
            Arrays.fill(all, number);
            return all;
        }

        @Override
        public double[] interval(Function<Origin, double[]> box) {
            return new double[] {number, number};
        }

        @Override
        public double[] slope(Origin origin, Function<Origin, double[]> box) {
            return new double[] {0, 0};
        }

        @Override
        public Degree degree(Origin origin) {
            return Degree.NONE;
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
        public double[] values(Function<Origin, double[]> draws, int count) {
            return draws.apply(origin).clone();
        }

        @Override
        public double[] interval(Function<Origin, double[]> box) {
            return box.apply(origin);
        }

        @Override
        public double[] slope(Origin other, Function<Origin, double[]> box) {
            double one = origin.equals(other) ? 1 : 0;
            return new double[] {one, one};
        }

        @Override
        public Degree degree(Origin other) {
            return origin.equals(other) ? Degree.LINE : Degree.NONE;
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
        public double[] values(Function<Origin, double[]> draws, int count) {
            double[] x = a.values(draws, count);
            double[] y = b.values(draws, count);
            for (int i = 0; i < count; i++) {
                x[i] += y[i];
            }
            return x;
        }

        @Override
        public double[] interval(Function<Origin, double[]> box) {
            return Intervals.plus(a.interval(box), b.interval(box));
        }

        @Override
        public double[] slope(Origin origin, Function<Origin, double[]> box) {
            return Intervals.plus(a.slope(origin, box), b.slope(origin, box));
        }

        @Override
        public Degree degree(Origin origin) {
            Degree x = a.degree(origin);
            Degree y = b.degree(origin);
            if (x.isNone() || y.isNone()) {
                return x.isNone() ? y : x;
            }
            return x == Degree.LINE && y == Degree.LINE ? Degree.LINE : Degree.OTHER;
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
        public double[] values(Function<Origin, double[]> draws, int count) {
            double[] x = a.values(draws, count);
            double[] y = b.values(draws, count);
            for (int i = 0; i < count; i++) {
                x[i] *= y[i];
            }
            return x;
        }

        @Override
        public double[] interval(Function<Origin, double[]> box) {
            return Intervals.times(a.interval(box), b.interval(box));
        }

        @Override
        public double[] slope(Origin origin, Function<Origin, double[]> box) {
            return Intervals.plus(
                    Intervals.times(a.slope(origin, box), b.interval(box)),
                    Intervals.times(a.interval(box), b.slope(origin, box)));
        }

        @Override
        public Degree degree(Origin origin) {
            Degree x = a.degree(origin);
            Degree y = b.degree(origin);
            if (x.isNone() || y.isNone()) {
                return x.isNone() ? y : x;
            }
            return Degree.OTHER;
        }

        @Override
        public void collect(Map<String, Origin> origins) {
            a.collect(origins);
            b.collect(origins);
        }
    }

    /** The quotient of two formulas. */
    record Quotient(Formula a, Formula b) implements Formula {
        @Override
        public double value(ToDoubleFunction<Origin> draw) {
            return a.value(draw) / b.value(draw);
        }

        @Override
        public double[] values(Function<Origin, double[]> draws, int count) {
            double[] x = a.values(draws, count);
            double[] y = b.values(draws, count);
            for (int i = 0; i < count; i++) {
                x[i] /= y[i];
            }
            return x;
        }

        @Override
        public double[] interval(Function<Origin, double[]> box) {
            return Intervals.over(a.interval(box), b.interval(box));
        }

        /** The slope of a / b is (a′ − (a / b) b′) / b. */
        @Override
        public double[] slope(Origin origin, Function<Origin, double[]> box) {
            double[] y = b.interval(box);
            double[] fall = Intervals.times(interval(box), b.slope(origin, box));
            double[] top = Intervals.plus(a.slope(origin, box), new double[] {-fall[1], -fall[0]});
            return Intervals.over(top, y);
        }

        @Override
        public Degree degree(Origin origin) {
            Degree x = a.degree(origin);
            Degree y = b.degree(origin);
            if (y.isNone()) {
                return x;
            }
            boolean lines = y == Degree.LINE && (x.isNone() || x == Degree.LINE);
            boolean inverse = x.isNone() && y == Degree.FRACTION;
            return lines || inverse ? Degree.FRACTION : Degree.OTHER;
        }

        @Override
        public void collect(Map<String, Origin> origins) {
            a.collect(origins);
            b.collect(origins);
        }
    }
}
