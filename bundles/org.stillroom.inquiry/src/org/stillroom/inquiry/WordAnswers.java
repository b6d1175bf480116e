package org.stillroom.inquiry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.measures.MeasureMeaning;
import org.stillroom.measures.MeasureQuestion;
import org.stillroom.measures.MeasureTable;
import org.stillroom.measures.WeightedAuthority;
import org.stillroom.measures.WordAccount;
import org.stillroom.measures.WordAccount.Statement;
import org.stillroom.measures.phrase.MeasurePhrase;
import org.stillroom.model.explain.Explanation;

/** Asks what is said about a word of measure, and puts it into a table, one row a statement. */
public final class WordAnswers {

    private WordAnswers() {}

    /**
     * Returns what is said of the word that was asked for.
     *
     * @param arguments word, and place, date and trade as far as they are known
     * @throws InquiryException where the word is not known or an argument cannot be understood
     */
    public static WordAccount account(MeasureTable table, Arguments arguments) {
        String word = arguments.required("word");
        MeasurePhrase phrase = MeasurePhrase.parse(word, table.words());
        WordAccount account =
                WordAccount.of(
                        table,
                        new MeasureQuestion(
                                phrase.word(),
                                phrase.size(),
                                phrase.matter(),
                                phrase.thing(),
                                arguments.circumstances()));
        if (account.meaning() instanceof MeasureMeaning.Unknown unknown) {
            throw new InquiryException(
                    "“" + word + "” is no measure known here.",
                    unknown.nearest().isEmpty()
                            ? "A row in knowledge/measures.csv can define it."
                            : "The nearest that are known: "
                                    + String.join(", ", unknown.nearest())
                                    + ".");
        }
        return account;
    }

    /** Returns the table that stands behind the figure; both number the statements alike. */
    public static Block.Table table(WordAccount account) {
        List<List<String>> rows = new ArrayList<>();
        List<Explanation> whys = new ArrayList<>();
        for (Statement s : account.statements()) {
            rows.add(row(s, account));
            whys.add(why(s));
        }
        return new Block.Table(
                "Who says what, weightiest first",
                List.of(
                        "no.",
                        "source",
                        "date",
                        "place",
                        "trade",
                        account.dimension().symbol(),
                        "weight",
                        "known"),
                List.of(true, false, false, false, false, true, true, false),
                rows,
                List.of(),
                whys);
    }

    private static List<String> row(Statement s, WordAccount account) {
        WeightedAuthority a = s.said();
        return List.of(
                Integer.toString(s.number()),
                a.source(),
                a.date().isEmpty() ? "not stated" : a.date(),
                a.placeName().isEmpty() ? "not stated" : a.placeName(),
                a.authority().trade(),
                s.measures(account.dimension()) ? amount(a) : "–",
                weight(s, account),
                a.authority().citation().status().words());
    }

    private static String weight(Statement s, WordAccount account) {
        WeightedAuthority a = s.said();
        return s.counts() || s.measures(account.dimension()) && a.authority().counts()
                ? String.format(Locale.ROOT, "%.0f %%", 100 * a.share())
                : a.why();
    }

    private static String amount(WeightedAuthority a) {
        double[] limits = a.limits();
        return limits[0] == limits[1]
                ? three(a.amount())
                : three(a.amount()) + " (" + three(limits[0]) + "–" + three(limits[1]) + ")";
    }

    private static String three(double value) {
        return new java.math.BigDecimal(value)
                .round(new java.math.MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Returns the statement itself, where it was published and why it counts so much. */
    public static Explanation why(Statement s) {
        WeightedAuthority a = s.said();
        String weight =
                s.counts()
                        ? String.format(Locale.ROOT, "Weight %.0f %%: ", 100 * a.share())
                        : "Next to no weight here: ";
        return Explanation.of(
                a.source() + ": " + a.authority().statement(),
                Explanation.cited("It states " + stated(a) + ".", a.authority().citation()),
                Explanation.of(weight + a.why() + "."));
    }

    private static String stated(WeightedAuthority a) {
        return a.authority().content().isPresent() ? a.authority().unitWords() : "no number";
    }
}
