package org.stillroom.measures.knowledge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.stillroom.measures.knowledge.Authority.Content;
import org.stillroom.measures.knowledge.Authority.Role;
import org.stillroom.measures.place.Gazetteer;
import org.stillroom.measures.rows.Nearest;
import org.stillroom.measures.rows.Row;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Size;

/**
 * Reads statements about measures from rows; the form is described in {@code
 * docs/knowledge-measures.md}.
 *
 * <p>A row that cannot be used is reported with its line, the reason and the nearest value that
 * would do; the other rows are read.
 */
public final class AuthorityReader {

    private static final List<String> TRADES =
            List.of("bar", "kitchen", "pharmacy", "distilling", "law", "reference", "cellar");

    private final UnitTable units;
    private final Works works;
    private final MeasureWords words;
    private final Gazetteer places;
    private final Map<String, Row> definitions = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    /** Makes a reader that knows these units, works, words and places. */
    public AuthorityReader(UnitTable units, Works works, MeasureWords words, Gazetteer places) {
        this.units = units;
        this.works = works;
        this.words = words;
        this.places = places;
    }

    /**
     * What was read.
     *
     * @param authorities the statements that can be used
     * @param words the vocabulary with the words that the file adds
     * @param problems what was left out or is doubtful, in the file's order
     */
    public record Result(List<Authority> authorities, MeasureWords words, List<Problem> problems) {

        /** Keeps the lists unchangeable. */
        public Result {
            authorities = List.copyOf(authorities);
            problems = List.copyOf(problems);
        }
    }

    /** Reads rows; words that are new become part of the vocabulary. */
    public Result read(List<Row> rows) {
        MeasureWords known = words;
        for (Row row : rows) {
            String word = canonical(row.get("word"));
            if (!word.isEmpty() && !row.get("unit").isEmpty()) {
                definitions.putIfAbsent(word, row);
            }
        }
        List<Authority> authorities = new ArrayList<>();
        for (Row row : rows) {
            Optional<Authority> authority = read(row);
            if (authority.isPresent()) {
                known = withWord(known, authority.get());
                authorities.add(authority.get());
            }
        }
        return new Result(authorities, known, problems);
    }

    private static MeasureWords withWord(MeasureWords known, Authority authority) {
        if (known.canonical(authority.word()).isPresent()) {
            return known;
        }
        return known.with(
                new MeasureWord(
                        authority.word(),
                        Optional.of(authority.dimension()),
                        MeasureWord.Kind.CUSTOMARY,
                        0,
                        Optional.empty(),
                        Rational.ONE,
                        authority.statement()));
    }

