package org.stillroom.workbench.library;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillroom.inquiry.Amounts;
import org.stillroom.inquiry.BookRules;
import org.stillroom.inquiry.Trial;
import org.stillroom.measures.format.AmountFormat;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.spec.Spec;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;
import org.stillroom.workbench.widgets.DataTable;

/** Puts a spec into the rows of a table; nothing is converted here. */
final class SpecRows {
    /** The columns of the table. */
    static final List<DataTable.Column> COLUMNS =
            List.of(
                    DataTable.Column.words("As printed", 21),
                    DataTable.Column.words("Amount", 12),
                    DataTable.Column.figures("Volume", 30),
                    DataTable.Column.words("Ingredient", 19),
                    DataTable.Column.words("Role", 12),
                    DataTable.Column.figures("Sure", 9));

    private SpecRows() {}

    /**
     * One row's line.
     *
     * @param line the line of the spec
     * @param own its number among the recipe's own lines, or -1 where it is taken over
     */
    record Target(SpecLine line, int own) {}

    /** Returns a row for each line. */
    static List<DataTable.Row> of(Version version) {
        Spec spec = version.spec();
        List<DataTable.Row> rows = new ArrayList<>();
        for (SpecLine line : spec.lines()) {
            int own = version.reading().lines().indexOf(line.line());
            rows.add(new DataTable.Row(cells(line, own, version), new Target(line, own)));
        }
        return rows;
    }

    private static List<String> cells(SpecLine line, int own, Version version) {
        ReadingLine read = line.line();
        String printed = own < 0 ? "↑ " + read.text() : read.text();
        return List.of(
                printed,
                amount(read, own, version),
                volume(line),
                line.ingredient().label() + (line.ingredient().known() ? "" : " (unknown)"),
                line.ingredient().role().word(),
                Math.round(100 * read.confidence().probability()) + " %");
    }

    private static String amount(ReadingLine line, int own, Version version) {
        Optional<String> words =
                own < 0
                        ? Optional.empty()
                        : line.amountSpan().map(s -> version.source().text().slice(s));
        return words.map(w -> w.replace('\n', ' ')).orElseGet(() -> said(line));
    }

    private static String said(ReadingLine line) {
        String number =
                line.amount().quantity().map(q -> q + " " + line.measure()).orElse("").strip();
        return number.isEmpty()
                ? line.amount().kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ')
                : number;
    }

    private static String volume(SpecLine line) {
        Optional<String> share = line.share().map(s -> s + " of the whole");
        return line.millilitres()
                .map(v -> AmountFormat.poured(v, "ml"))
                .or(() -> line.grams().map(g -> AmountFormat.poured(g, "g")))
                .or(() -> share)
                .orElse("–");
    }

    /** Returns a tried line in words: “1 teaspoon sugar: 4.2 ml, sweet”. */
    static String words(Trial trial) {
        return trial.line()
                .map(
                        l ->
                                BookRules.words(l.line())
                                        + ":  "
                                        + volume(l)
                                        + (l.ingredient().known()
                                                ? "  ·  " + l.ingredient().role().word()
                                                : "  ·  not in the thesaurus"))
                .orElse("No ingredient; the words are taken as you say.");
    }

    /** Returns volume, strength and sugar of the whole in a sentence, as far as they are known. */
    static String whole(Spec spec) {
        List<String> parts = new ArrayList<>();
        spec.volume()
                .ifPresent(
                        v -> parts.add(AmountFormat.poured(v, "ml") + " " + Amounts.before(spec)));
        spec.strength()
                .map(AmountFormat::percent)
                .ifPresent(s -> parts.add("strength " + s + " by volume"));
        spec.sugar().ifPresent(s -> parts.add("sugar " + AmountFormat.poured(s, "g")));
        return String.join("  ·  ", parts);
    }
}
