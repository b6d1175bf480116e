package org.stillroom.model.number;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RationalTests {

    @Test
    void aThirdStaysAThird() {
        Rational third = Rational.of(1, 3);
        assertEquals(Rational.ONE, third.plus(third).plus(third));
        assertEquals("1/3", third.toString());
        assertEquals("1 1/2", Rational.of(3, 2).toString());
        assertEquals("-1 1/2", Rational.of(-3, 2).toString());
        assertEquals("2", Rational.of(4, 2).toString());
    }

    @Test
    void readsWhatItWrites() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 10_000; i++) {
            Rational r = Rational.of(random.nextLong(-999, 999), random.nextLong(1, 99));
            assertEquals(Optional.of(r), Rational.parse(r.toString()), "seed 7, draw " + i);
        }
        assertEquals(Optional.of(Rational.of(11, 4)), Rational.parse("2.75"));
        assertEquals(Optional.empty(), Rational.parse("1/0"));
        assertEquals(Optional.empty(), Rational.parse("a half"));
    }

    @Test
    void arithmeticAgreesWithDecimals() {
        SplittableRandom random = new SplittableRandom(8);
        for (int i = 0; i < 10_000; i++) {
            BigDecimal x = new BigDecimal(random.nextInt(-5000, 5000)).movePointLeft(2);
            BigDecimal y = new BigDecimal(random.nextInt(-5000, 5000)).movePointLeft(3);
            Rational a = Rational.of(x);
            Rational b = Rational.of(y);
            assertEquals(Rational.of(x.add(y)), a.plus(b), "seed 8, draw " + i);
            assertEquals(Rational.of(x.subtract(y)), a.minus(b));
            assertEquals(Rational.of(x.multiply(y)), a.times(b));
            assertEquals(x.compareTo(y), a.compareTo(b));
            if (y.signum() != 0) {
                assertEquals(a, a.dividedBy(b).times(b));
            }
        }
        assertThrows(ArithmeticException.class, () -> Rational.of(1, 0));
    }
}
