package org.stillroom.ingredients.knowledge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.stillroom.ingredients.Allergen;
import org.stillroom.ingredients.Hazard;
import org.stillroom.ingredients.IngredientKind;
import org.stillroom.ingredients.Label;
import org.stillroom.ingredients.Milestone;
import org.stillroom.ingredients.Properties;
import org.stillroom.ingredients.Validity;
import org.stillroom.ingredients.knowledge.AllergenRow.Presence;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Trade;
import org.stillroom.model.spec.Caution;

/** Turns the cells of one row into what they state, or reports why they state nothing. */
final class Cells {

    private static final Pattern SLUG = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final Pattern COUNTRY = Pattern.compile("[A-Z]{2}");

    private final Sources sources;
    private final List<Problem> problems;

    Cells(Sources sources, List<Problem> problems) {
        this.sources = sources;
        this.problems = problems;
    }

    /** Says that a row is bad; thrown within this class alone. */
    private static final class BadCell extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final String words;
        private final String remedy;

        BadCell(String words, String reason, String remedy) {
            super(reason, null, false, false);
            this.words = words;
            this.remedy = remedy;
        }
    }

    private interface Reading<T> {
        T read(Row row);
    }

    private <T> Optional<T> orReport(String path, Row row, Reading<T> reading) {
        try {
            return Optional.of(reading.read(row));
        } catch (BadCell bad) {
            problems.add(Problem.error(path, row.line(), bad.words, bad.getMessage(), bad.remedy));
            return Optional.empty();
        }
    }

    Optional<SenseRow> sense(String path, Row row) {
        return orReport(
                path,
                row,
                r ->
                        new SenseRow(
                                slug(r.cell("id")),
                                needed(r, "label"),
                                kind(r.cell("role")),
                                list(r.cell("broader")),
                                list(r.cell("close")),
                                validity(r, "places"),
                                r.cell("scope"),
                                source(r)));
    }

    Optional<LabelRow> label(String path, Row row) {
        return orReport(
                path,
                row,
                r -> {
                    String kind = r.cell("kind").isEmpty() ? "alternative" : r.cell("kind");
                    String language = r.cell("language").isEmpty() ? "en" : r.cell("language");
                    Label.Kind known =
                            Label.Kind.of(kind)
                                    .orElseThrow(
                                            () ->
                                                    unknown(
                                                            kind,
                                                            "kind of label",
                                                            words(Label.Kind.values())));
                    return new LabelRow(
                            needed(r, "sense"),
                            new Label(
                                    needed(r, "label"),
                                    known,
                                    language,
                                    validity(r, "place"),
                                    source(r)));
                });
    }

    Optional<FigureRow> figure(String path, Row row) {
        return orReport(
                path,
                row,
                r -> {
                    String word = r.cell("quantity");
                    Properties.Quantity quantity =
                            Properties.Quantity.of(word)
                                    .orElseThrow(
                                            () ->
                                                    unknown(
                                                            word,
                                                            "quantity",
                                                            words(Properties.Quantity.values())));
                    double likely = number(needed(r, "likely"));
                    double low = r.cell("low").isEmpty() ? likely : number(r.cell("low"));
                    double high = r.cell("high").isEmpty() ? likely : number(r.cell("high"));
                    checkRange(quantity, low, likely, high);
                    return new FigureRow(
                            needed(r, "sense"), quantity, low, likely, high, source(r));
                });
    }

    private static void checkRange(
            Properties.Quantity quantity, double low, double likely, double high) {
        String range = low + ", " + likely + ", " + high;
        if (low < 0) {
            throw new BadCell(
                    range,
                    "A " + quantity.word() + " cannot be below 0; the row was left out.",
                    "Write 0 or more.");
        }
        if (!(low <= likely && likely <= high)) {
            double[] order = {low, likely, high};
            Arrays.sort(order);
            throw new BadCell(
                    range,
                    "The range is upside down: low, likely and high must not fall; the row was"
                            + " left out.",
                    "In order they would be " + order[0] + ", " + order[1] + ", " + order[2] + ".");
        }
        if (quantity == Properties.Quantity.STRENGTH && high > 100) {
            throw new BadCell(
                    range,
                    "A strength is in per cent by volume and cannot be above 100; the row was left"
                            + " out.",
                    "Degrees of proof must be turned into per cent by volume first.");
        }
    }

    Optional<AllergenRow> allergen(String path, Row row) {
        return orReport(
                path,
                row,
                r -> {
                    String word = r.cell("allergen").toLowerCase(Locale.ROOT);
                    if (word.equals("none") || word.equals("unknown")) {
                        return new AllergenRow(
                                needed(r, "sense"),
                                Optional.empty(),
                                word.equals("none") ? Presence.NONE : Presence.UNKNOWN,
                                source(r));
                    }
                    Allergen allergen =
                            Allergen.of(word)
                                    .orElseThrow(
                                            () ->
                                                    unknown(
                                                            word,
                                                            "allergen",
                                                            words(Allergen.values())));
                    return new AllergenRow(
                            needed(r, "sense"), Optional.of(allergen), presence(r), source(r));
                });
    }

    private static Presence presence(Row row) {
        return switch (row.cell("presence").toLowerCase(Locale.ROOT)) {
            case "contains" -> Presence.CONTAINS;
            case "possible" -> Presence.POSSIBLE;
            default ->
                    throw unknown(
                            row.cell("presence"), "presence", List.of("contains", "possible"));
        };
    }

    Optional<Hazard> hazard(String path, Row row) {
        return orReport(
                path,
                row,
                r -> {
                    List<String> triggers = list(r.cell("words"));
                    List<String> senses =
                            list(triggers.isEmpty() ? needed(r, "senses") : r.cell("senses"));
                    return new Hazard(
                            slug(r.cell("id")),
                            level(r.cell("level")),
                            senses,
                            triggers,
                            r.cell("region"),
                            needed(r, "what"),
                            needed(r, "rule"),
                            source(r));
                });
    }

    private static Caution.Level level(String word) {
        return Stream.of(Caution.Level.values())
                .filter(l -> l.name().equalsIgnoreCase(word))
                .findFirst()
                .orElseThrow(() -> unknown(word, "level", words(Caution.Level.values())));
    }

    Optional<Milestone> milestone(String path, Row row) {
        return orReport(
                path,
                row,
                r ->
                        new Milestone(
                                slug(r.cell("id")),
                                Milestone.Kind.of(r.cell("kind"))
                                        .orElseThrow(
                                                () ->
                                                        unknown(
                                                                r.cell("kind"),
                                                                "kind",
                                                                words(Milestone.Kind.values()))),
                                list(needed(r, "subjects")),
                                year(r.cell("first"), true),
                                year(r.cell("last"), false),
                                r.cell("place"),
                                needed(r, "statement"),
                                source(r)));
    }

    private static String slug(String cell) {
        if (!SLUG.matcher(cell).matches()) {
            String better =
                    cell.toLowerCase(Locale.ROOT)
                            .replaceAll("[^a-z0-9]+", "-")
                            .replaceAll("^-|-$", "");
            throw new BadCell(
                    cell,
                    "An id is made of small letters, digits and hyphens; the row was left out.",
                    better.isEmpty() ? "" : "Write " + better + ".");
        }
        return cell;
    }

    private static IngredientKind kind(String word) {
        return IngredientKind.of(word)
                .orElseThrow(
                        () ->
                                unknown(
                                        word,
                                        "role",
                                        Stream.of(IngredientKind.values())
                                                .map(IngredientKind::word)
                                                .toList()));
    }

    private static String needed(Row row, String column) {
        String cell = row.cell(column);
        if (cell.isEmpty()) {
            throw new BadCell(
                    row.words(),
                    "The column " + column + " is empty; the row was left out.",
                    "Every row needs it.");
        }
        return cell;
    }

    private Citation source(Row row) {
        String cell = row.cell("source");
        if (cell.isEmpty()) {
            throw new BadCell(
                    row.words(),
                    "The row names no source; it was left out.",
                    "Write who says so in the column source, or: from memory.");
        }
        return sources.citation(cell, status(row.cell("status")));
    }

    private static Optional<Citation.Status> status(String word) {
        if (word.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                Stream.of(Citation.Status.values())
                        .filter(s -> s.name().equalsIgnoreCase(word))
                        .findFirst()
                        .orElseThrow(
                                () -> unknown(word, "status", words(Citation.Status.values()))));
    }

    private static Validity validity(Row row, String placeColumn) {
        List<String> places = list(row.cell(placeColumn));
        for (String place : places) {
            if (!COUNTRY.matcher(place).matches()) {
                throw new BadCell(
                        place,
                        "A place is a country’s two capital letters (ISO 3166-1); the row was left"
                                + " out.",
                        "Write GB, US, FR and so on, with ; between them.");
            }
        }
        OptionalInt from = year(row.cell("from"), true);
        OptionalInt to = year(row.cell("to"), false);
        if (from.isPresent() && to.isPresent() && from.getAsInt() > to.getAsInt()) {
            throw new BadCell(
                    from.getAsInt() + "–" + to.getAsInt(),
                    "The years are upside down; the row was left out.",
                    "Write from " + to.getAsInt() + " to " + from.getAsInt() + ".");
        }
        return new Validity(from, to, places, trades(row.cell("trade")));
    }

    private static List<Trade> trades(String cell) {
        List<Trade> trades = new ArrayList<>();
        for (String word : list(cell)) {
            trades.add(
                    Trade.of(word)
                            .orElseThrow(
                                    () ->
                                            unknown(
                                                    word,
                                                    "trade",
                                                    Stream.of(Trade.values())
                                                            .map(Trade::word)
                                                            .toList())));
        }
        return trades;
    }

    private static OptionalInt year(String cell, boolean first) {
        if (cell.isEmpty()) {
            return OptionalInt.empty();
        }
        return UncertainDate.parse(cell)
                .map(d -> first ? d.earliestYear() : d.latestYear())
                .orElseThrow(
                        () ->
                                new BadCell(
                                        cell,
                                        "This is no date in EDTF; the row was left out.",
                                        "Write a year such as 1862, 1862~ or 186X."));
    }

    private static double number(String cell) {
        try {
            double value = Double.parseDouble(cell.replace(',', '.'));
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException notANumber) {
            // falls through to the report
        }
        throw new BadCell(
                cell,
                "This is no number; the row was left out.",
                "Write digits such as 40 or 1.03.");
    }

    private static List<String> list(String cell) {
        if (cell.indexOf(';') < 0) {
            return cell.isBlank() ? List.of() : List.of(cell.strip());
        }
        return Stream.of(cell.split(";")).map(String::strip).filter(s -> !s.isEmpty()).toList();
    }

    private static BadCell unknown(String word, String what, List<String> known) {
        String nearest = Nearest.of(word, known);
        return new BadCell(
                word,
                "There is no " + what + " of this name; the row was left out.",
                "The nearest is "
                        + nearest
                        + "; there are "
                        + known.stream().collect(Collectors.joining(", "))
                        + ".");
    }

    private static List<String> words(Enum<?>[] values) {
        return Stream.of(values).map(v -> v.name().toLowerCase(Locale.ROOT)).toList();
    }
}
