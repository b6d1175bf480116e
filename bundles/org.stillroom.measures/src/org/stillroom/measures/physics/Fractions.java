package org.stillroom.measures.physics;

import java.util.function.DoubleUnaryOperator;

/** Checks of fractions, and roots of rising functions. */
final class Fractions {

    private static final int HALVINGS = 60;

    private Fractions() {}

    /** Refuses a number outside 0 to 1. */
    static void check(String what, double fraction) {
        if (!(fraction >= 0 && fraction <= 1)) {
            throw new IllegalArgumentException(
                    "A " + what + " lies between 0 and 1, not at " + fraction);
        }
    }

    /** Refuses a number below 0 or not finite. */
    static void checkAmount(String what, double amount) {
        if (!(amount >= 0) || Double.isInfinite(amount)) {
            throw new IllegalArgumentException("A " + what + " is 0 or more, not " + amount);
        }
    }

    /** Returns where a rising function reaches a value, by halving. */
    static double solve(DoubleUnaryOperator rising, double value, double low, double high) {
        double a = low;
        double b = high;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (a + b) / 2;
            if (rising.applyAsDouble(middle) < value) {
                a = middle;
            } else {
                b = middle;
            }
        }
        return (a + b) / 2;
    }
}
