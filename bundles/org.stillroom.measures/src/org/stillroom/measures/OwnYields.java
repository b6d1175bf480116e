package org.stillroom.measures;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import org.stillroom.measures.format.AmountFormat;
import org.stillroom.measures.knowledge.Authority;
import org.stillroom.measures.knowledge.Dimension;
import org.stillroom.measures.knowledge.LegalUnit;
import org.stillroom.measures.knowledge.MeasureWord;
import org.stillroom.measures.physics.OwnMeasurements;
import org.stillroom.measures.rows.Nearest;
import org.stillroom.measures.rows.Row;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.number.Rational;
import org.stillroom.model.source.Circumstances;

/**
 * Reads what the user's own fruits gave, and joins it with what was known before.
 *
 * <p>All measurements of one thing together give one statement, which sets the published ones
 * aside; how many there were and when is part of it.
 */
final class OwnYields {

    /** So many times more or less than was published nobody's fruit gives; from memory. */
    private static final double FAR = 4;

    private static final int DIGITS = 12;

    private final MeasureTable table;
    private final List<Problem> problems = new ArrayList<>();

    OwnYields(MeasureTable table) {
        this.table = table;
    }

    record Result(List<Authority> authorities, List<Problem> problems) {}

    /** What was measured, and in which dimension. */
    private record Thing(String word, String of, Dimension dimension) {
        String text() {
            return word.equals("juice-of") ? "the juice of one " + of : "one " + word + " of " + of;
        }
    }

    /** One row's measurements, each for one thing. */
    private record Measured(List<Double> values, String date, Row row) {}

    Result read(List<Row> rows) {
        Map<Thing, List<Measured>> all = new LinkedHashMap<>();
        for (Row row : rows) {
            Optional<LegalUnit> unit = unit(row);
            Optional<String> word = word(row);
            List<Double> values = unit.map(u -> values(row, u)).orElse(List.of());
            if (unit.isPresent() && word.isPresent() && !values.isEmpty()) {
                Thing thing =
                        new Thing(
                                word.get(),
                                row.get("of").toLowerCase(Locale.ROOT),
                                unit.get().dimension());
                if (isFarOff(thing, values, row)) {
                    continue;
                }
                all.computeIfAbsent(thing, t -> new ArrayList<>())
                        .add(new Measured(values, row.get("date"), row));
            }
        }
        List<Authority> authorities = new ArrayList<>();
        all.forEach((thing, measured) -> authorities.add(authority(thing, measured)));
        return new Result(authorities, problems);
    }

    /** Reports what is so far from what was published that the unit or the number must be wrong. */
    private boolean isFarOff(Thing thing, List<Double> values, Row row) {
        Optional<Estimate> known = before(thing);
        if (known.isEmpty() || known.get().low() <= 0) {
            return false;
        }
        Optional<Double> far =
                values.stream()
                        .filter(v -> v > FAR * known.get().high() || v < known.get().low() / FAR)
                        .findFirst();
        String symbol = thing.dimension().symbol();
        far.ifPresent(
                v ->
                        report(
                                row,
                                row.get("amount"),
                                AmountFormat.exact(v)
                                        + " "
                                        + symbol
                                        + " is not what "
                                        + thing.text()
                                        + " gives; published is "
                                        + AmountFormat.write(known.get(), symbol)
                                        + ". The row was left out.",
                                "Look at the unit; if several gave it together, write how many in"
                                        + " the column “each”."));
        return far.isPresent();
    }

    private Optional<LegalUnit> unit(Row row) {
        Optional<LegalUnit> unit = table.unit(row.get("unit"));
        if (unit.isEmpty()) {
            List<String> codes = table.units().stream().map(LegalUnit::code).toList();
            report(
                    row,
                    row.get("unit"),
                    row.get("unit").isEmpty() ? "The row names no unit." : "The unit is not known.",
                    Nearest.remedy(row.get("unit"), codes));
        }
        return unit;
    }