    private Optional<Authority> read(Row row) {
        int before = errors();
        if (row.get("word").isEmpty()) {
            report(row, "", "The row names no word of measure.", "Fill the column “word”.");
        }
        if (row.get("source").isEmpty()) {
            report(
                    row,
                    row.get("word"),
                    "The row names no source.",
                    "Write who says so: author, work and year, or “my own measurement, 2024”.");
        }
        Role role = role(row);
        if (role == Role.OWN_TABLE && row.get("book").isEmpty()) {
            report(
                    row,
                    row.get("word"),
                    "A line of a book's own table names no book.",
                    "Write the source's file below sources/ into the column “book”.");
        }
        checkPlaceAndTrade(row);
        Optional<Size> size = size(row);
        Optional<Resolved> resolved = resolve(row, role);
        if (errors() > before || resolved.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(authority(row, role, size, resolved.get()));
    }

    private int errors() {
        return (int) problems.stream().filter(p -> p.severity() == Problem.Severity.ERROR).count();
    }

    private void report(Row row, String found, String reason, String remedy) {
        problems.add(row.error(found, reason, remedy));
    }

    private Authority authority(Row row, Role role, Optional<Size> size, Resolved resolved) {
        Citation citation =
                works.cite(row.get("source"), Works.status(row.maybe("status").orElse("U")));
        return new Authority(
                row.maybe("id").orElse(row.file() + ":" + row.line()),
                canonical(row.get("word")),
                size,
                row.get("of").toLowerCase(Locale.ROOT),
                resolved.dimension(),
                resolved.content(),
                stated(row),
                places.code(row.get("place")).orElse(row.get("place")),
                row.year("from"),
                row.year("to"),
                row.get("trade"),
                citation,
                works.find(row.get("source")).map(Works.Work::shortName).orElse(row.get("source")),
                role,
                row.get("group"),
                row.get("statement"),
                row.get("book"));
    }

    private static String stated(Row row) {
        String amount =
                Stream.of("low", "likely", "high")
                        .map(row::get)
                        .filter(c -> !c.isEmpty())
                        .distinct()
                        .reduce((a, b) -> a + "–" + b)
                        .orElse("");
        return amount.isEmpty() ? "" : amount + " " + row.get("unit");
    }

    private String canonical(String printed) {
        return words.find(printed)
                .map(MeasureWord::word)
                .orElse(printed.toLowerCase(Locale.ROOT).strip());
    }

    private Role role(Row row) {
        String cell = row.maybe("role").orElse("statement").toUpperCase(Locale.ROOT);
        Optional<Role> role =
                Stream.of(Role.values())
                        .filter(r -> r.name().equals(cell.replace('-', '_')))
                        .findFirst();
        if (role.isEmpty()) {
            report(
                    row,
                    row.get("role"),
                    "The role is not known.",
                    Nearest.remedy(
                            row.get("role"),
                            List.of(
                                    "statement",
                                    "overrule",
                                    "outlier",
                                    "note",
                                    "warning",
                                    "own-table")));
        }
        return role.orElse(Role.NOTE);
    }

    private Optional<Size> size(Row row) {
        Optional<Size> size = row.maybe("size").flatMap(Size::of);
        if (size.isEmpty() && !row.get("size").isEmpty()) {
            List<String> sizes = Stream.of(Size.values()).map(Size::word).toList();
            report(
                    row,
                    row.get("size"),
                    "The size is not known.",
                    Nearest.remedy(row.get("size"), sizes));
        }
        return size;
    }

    private void checkPlaceAndTrade(Row row) {
        if (!row.get("trade").isEmpty() && !TRADES.contains(row.get("trade"))) {
            report(
                    row,
                    row.get("trade"),
                    "The trade is not known.",
                    Nearest.remedy(row.get("trade"), TRADES));
        }
        for (String place : row.list("place")) {
            if (places.code(place).isEmpty()) {
                report(
                        row,
                        place,
                        "The place is not in the gazetteer.",
                        "Add it to knowledge/places.csv, or name its country. "
                                + Nearest.remedy(place, places.names()));
            }
        }
        for (String column : List.of("from", "to")) {
            if (!row.get(column).isEmpty() && row.year(column).isEmpty()) {
                report(row, row.get(column), "This is not a year.", "Write a year such as 1862.");
            }
        }
        if (row.year("from").orElse(0) > row.year("to").orElse(Integer.MAX_VALUE)) {
            report(
                    row,
                    row.get("from") + "–" + row.get("to"),
                    "The years are the wrong way round.",
                    "Write from " + row.get("to") + " to " + row.get("from") + ".");
        }
    }

    /** An amount with what it is an amount of. */
    private record Resolved(Dimension dimension, Optional<Content> content) {}

    private Optional<Resolved> resolve(Row row, Role role) {
        Optional<Content> numbers = numbers(row);
        if (numbers.isEmpty()) {
            boolean wanted = role != Role.NOTE && role != Role.WARNING;
            if (wanted && errors(row) == 0) {
                report(
                        row,
                        row.get("word"),
                        "The row gives no amount.",
                        "Fill “likely”, or “low” and “high”, or set the role to “note”.");
            }
            return Optional.of(new Resolved(dimensionOf(row), Optional.empty()));
        }
        return unit(row, new HashSet<>())
                .map(u -> new Resolved(u.dimension(), Optional.of(numbers.get().times(u.size()))));
    }

    private int errors(Row row) {
        return (int) problems.stream().filter(p -> p.line().orElse(0) == row.line()).count();
    }

    private Dimension dimensionOf(Row row) {
        return units.find(row.get("unit")).map(LegalUnit::dimension).orElse(Dimension.VOLUME);
    }

    private Optional<Content> numbers(Row row) {
        for (String column : List.of("low", "likely", "high")) {
            String cell = row.get(column);
            Optional<Rational> number = row.number(column);
            if (!cell.isEmpty() && number.isEmpty()) {
                report(
                        row,
                        cell,
                        "“" + column + "” is not a number.",
                        "Write 2, 2.5, 5/2 or 2 1/2.");
                return Optional.empty();
            }
            if (number.isPresent() && number.get().signum() <= 0) {
                Rational positive = number.get().negate();
                report(
                        row,
                        cell,
                        "An amount must be more than nothing.",
                        positive.signum() > 0
                                ? "The nearest that would do is " + positive + "."
                                : "Leave the cell empty if the amount is not known.");
                return Optional.empty();
            }
        }
        return ordered(row);
    }

    private Optional<Content> ordered(Row row) {
        Optional<Rational> low = row.number("low");
        Optional<Rational> high = row.number("high");
        Optional<Rational> likely = row.number("likely").or(() -> middle(low, high));
        if (likely.isEmpty()) {
            return Optional.empty();
        }
        Content content =
                new Content(low.orElse(likely.get()), likely.get(), high.orElse(likely.get()));
        boolean upsideDown =
                content.low().compareTo(content.likely()) > 0
                        || content.likely().compareTo(content.high()) > 0;
        if (upsideDown) {
            List<Rational> sorted =
                    Stream.of(content.low(), content.likely(), content.high()).sorted().toList();
            report(
                    row,
                    stated(row),
                    "The range is upside down.",
                    "Write low "
                            + sorted.get(0)
                            + ", likely "
                            + sorted.get(1)
                            + ", high "
                            + sorted.get(2)
                            + ".");
            return Optional.empty();
        }
        return Optional.of(content);
    }

    private static Optional<Rational> middle(Optional<Rational> low, Optional<Rational> high) {
        if (low.isPresent() && high.isPresent()) {
            return Optional.of(low.get().plus(high.get()).dividedBy(Rational.of(2)));
        }
        return low.or(() -> high);
    }

    /** A unit's size in millilitres or grams. */
    private record UnitSize(Dimension dimension, Rational size) {}

    private Optional<UnitSize> unit(Row row, Set<String> above) {
        String code = row.get("unit");
        Optional<LegalUnit> unit = units.find(code);
        if (unit.isPresent()) {
            return unit.map(u -> new UnitSize(u.dimension(), u.amount()));
        }
        String word = canonical(code);
        above.add(canonical(row.get("word")));
        Row definition = definitions.get(word);
        if (code.isEmpty() || definition == null) {
            report(
                    row,
                    code,
                    code.isEmpty() ? "The row names no unit." : "The unit is not known.",
                    Nearest.remedy(code, units.codes()));
            return Optional.empty();
        }
        if (above.contains(word)) {
            report(
                    row,
                    canonical(row.get("word")) + " = " + row.get("likely") + " " + code,
                    "The definition goes round in a circle: "
                            + String.join(", ", above.stream().sorted().toList())
                            + ".",
                    "Define one of them in a unit such as ml, imp-fl-oz or us-fl-oz.");
            return Optional.empty();
        }
        return unit(definition, above)
                .flatMap(
                        u ->
                                definition
                                        .number("likely")
                                        .map(n -> new UnitSize(u.dimension(), n.times(u.size()))));
    }
}
