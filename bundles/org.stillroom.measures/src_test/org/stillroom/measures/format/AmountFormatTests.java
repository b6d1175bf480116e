package org.stillroom.measures.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.stillroom.model.estimate.Estimate;

class AmountFormatTests {

    private static final Pattern WRITTEN =
            Pattern.compile(
                    "≈ (\\d+(?:\\.\\d+)?) (\\S+) \\((\\d+(?:\\.\\d+)?)–(\\d+(?:\\.\\d+)?)\\)");

    @Test
    void writesAsTheReferenceDoes() {
        assertEquals("≈ 57 ml (50–71)", AmountFormat.write(50, 57, 71, "ml"));
        assertEquals("≈ 20 ml (12–30)", AmountFormat.write(12, 20, 30, "ml"));
        assertEquals("≈ 0.8 ml (0.4–1.5)", AmountFormat.write(0.4, 0.8, 1.5, "ml"));
        assertEquals("142.07 ml", AmountFormat.write(Estimate.exact(142.0653125), "ml"));
        assertEquals("60 ml", AmountFormat.write(Estimate.exact(60), "ml"));
        assertEquals("≈ 22 % (19–26)", AmountFormat.write(18.9, 22.43, 26.3, "%"));
        assertEquals("4546.1 ml", AmountFormat.write(Estimate.exact(4546.09), "ml"));
        assertEquals("238.48 l", AmountFormat.write(Estimate.exact(238480), "ml"));
    }

    /** JCGM 100:2008, 7.2.6: an uncertainty has at most two significant digits. */
    @Test
    void neverMoreDigitsThanTheUncertaintyCarries() {
        Random random = new Random(7);
        for (int n = 0; n < 10_000; n++) {
            double likely = Math.pow(10, random.nextDouble() * 7 - 3);
            double low = likely * (1 - random.nextDouble() * 0.9);
            double high = likely * (1 + random.nextDouble() * 3);
            String text = AmountFormat.write(low, likely, high, n % 2 == 0 ? "ml" : "g");
            Matcher m = WRITTEN.matcher(text);
            assertTrue(m.matches(), "seed 7, " + n + ": " + text);
            double unit = m.group(2).equals("l") || m.group(2).equals("kg") ? 1000 : 1;
            double half = (high - low) / 2 / unit;
            for (int group : new int[] {1, 3, 4}) {
                checkDigits(m.group(group), half, "seed 7, " + n + ": " + text);
            }
            double step = half / 4;
            assertEquals(likely / unit, Double.parseDouble(m.group(1)), step, text);
        }
    }

    private static void checkDigits(String written, double half, String message) {
        BigDecimal number = new BigDecimal(written);
        int last = number.scale() > 0 ? -number.scale() : 0;
        double finest = Math.pow(10, Math.floor(Math.log10(half)) - 1);
        boolean wholeNumber = number.scale() <= 0;
        boolean fine = Math.pow(10, last) >= finest * 0.99;
        boolean zeros =
                wholeNumber
                                && number.doubleValue() % (finest * 0.999999999)
                                        < number.ulp().doubleValue()
                        || number.doubleValue() % Math.max(1, Math.rint(finest)) == 0;
        assertTrue(fine || zeros, message);
    }

    /** Definitions: the US fluid ounce and pint by the gallon of 231 cubic inches. */
    @Test
    void whatIsPouredHasThreeDigits() {
        assertEquals("29.6 ml", AmountFormat.poured(Estimate.exact(29.5735295625), "ml"));
        assertEquals("473 ml", AmountFormat.poured(Estimate.exact(473.176473), "ml"));
        assertEquals("3785.4 ml", AmountFormat.poured(Estimate.exact(3785.411784), "ml"));
        assertEquals("30 ml", AmountFormat.poured(Estimate.exact(30), "ml"));
        assertEquals("0.92 g", AmountFormat.poured(Estimate.exact(0.92), "g"));
        assertEquals("0 ml", AmountFormat.poured(Estimate.exact(0), "ml"));
        assertEquals("37.854 l", AmountFormat.poured(Estimate.exact(37854.11784), "ml"));
        assertEquals("29.574 ml", AmountFormat.write(Estimate.exact(29.5735295625), "ml"));
    }
}