    private Optional<String> word(Row row) {
        if (row.get("of").isEmpty()) {
            report(
                    row,
                    "",
                    "The row does not say what was measured.",
                    "Fill the column “of”, such as “lemon”.");
            return Optional.empty();
        }
        String printed = row.maybe("word").orElse("juice-of");
        Optional<String> word = table.words().find(printed).map(MeasureWord::word);
        if (word.isEmpty()) {
            report(
                    row,
                    printed,
                    "The word of measure is not known.",
                    "Leave it empty for the juice of a fruit. The nearest known: "
                            + String.join(", ", table.words().nearest(printed, 3))
                            + ".");
        }
        return word;
    }

    private List<Double> values(Row row, LegalUnit unit) {
        Rational each = row.maybe("each").flatMap(Rational::parse).orElse(Rational.ONE);
        List<Double> values = new ArrayList<>();
        for (String cell : row.list("amount")) {
            Optional<Rational> amount = Rational.parse(cell).filter(a -> a.signum() > 0);
            if (amount.isEmpty() || each.signum() <= 0) {
                report(
                        row,
                        cell,
                        "This is not an amount above nothing.",
                        "Write amounts such as 44 or 44.5, several set apart by “;”.");
                return List.of();
            }
            values.add(amount.get().times(unit.amount()).dividedBy(each).toDouble());
        }
        if (values.isEmpty()) {
            report(row, "", "The row gives no amount.", "Fill the column “amount”.");
        }
        return values;
    }

    private void report(Row row, String words, String reason, String remedy) {
        problems.add(row.error(words, reason, remedy));
    }

    private Authority authority(Thing thing, List<Measured> measured) {
        List<Double> values = measured.stream().flatMap(m -> m.values().stream()).toList();
        TreeSet<String> dates = new TreeSet<>();
        measured.stream().map(Measured::date).filter(d -> !d.isBlank()).forEach(dates::add);
        OwnMeasurements own =
                new OwnMeasurements(
                        thing.text(),
                        values,
                        dates.isEmpty() ? "undated" : String.join(", ", dates));
        Optional<Estimate> before = before(thing);
        Estimate now = before.map(own::estimate).orElseGet(() -> alone(own));
        Row first = measured.get(0).row();
        String statement =
                own.toText()
                        + before.map(
                                        b ->
                                                ", joined with what was published before ("
                                                        + AmountFormat.write(
                                                                b, thing.dimension().symbol())
                                                        + ")")
                                .orElse("")
                        + ".";
        Rational likely = rational(now.likely());
        return new Authority(
                first.file() + ":" + first.line(),
                thing.word(),
                Optional.empty(),
                thing.of(),
                thing.dimension(),
                Optional.of(
                        new Authority.Content(
                                rational(Math.max(now.low(), Double.MIN_NORMAL)),
                                likely,
                                rational(now.high()))),
                values.size() + " measured",
                "",
                OptionalInt.empty(),
                OptionalInt.empty(),
                "",
                new Citation(
                        "", first.maybe("source").orElse("own measurements"), Citation.Status.USER),
                "own measurements",
                Authority.Role.OVERRULE,
                "",
                statement,
                "");
    }

    private static Rational rational(double value) {
        return Rational.of(new BigDecimal(value).round(new MathContext(DIGITS)));
    }

    private Optional<Estimate> before(Thing thing) {
        MeasureMeaning meaning =
                table.resolve(
                        MeasureQuestion.of(thing.word(), Circumstances.UNKNOWN)
                                .about(
                                        thing.dimension() == Dimension.MASS
                                                ? Matter.SOLID
                                                : Matter.LIQUID,
                                        thing.of()));
        return thing.dimension() == Dimension.MASS ? meaning.grams() : meaning.millilitres();
    }

    /** Nothing was known before: mean and range of the measurements themselves. */
    private static Estimate alone(OwnMeasurements own) {
        double low = own.values().stream().mapToDouble(v -> v).min().orElseThrow();
        double high = own.values().stream().mapToDouble(v -> v).max().orElseThrow();
        double middle = own.values().stream().mapToDouble(v -> v).average().orElseThrow();
        return own.estimate(
                Estimate.of(
                        org.stillroom.model.estimate.Origin.pert(
                                own.what(), low * 0.8, middle, high * 1.2)));
    }
}
