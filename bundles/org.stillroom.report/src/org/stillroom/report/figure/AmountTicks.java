package org.stillroom.report.figure;

import java.io.Serial;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import org.stillroom.measures.format.AmountFormat;

/** Writes the numbers of an axis of amounts, the same in every locale. */
final class AmountTicks extends NumberFormat {

    @Serial private static final long serialVersionUID = 1;

    @Override
    public StringBuffer format(double number, StringBuffer to, FieldPosition position) {
        return to.append(AmountFormat.exact(number));
    }

    @Override
    public StringBuffer format(long number, StringBuffer to, FieldPosition position) {
        return to.append(number);
    }

    @Override
    public Number parse(String words, ParsePosition position) {
        throw new UnsupportedOperationException("Axes only write");
    }
}
