package org.stillroom.inquiry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillroom.drift.Drift;
import org.stillroom.measures.format.AmountFormat;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Size;
import org.stillroom.model.spec.Spec;
import org.stillroom.model.spec.SpecLine;

/** Says amounts in words for tables and explanations. */
public final class Amounts {

    private Amounts() {}

    /** Returns the amount as read, such as “2 dash”, “1–2 wineglass”, “⅓ of the whole”. */
    public static String asRead(ReadingLine line) {
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
    public static String resolved(SpecLine line) {
        if (line.share().isPresent()) {
            return line.share().get() + " of the whole";
        }
        return line.millilitres()
                .map(v -> AmountFormat.poured(v, "ml"))
                .or(() -> line.grams().map(g -> AmountFormat.poured(g, "g")))
                .orElse("–");
    }

    /** Returns a fraction in per cent, or a dash. */
    public static String percent(Optional<Estimate> share) {
        return share.map(AmountFormat::percent).orElse("–");
    }

    /** Returns a share of the whole in per cent, without the sign: “34 (34–35)”, “0”. */
    public static String share(Drift.Share share) {
        if (share.high() == 0) {
            return "0";
        }
        long low = Math.round(100 * share.low());
        long high = Math.round(100 * share.high());
        String likely = Long.toString(Math.round(100 * share.likely()));
        return low == high ? likely : likely + " (" + low + "–" + high + ")";
    }

    /**
     * Returns what the whole leaves out: “before ice”, and before what fills the glass where
     * something does.
     */
    public static String before(Spec spec) {
        List<String> fills =
                spec.lines().stream()
                        .filter(l -> l.line().kind() == LineKind.TOP)
                        .filter(l -> l.millilitres().isEmpty() && l.grams().isEmpty())
                        .filter(l -> l.share().isEmpty())
                        .map(l -> l.line().ingredientName())
                        .filter(n -> !n.isBlank())
                        .distinct()
                        .toList();
        return fills.isEmpty() ? "before ice" : "before ice and " + String.join(", ", fills);
    }

    /** Returns volume, strength and sugar of the whole in words, as far as they are known. */
    public static String whole(Spec spec) {
        List<String> known = new ArrayList<>();
        spec.volume().ifPresent(v -> known.add(AmountFormat.poured(v, "ml") + " " + before(spec)));
        spec.strength().ifPresent(s -> known.add(AmountFormat.percent(s) + " by volume"));
        spec.sugar().ifPresent(s -> known.add(AmountFormat.poured(s, "g") + " of sugar"));
        return known.isEmpty() ? "no amount is known" : String.join(", ", known);
    }
}
