package org.stillroom.model.number;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An exact ratio of two whole numbers, in lowest terms with a positive denominator.
 *
 * <p>A third of a gill stays one third until it is shown.
 */
public final class Rational implements Comparable<Rational> {

    /** Zero. */
    public static final Rational ZERO = of(0);

    /** One. */
    public static final Rational ONE = of(1);

    private static final Pattern MIXED =
            Pattern.compile("(-)?(?:(\\d+)\\s+)?(\\d+)\\s*/\\s*(\\d+)|(-)?(\\d+)(?:\\.(\\d+))?");

    private final BigInteger numerator;
    private final BigInteger denominator;

    private Rational(BigInteger numerator, BigInteger denominator) {
        this.numerator = numerator;
        this.denominator = denominator;
    }

    /** Returns a whole number. */
    public static Rational of(long whole) {
        return new Rational(BigInteger.valueOf(whole), BigInteger.ONE);
    }

    /** Returns a ratio; the denominator must not be 0. */
    public static Rational of(long numerator, long denominator) {
        return of(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
    }

    /** Returns a ratio; the denominator must not be 0. */
    public static Rational of(BigInteger numerator, BigInteger denominator) {
        if (denominator.signum() == 0) {
            throw new ArithmeticException(numerator + " cannot be divided by 0");
        }
        BigInteger divisor = numerator.gcd(denominator);
        if (denominator.signum() < 0) {
            divisor = divisor.negate();
        }
        return new Rational(numerator.divide(divisor), denominator.divide(divisor));
    }

    /** Returns the exact value of a decimal number. */
    public static Rational of(BigDecimal decimal) {
        BigInteger unscaled = decimal.unscaledValue();
        return decimal.scale() >= 0
                ? of(unscaled, BigInteger.TEN.pow(decimal.scale()))
                : of(unscaled.multiply(BigInteger.TEN.pow(-decimal.scale())), BigInteger.ONE);
    }

    /**
     * Reads “3”, “1/3”, “1 1/2”, “-2/3” or “2.75”.
     *
     * @return the number, or nothing where the words are of another form or divide by 0
     */
    public static Optional<Rational> parse(String words) {
        Matcher m = MIXED.matcher(words.strip());
        if (!m.matches()) {
            return Optional.empty();
        }
        if (m.group(6) != null) {
            String decimal = m.group(6) + (m.group(7) == null ? "" : "." + m.group(7));
            Rational value = of(new BigDecimal(decimal));
            return Optional.of(m.group(5) == null ? value : value.negate());
        }
        BigInteger bottom = new BigInteger(m.group(4));
        if (bottom.signum() == 0) {
            return Optional.empty();
        }
        Rational value = of(new BigInteger(m.group(3)), bottom);
        if (m.group(2) != null) {
            value = value.plus(of(new BigInteger(m.group(2)), BigInteger.ONE));
        }
        return Optional.of(m.group(1) == null ? value : value.negate());
    }

    /** Returns the numerator in lowest terms. */
    public BigInteger numerator() {
        return numerator;
    }

    /** Returns the denominator in lowest terms, 1 or more. */
    public BigInteger denominator() {
        return denominator;
    }

    /** Returns the sum. */
    public Rational plus(Rational other) {
        return of(
                numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
                denominator.multiply(other.denominator));
    }

    /** Returns the difference. */
    public Rational minus(Rational other) {
        return plus(other.negate());
    }

    /** Returns the product. */
    public Rational times(Rational other) {
        return of(numerator.multiply(other.numerator), denominator.multiply(other.denominator));
    }

    /** Returns the quotient; the other must not be 0. */
    public Rational dividedBy(Rational other) {
        return of(numerator.multiply(other.denominator), denominator.multiply(other.numerator));
    }

    /** Returns the number with the other sign. */
    public Rational negate() {
        return new Rational(numerator.negate(), denominator);
    }

    /** Returns -1, 0 or 1. */
    public int signum() {
        return numerator.signum();
    }

    /** Tells whether nothing is left over. */
    public boolean isWhole() {
        return denominator.equals(BigInteger.ONE);
    }

    /** Returns the nearest number of double precision. */
    public double toDouble() {
        if (numerator.bitLength() < 53 && denominator.bitLength() < 53) {
            return numerator.doubleValue() / denominator.doubleValue();
        }
        return new BigDecimal(numerator)
                .divide(new BigDecimal(denominator), MathContext.DECIMAL64)
                .doubleValue();
    }

    @Override
    public int compareTo(Rational other) {
        return numerator
                .multiply(other.denominator)
                .compareTo(other.numerator.multiply(denominator));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Rational that
                && numerator.equals(that.numerator)
                && denominator.equals(that.denominator);
    }

    @Override
    public int hashCode() {
        return 31 * numerator.hashCode() + denominator.hashCode();
    }

    /** Returns the form that is stored and exchanged: “3”, “1/3”, “1 1/2”. */
    @Override
    public String toString() {
        if (isWhole()) {
            return numerator.toString();
        }
        BigInteger[] parts = numerator.abs().divideAndRemainder(denominator);
        String sign = numerator.signum() < 0 ? "-" : "";
        String fraction = parts[1] + "/" + denominator;
        return sign + (parts[0].signum() == 0 ? fraction : parts[0] + " " + fraction);
    }
}
