package org.stillroom.measures;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.stillroom.measures.MeasureMeaning.Answer;
import org.stillroom.measures.MeasureMeaning.Measured;
import org.stillroom.measures.book.Definition;
import org.stillroom.measures.book.Equation;
import org.stillroom.measures.book.KnownMeasures;
import org.stillroom.measures.book.Side;
import org.stillroom.measures.format.AmountFormat;
import org.stillroom.measures.knowledge.Authority;
import org.stillroom.measures.knowledge.Authority.Content;
import org.stillroom.measures.knowledge.Dimension;
import org.stillroom.measures.knowledge.MeasureWord;
import org.stillroom.measures.system.Where;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.estimate.Origin;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.number.Rational;

/**
 * What a measure meant that the book itself defines by another.
 *
 * @param word the measure
 * @param own the book's definition
 * @param base what the measure that it is defined by meant
 * @param where the circumstances
 */
record OwnMeaning(MeasureWord word, Definition own, Measured base, Where where) {

    private static final String SET_ASIDE = "set aside by the book's own table";

    Measured meaning(Gathering gathering, Optional<Estimate> size) {
        Estimate plain =
                own.ratio().isExact()
                        ? base.one().times(own.ratio().low())
                        : base.one().times(Estimate.of(unknown()));
        Estimate one = size.map(plain::times).orElse(plain);
        String reason = reason(one);
        Rational factor = own.ratio().middle();
        List<Answer> answers =
                base.answers().stream()
                        .map(a -> new Answer(a.amount() * factor.toDouble(), a.share(), a.who()))
                        .toList();
        Optional<Rational> exact =
                own.ratio().isExact() && size.isEmpty()
                        ? base.exact().map(e -> e.times(own.ratio().low()))
                        : Optional.empty();
        List<WeightedAuthority> said = said(one);
        List<Explanation> because = new ArrayList<>();
        own.said()
                .forEach(
                        e ->
                                because.add(
                                        Explanation.of(
                                                "The book says “"
                                                        + e.words()
                                                        + "” ("
                                                        + e.where()
                                                        + "); for this book that outranks every"
                                                        + " other authority.")));
        because.add(base.explanation());
        List<WeightedAuthority> all = new ArrayList<>(said);
        all.addAll(setAside(gathering));
        return new Measured(
                word.word(),
                Dimension.VOLUME,
                one,
                exact,
                all,
                answers,
                base.systems(),
                reason,
                gathering.warnings(word),
                Explanation.of(reason, because));
    }

    private Origin unknown() {
        return Origin.pert(
                "how many "
                        + own.base()
                        + " one "
                        + own.name()
                        + " of the book holds ("
                        + where.text()
                        + ")",
                own.ratio().low().toDouble(),
                own.ratio().middle().toDouble(),
                own.ratio().high().toDouble());
    }

    private String reason(Estimate one) {
        String says =
                own.said().stream()
                        .map(e -> "“" + e.words() + "” (" + e.where() + ")")
                        .distinct()
                        .collect(Collectors.joining(", "));
        return "The book's own table says "
                + says
                + "; so one "
                + own.name()
                + " is "
                + own.ratio()
                + " of its "
                + own.base()
                + ", "
                + AmountFormat.write(one, "ml")
                + ". "
                + base.reason();
    }

    private List<WeightedAuthority> said(Estimate one) {
        List<WeightedAuthority> said = new ArrayList<>();
        for (Equation e : own.said()) {
            boolean first = said.isEmpty();
            Optional<Content> content = first ? Optional.of(content(one)) : Optional.empty();
            Side side = new Side(Rational.ONE, Rational.ONE, Optional.empty(), word.word());
            Authority a =
                    KnownMeasures.authority(
                            e, side, "", Dimension.VOLUME, content, own.ratio() + " " + own.base());
            said.add(
                    new WeightedAuthority(
                            a, "", first ? 1 : 0, first ? "the book's own table" : "leads there"));
        }
        return said;
    }

    private static Content content(Estimate one) {
        return new Content(
                Rational.of(BigDecimal.valueOf(one.low())),
                Rational.of(BigDecimal.valueOf(one.likely())),
                Rational.of(BigDecimal.valueOf(one.high())));
    }

    private List<WeightedAuthority> setAside(Gathering gathering) {
        return gathering.find(word, Dimension.VOLUME).candidates().stream()
                .sorted(
                        java.util.Comparator.comparingDouble((Candidate c) -> -c.weight())
                                .thenComparing(c -> c.authority().id()))
                .map(
                        c ->
                                new WeightedAuthority(
                                        c.authority(),
                                        gathering.weigher().placeName(c.authority()),
                                        0,
                                        SET_ASIDE))
                .toList();
    }
}
