package org.stillroom.model.reading;

import java.util.Optional;
import org.stillroom.model.number.Rational;

/**
 * How much of something a line asks for, before any conversion.
 *
 * @param kind in what way the amount is given
 * @param quantity the number, or the lower one of a range
 * @param quantityMax the upper number of a range
 */
public record Amount(Kind kind, Optional<Rational> quantity, Optional<Rational> quantityMax) {

    /** In what way an amount is given. */
    public enum Kind {
        /** A number of measures or of things. */
        STATED,
        /** A share of the whole, such as “⅓ gin”. */
        SHARE,
        /** As much as of each of the others. */
        EQUAL_PARTS,
        /** As much as fills the vessel, or a stated part of it. */
        FILL,
        /** As much as tastes right. */
        TO_TASTE,
        /** Some, a little, a few. */
        A_LITTLE,
        /** As much as is needed to sweeten, colour, cover. */
        ENOUGH,
        /** A layer on top. */
        FLOAT,
        /** A dusting. */
        DUST,
        /** Nothing is said. */
        UNSTATED
    }

    /** An amount of which nothing is said. */
    public static final Amount UNSTATED =
            new Amount(Kind.UNSTATED, Optional.empty(), Optional.empty());

    /** Returns an amount without a number. */
    public static Amount of(Kind kind) {
        return new Amount(kind, Optional.empty(), Optional.empty());
    }

    /** Returns a number of measures. */
    public static Amount of(Rational quantity) {
        return new Amount(Kind.STATED, Optional.of(quantity), Optional.empty());
    }

    /** Returns a range of numbers of measures. */
    public static Amount of(Rational low, Rational high) {
        return new Amount(Kind.STATED, Optional.of(low), Optional.of(high));
    }

    /** Returns a share of the whole. */
    public static Amount share(Rational share) {
        return new Amount(Kind.SHARE, Optional.of(share), Optional.empty());
    }
}
