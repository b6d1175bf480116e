package org.stillroom.report.figure;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.stillroom.measures.WeightedAuthority;
import org.stillroom.measures.WordAccount;
import org.stillroom.measures.WordAccount.Statement;
import org.stillroom.measures.format.AmountFormat;
import org.stillroom.measures.knowledge.Authority;

/**
 * The statements of a figure that give an amount, with the places that they are grouped by.
 *
 * @param all one mark a statement, in the order of the table
 * @param places the groups, that with most marks first
 * @param firstYear where the years start
 * @param lastYear where they end
 */
record MeasureMarks(List<Mark> all, List<String> places, int firstYear, int lastYear) {

    private static final int MOST_PLACES = 6;
    private static final String ELSEWHERE = "other places";
    private static final String NOWHERE = "no place stated";

    /** Where the years of a figure start and end for lack of any date. */
    private static final int EARLIEST = 1800;

    private static final int LATEST = 2000;

    /** One statement; years and amounts as drawn. */
    record Mark(
            int number,
            String group,
            boolean counts,
            double from,
            double year,
            double to,
            double low,
            double likely,
            double high,
            String words) {}

    static MeasureMarks of(WordAccount account) {
        List<Statement> drawn =
                account.statements().stream()
                        .filter(s -> s.measures(account.dimension()))
                        .filter(s -> s.said().amount() > 0 && s.said().limits()[0] > 0)
                        .toList();
        int first =
                drawn.stream()
                        .map(s -> s.said().authority())
                        .map(a -> a.from().isPresent() ? a.from() : a.to())
                        .filter(OptionalInt::isPresent)
                        .mapToInt(OptionalInt::getAsInt)
                        .min()
                        .orElse(EARLIEST);
        int last =
                drawn.stream()
                        .map(s -> s.said().authority())
                        .map(a -> a.to().isPresent() ? a.to() : a.from())
                        .filter(OptionalInt::isPresent)
                        .mapToInt(OptionalInt::getAsInt)
                        .max()
                        .orElse(LATEST);
        int from = Math.min(first, account.years().map(y -> y.from()).orElse(first));
        int to = Math.max(Math.max(last, LATEST), account.years().map(y -> y.to()).orElse(last));
        List<String> places = places(drawn);
        List<Mark> marks = drawn.stream().map(s -> mark(s, account, places, from, to)).toList();
        List<String> used =
                java.util.stream.Stream.concat(
                                places.stream(), java.util.stream.Stream.of(ELSEWHERE))
                        .filter(p -> marks.stream().anyMatch(m -> m.group().equals(p)))
                        .toList();
        return new MeasureMarks(marks, used, from, to);
    }

    /** Returns the places with most statements; a mark's shape tells them apart. */
    private static List<String> places(List<Statement> drawn) {
        Map<String, Long> counted =
                drawn.stream()
                        .collect(Collectors.groupingBy(MeasureMarks::place, Collectors.counting()));
        return counted.entrySet().stream()
                .sorted(
                        Comparator.comparing((Map.Entry<String, Long> e) -> -e.getValue())
                                .thenComparing(Map.Entry::getKey))
                .limit(MOST_PLACES)
                .map(Map.Entry::getKey)
                .toList();
    }

    private static String place(Statement s) {
        String name = s.said().placeName();
        return name.isEmpty() ? NOWHERE : name;
    }

    private static Mark mark(
            Statement s, WordAccount account, List<String> places, int first, int last) {
        WeightedAuthority a = s.said();
        Authority authority = a.authority();
        double from = authority.from().orElse(first);
        double to = authority.to().orElse(last);
        double[] limits = a.limits();
        String group = places.contains(place(s)) ? place(s) : ELSEWHERE;
        String words =
                s.number()
                        + ": "
                        + a.source()
                        + ", "
                        + place(s)
                        + (a.date().isEmpty() ? "" : ", " + a.date())
                        + ", "
                        + AmountFormat.write(
                                limits[0], a.amount(), limits[1], account.dimension().symbol());
        return new Mark(
                s.number(),
                group,
                s.counts(),
                from,
                (from + to) / 2,
                to,
                limits[0],
                a.amount(),
                limits[1],
                words);
    }

    double least() {
        return all.stream().mapToDouble(Mark::low).min().orElse(1);
    }

    double most() {
        return all.stream().mapToDouble(Mark::high).max().orElse(1);
    }
}
