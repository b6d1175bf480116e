package org.stillroom.inquiry.ask;

import java.util.Optional;
import org.stillroom.measures.format.AmountFormat;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Size;
import org.stillroom.model.spec.SpecLine;

/** Says amounts in words for tables. */
final class Amounts {

    private Amounts() {}

    /** Returns the amount as read, such as “2 dash”, “1–2 wineglass”, “⅓ of the whole”. */
    static String asRead(ReadingLine line) {
        Amount amount = line.amount();
        String number =
                amount.quantity().map(Rational::toString).orElse("")
                        + amount.quantityMax().map(m -> "–" + m).orElse("");
        if (amount.kind() == Amount.Kind.SHARE) {
            return number + " of the whole";
        }
        String size = line.size().map(Size::word).map(w -> w + " ").orElse("");
        String measure =
                line.measure().equals("unstated") || line.measure().equals("whole")
                        ? ""
                        : line.measure();
        String words = (number + " " + size + measure).strip();
        if (!words.isEmpty()) {
            return words;
        }
        return switch (amount.kind()) {
            case FILL -> "fill";
            case TO_TASTE -> "to taste";
            case A_LITTLE -> "a little";
            case ENOUGH -> "enough";
            case FLOAT -> "a float";
            case DUST -> "a dusting";
            case EQUAL_PARTS -> "equal parts";
            default -> line.kind() == LineKind.MEASURED ? "not stated" : line.kind().word();
        };
    }

    /** Returns the resolved amount, such as “57 (50–71) ml”. */
    static String resolved(SpecLine line) {
        if (line.share().isPresent()) {
            return line.share().get() + " of the whole";
        }
        return line.millilitres()
                .map(v -> AmountFormat.write(v, "ml"))
                .or(() -> line.grams().map(g -> AmountFormat.write(g, "g")))
                .orElse("–");
    }

    static String percent(Optional<Estimate> share) {
        return share.map(AmountFormat::percent).orElse("–");
    }
}
