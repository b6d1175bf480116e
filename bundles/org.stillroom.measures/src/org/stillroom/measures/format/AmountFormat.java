package org.stillroom.measures.format;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.stillroom.model.estimate.Estimate;

/**
 * Writes amounts with no more digits than their uncertainty carries.
 *
 * <p>After JCGM 100:2008, 7.2.6, and ISO 80000-1:2022, annex B: the half-width of the range is kept
 * to one significant digit, to two where the first is 1 or 2, and the value is rounded to the same
 * place. A blank stands between number and unit symbol, an en dash in a range.
 */
public final class AmountFormat {

    /** Significant digits of an amount that is known exactly. */
    private static final int EXACT_DIGITS = 5;

    /** Significant digits of what is poured; above a litre those of an exact amount. */
    private static final int POURED_DIGITS = 3;

    /** From here on litres and kilograms are written. */
    private static final double LARGE = 10_000;

    private AmountFormat() {}

    /** Returns “≈ 57 ml (50–71)”, or “142.07 ml” for an exact amount. */
    public static String write(Estimate estimate, String unit) {
        return write(estimate.low(), estimate.likely(), estimate.high(), unit);
    }

    /** Returns “≈ 57 ml (50–71)”; the three must be finite and in order. */
    public static String write(double low, double likely, double high, String unit) {
        String larger = unit.equals("ml") ? "l" : unit.equals("g") ? "kg" : "";
        if (likely >= LARGE && !larger.isEmpty()) {
            return write(low / 1000, likely / 1000, high / 1000, larger);
        }
        if (low == high) {
            return exact(likely) + " " + unit;
        }
        int place = place((high - low) / 2);
        String least = rounded(low, place);
        String most = rounded(high, place);
        String value = rounded(likely, place);
        return "≈ " + value + " " + unit + " (" + least + "–" + most + ")";
    }

    /**
     * Returns an amount as somebody pours or weighs it: one that is known exactly to three
     * significant digits, “29.6 ml”, since no measure at a bar or in a kitchen is filled to a
     * thousandth (from memory); the exact figure belongs to its explanation.
     */
    public static String poured(Estimate estimate, String unit) {
        return estimate.low() == estimate.high() && estimate.likely() < LARGE
                ? digits(estimate.likely(), POURED_DIGITS) + " " + unit
                : write(estimate, unit);
    }

    /** Returns “22 % (19–26)” with “≈ ” before it, for a fraction 0 to 1. */
    public static String percent(Estimate fraction) {
        return write(fraction.times(100), "%");
    }

    /** Returns a number to five significant digits, without empty places after the point. */
    public static String exact(double value) {
        return digits(value, EXACT_DIGITS);
    }

    private static String digits(double value, int digits) {
        if (value == 0) {
            return "0";
        }
        boolean whole = value >= Math.pow(10, digits);
        MathContext context =
                new MathContext(whole ? EXACT_DIGITS : digits, RoundingMode.HALF_EVEN);
        return new BigDecimal(value, context).stripTrailingZeros().toPlainString();
    }

    /**
     * Returns the power of ten of the last digit that a half-width supports.
     *
     * @param halfWidth more than 0
     */
    public static int place(double halfWidth) {
        BigDecimal width = new BigDecimal(halfWidth, new MathContext(2, RoundingMode.HALF_EVEN));
        int power = width.precision() - width.scale() - 1;
        int first = width.movePointLeft(power).intValue();
        return first < 3 ? power - 1 : power;
    }

    /** Returns a number rounded to a power of ten, half to even, in plain digits. */
    public static String rounded(double value, int place) {
        BigDecimal number = new BigDecimal(value).setScale(-place, RoundingMode.HALF_EVEN);
        BigDecimal shown = place > 0 ? number.setScale(0, RoundingMode.UNNECESSARY) : number;
        return shown.signum() == 0 ? shown.abs().toPlainString() : shown.toPlainString();
    }
}
