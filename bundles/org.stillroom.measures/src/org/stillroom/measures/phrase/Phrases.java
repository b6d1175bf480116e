package org.stillroom.measures.phrase;

import java.util.List;
import java.util.Optional;
import org.stillroom.measures.MeasureMeaning;
import org.stillroom.measures.MeasureMeaning.Measured;
import org.stillroom.measures.MeasureQuestion;
import org.stillroom.measures.MeasureTable;
import org.stillroom.measures.format.AmountFormat;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.estimate.Origin;
import org.stillroom.model.number.Rational;
import org.stillroom.model.source.Circumstances;

/** Answers phrases of measure: amounts, strengths and syrups. */
public final class Phrases {

    private final MeasureTable table;
    private final StrengthPhrases strengths = StrengthPhrases.shipped();
    private final SyrupPhrases syrups = new SyrupPhrases();

    /** Makes answers from a table of measures. */
    public Phrases(MeasureTable table) {
        this.table = table;
    }

    /** Returns what a phrase comes to; never fails, whatever the words. */
    public PhraseAnswer answer(String text, Circumstances where) {
        return strengths
                .answer(text, where, table.places())
                .or(() -> syrups.answer(text, where))
                .orElseGet(() -> quantity(text, where));
    }

    /** Returns what a phrase comes to in several circumstances, side by side, in their order. */
    public List<PhraseAnswer> compare(String text, List<Circumstances> wheres) {
        return wheres.stream().map(w -> answer(text, w)).toList();
    }

    private PhraseAnswer quantity(String text, Circumstances where) {
        Optional<PhraseAnswer> nothing = nothing(text, where);
        if (nothing.isPresent()) {
            return nothing.get();
        }
        MeasurePhrase phrase = MeasurePhrase.parse(text, table.words());
        MeasureMeaning meaning =
                table.resolve(
                        new MeasureQuestion(
                                phrase.word(),
                                phrase.size(),
                                phrase.matter(),
                                phrase.thing(),
                                where));
        if (meaning instanceof MeasureMeaning.Unknown unknown) {
            return new PhraseAnswer.None(text, where, unknown.reason(), unknown.nearest());
        }
        Optional<Estimate> amount =
                meaning instanceof Measured m ? Optional.of(times(m, phrase)) : Optional.empty();
        String reason =
                amount.map(a -> sentence(phrase, (Measured) meaning, a)).orElse(meaning.reason());
        return new PhraseAnswer.Quantity(text, where, phrase, meaning, amount, reason);
    }

    /** An amount of nothing, or less than nothing, is no amount. */
    private static Optional<PhraseAnswer> nothing(String text, Circumstances where) {
        String reason = "";
        if (text.matches("\\s*(?:[-–−]|minus\\b)\\s*[\\d½⅓¼¾].*")) {
            reason = "“" + text.strip() + "” is less than nothing, which nobody pours.";
        } else if (text.matches(".*\\d\\s*[/⁄]\\s*0+(?:\\D.*|$)")) {
            reason =
                    "“"
                            + text.strip()
                            + "” has a fraction with 0 below its line, which is no number.";
        } else if (text.matches("\\s*(?:0+(?:[.,]0+)?|no|zero)\\s+\\p{L}.*")) {
            reason = "“" + text.strip() + "” is no amount: none of it is called for.";
        }
        return reason.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new PhraseAnswer.None(
                                text, where, reason, List.of("½ gill", "2 wineglasses")));
    }

    private static Estimate times(Measured meaning, MeasurePhrase phrase) {
        if (phrase.quantityMax().isEmpty()) {
            return meaning.times(phrase.quantity());
        }
        double low = phrase.quantity().toDouble();
        double high = phrase.quantityMax().get().toDouble();
        Origin number =
                new Origin(
                        "how many of " + phrase.text().strip(),
                        low,
                        (low + high) / 2,
                        high,
                        Origin.Shape.RECTANGULAR);
        return meaning.one().times(Estimate.of(number));
    }

    private static String sentence(MeasurePhrase phrase, Measured meaning, Estimate amount) {
        boolean one = phrase.quantity().equals(Rational.ONE) && phrase.quantityMax().isEmpty();
        String symbol = meaning.dimension().symbol();
        String whole =
                one ? "" : phrase.text().strip() + ": " + AmountFormat.write(amount, symbol) + ". ";
        return whole + meaning.reason();
    }
}
