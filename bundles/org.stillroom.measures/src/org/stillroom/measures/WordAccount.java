package org.stillroom.measures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.stillroom.measures.MeasureMeaning.Measured;
import org.stillroom.measures.format.AmountFormat;
import org.stillroom.measures.knowledge.Authority;
import org.stillroom.measures.knowledge.Dimension;
import org.stillroom.measures.knowledge.MeasureWord;
import org.stillroom.measures.system.Where;
import org.stillroom.measures.system.YearRange;

/**
 * Everything that is said about a word of measure, with how much each statement counts in given
 * circumstances.
 *
 * @param word the canonical word, or the printed one where it is not known
 * @param where the circumstances in words
 * @param years the years asked for, where a date is given
 * @param meaning what the word meant there and then
 * @param dimension volume or mass
 * @param statements every statement, the weightiest first, then by year
 * @param disagreement how far those that count differ, one sentence
 */
public record WordAccount(
        String word,
        String where,
        Optional<YearRange> years,
        MeasureMeaning meaning,
        Dimension dimension,
        List<Statement> statements,
        String disagreement) {

    private static final double COUNTS = 0.005;
    private static final double SAME = 1.02;

    /** Keeps the statements unchangeable. */
    public WordAccount {
        statements = List.copyOf(statements);
    }

    /**
     * One statement.
     *
     * @param said the statement with its weight
     * @param number its number in the figure and in the table, from 1
     */
    public record Statement(WeightedAuthority said, int number) {

        /** Tells whether it gives an amount of this dimension. */
        public boolean measures(Dimension dimension) {
            return said.authority().dimension() == dimension
                    && said.authority().content().isPresent();
        }

        /** Tells whether it carries any weight in the circumstances. */
        public boolean counts() {
            return said.share() >= COUNTS;
        }
    }

    /** Returns everything that a table says about the word of a question. */
    public static WordAccount of(MeasureTable table, MeasureQuestion question) {
        MeasureMeaning meaning = table.resolve(question);
        Where where = Where.of(question.where(), table.places());
        Dimension dimension = dimension(table, meaning);
        List<WeightedAuthority> all = new ArrayList<>();
        if (meaning instanceof Measured m) {
            all.addAll(m.authorities());
        }
        Set<String> weighed = all.stream().map(a -> a.authority().id()).collect(Collectors.toSet());
        table.authorities(meaning.word()).stream()
                .filter(a -> !weighed.contains(a.id()))
                .map(a -> new WeightedAuthority(a, place(table, a), 0, aside(a, dimension)))
                .forEach(all::add);
        all.sort(
                Comparator.comparing((WeightedAuthority a) -> a.share() < COUNTS)
                        .thenComparingDouble(a -> a.share() < COUNTS ? 0 : -a.share())
                        .thenComparingInt(a -> Gathering.year(a.authority()))
                        .thenComparing(a -> a.authority().id()));
        List<Statement> statements = new ArrayList<>();
        all.forEach(a -> statements.add(new Statement(a, statements.size() + 1)));
        return new WordAccount(
                meaning.word(),
                where.text(),
                where.years(),
                meaning,
                dimension,
                statements,
                disagreement(statements, meaning, dimension));
    }

    private static Dimension dimension(MeasureTable table, MeasureMeaning meaning) {
        if (meaning instanceof Measured m) {
            return m.dimension();
        }
        return table.words()
                .canonical(meaning.word())
                .flatMap(MeasureWord::dimension)
                .orElse(Dimension.VOLUME);
    }

    private static String place(MeasureTable table, Authority a) {
        String place = a.place();
        int end = place.indexOf(';');
        String first = end < 0 ? place : place.substring(0, end);
        return first.isEmpty() ? "" : table.places().nameOf(first);
    }

    /** Says why a statement was not weighed for this question. */
    private static String aside(Authority a, Dimension dimension) {
        if (!a.counts()) {
            return a.content().isPresent() ? "replaced by a later figure" : "gives no number";
        }
        if (a.dimension() != dimension) {
            return a.dimension() == Dimension.MASS ? "speaks of a weight" : "speaks of a volume";
        }
        if (!a.of().isEmpty()) {
            return "speaks of " + a.of();
        }
        return a.size().map(s -> "speaks of a " + s.word() + " one").orElse("set aside here");
    }

    private static String disagreement(
            List<Statement> all, MeasureMeaning meaning, Dimension dimension) {
        List<WeightedAuthority> counting =
                all.stream()
                        .filter(Statement::counts)
                        .filter(s -> s.measures(dimension))
                        .map(Statement::said)
                        .sorted(Comparator.comparingDouble(WeightedAuthority::amount))
                        .toList();
        if (counting.isEmpty()) {
            return meaning.reason();
        }
        WeightedAuthority least = counting.getFirst();
        WeightedAuthority most = counting.getLast();
        String number =
                counting.size() == 1
                        ? "One statement counts"
                        : counting.size() + " statements count";
        if (most.amount() <= least.amount() * SAME) {
            return number
                    + " here"
                    + (counting.size() == 1 ? ": " : ", and they agree: ")
                    + stated(least, dimension)
                    + ".";
        }
        return number
                + " here, and they disagree: from "
                + stated(least, dimension)
                + " to "
                + stated(most, dimension)
                + String.format(
                        Locale.ROOT, ", %.1f times as much.", most.amount() / least.amount());
    }

    private static String stated(WeightedAuthority a, Dimension dimension) {
        String source = a.source() + (a.placeName().isEmpty() ? "" : ", " + a.placeName());
        return AmountFormat.exact(Math.round(a.amount() * 100) / 100.0)
                + " "
                + dimension.symbol()
                + " ("
                + source
                + ")";
    }
}
