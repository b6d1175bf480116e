package org.stillroom.measures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.stillroom.measures.MeasureMeaning.Answer;
import org.stillroom.measures.MeasureMeaning.Measured;
import org.stillroom.measures.MeasureMeaning.Open;
import org.stillroom.measures.MeasureMeaning.Unknown;
import org.stillroom.measures.MeasureMeaning.Unmeasured;
import org.stillroom.measures.book.Definition;
import org.stillroom.measures.format.AmountFormat;
import org.stillroom.measures.knowledge.Authority;
import org.stillroom.measures.knowledge.Dimension;
import org.stillroom.measures.knowledge.MeasureWord;
import org.stillroom.measures.system.BookContext;
import org.stillroom.measures.system.SystemPosterior;
import org.stillroom.measures.system.Where;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.estimate.Origin;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.number.Rational;
import org.stillroom.model.source.Trade;

/** Finds what one word meant in one set of circumstances. */
final class Resolver {

    /** Part of the weight left out at either end of a range; common practice, no source. */
    private static final double TAIL = 0.075;

    /** The same where place or date is not known, so that the range is wider. */
    private static final double TAIL_UNKNOWN = 0.025;

    private final Knowledge knowledge;
    private final BookContext book;
    private final MeasureQuestion question;
    private final Where where;
    private final SystemPosterior systems;

    Resolver(Knowledge knowledge, BookContext book, Setting setting, MeasureQuestion question) {
        this.knowledge = knowledge;
        this.book = book;
        this.question = question;
        this.where = setting.where();
        this.systems = setting.systems();
    }

    MeasureMeaning resolve() {
        Optional<MeasureWord> found = knowledge.words().find(question.word());
        if (found.isEmpty()) {
            return new Unknown(question.word(), knowledge.words().nearest(question.word(), 3));
        }
        MeasureWord word = meant(found.get());
        if (word.dimension().isEmpty()) {
            return open(word);
        }
        Dimension dimension = dimension(word);
        Optional<Definition> own =
                dimension == Dimension.VOLUME ? defined(word.word()) : Optional.empty();
        if (own.isPresent()) {
            return fromOwnTable(word, own.get());
        }
        if (word.base().isPresent() && dimension == Dimension.VOLUME && !saysItself(word)) {
            return fromBase(word);
        }
        Gathering gathering = new Gathering(knowledge, book, question, where, systems);
        Gathering.Found candidates = gathering.find(word, dimension);
        double weight = candidates.candidates().stream().mapToDouble(Candidate::weight).sum();
        return weight > 0
                ? measured(word, dimension, gathering, candidates)
                : nothing(word, gathering);
    }

    /** An ounce that is poured is a fluid ounce; a pharmacist's dram is the drachm. */
    private MeasureWord meant(MeasureWord word) {
        Optional<Trade> trade = where.trade();
        boolean poured =
                question.matter() == Matter.LIQUID
                        || question.matter() == Matter.UNKNOWN
                                && trade.map(t -> t == Trade.BAR).orElse(true);
        if (word.word().equals("oz") && poured) {
            return knowledge.words().canonical("fluid ounce").orElse(word);
        }
        if (word.word().equals("dram") && trade.filter(t -> t == Trade.PHARMACY).isPresent()) {
            return knowledge.words().canonical("drachm").orElse(word);
        }
        return word;
    }

    private static Open open(MeasureWord word) {
        String meaning = word.meaning().isEmpty() ? "No amount is stated." : word.meaning();
        return new Open(word.word(), meaning);
    }

    private Dimension dimension(MeasureWord word) {
        Dimension usual = word.dimension().orElseThrow();
        if (word.kind() == MeasureWord.Kind.FRUIT) {
            return usual;
        }
        Dimension wanted = question.matter() == Matter.SOLID ? Dimension.MASS : usual;
        boolean weighable =
                wanted == Dimension.MASS
                        && (knowledge.of(word.word()).stream()
                                        .anyMatch(
                                                a ->
                                                        a.dimension() == Dimension.MASS
                                                                && a.counts()
                                                                && a.isAbout(question.thing()))
                                || knowledge.units().ofWord(word.word()).stream()
                                        .anyMatch(u -> u.dimension() == Dimension.MASS));
        return weighable ? Dimension.MASS : usual;
    }

    private boolean saysItself(MeasureWord word) {
        boolean inBook =
                book.ownTable().rows().stream().anyMatch(a -> a.word().equals(word.word()));
        return inBook
                || knowledge.of(word.word()).stream()
                        .anyMatch(a -> a.role() == Authority.Role.OVERRULE);
    }

    private Optional<Definition> defined(String word) {
        return book.ownTable()
                .definition(question.size(), word)
                .or(() -> book.ownTable().definition(Optional.empty(), word));
    }

    /** A measure of the book's own table is so many of another, whose unknown it shares. */
    private MeasureMeaning fromOwnTable(MeasureWord word, Definition own) {
        MeasureQuestion asked =
                question.withWord(own.base()).withoutSize().about(Matter.LIQUID, "");
        MeasureMeaning base =
                new Resolver(knowledge, book, new Setting(where, systems), asked).resolve();
        if (!(base instanceof Measured m)) {
            return base;
        }
        Gathering gathering = new Gathering(knowledge, book, question, where, systems);
        boolean named = own.name().equals(word.word());
        Optional<Knowledge.SizeFactor> size = named ? size(Dimension.VOLUME) : Optional.empty();
        return new OwnMeaning(word, own, m, where).meaning(gathering, size.map(this::factor));
    }

    private Estimate factor(Knowledge.SizeFactor size) {
        return resized(Estimate.exact(Rational.ONE), size);
    }

    /** A quart shares the unknown of its pint, so that their ratio stays exact. */
    private MeasureMeaning fromBase(MeasureWord word) {
        MeasureQuestion asked =
                question.withWord(word.base().orElseThrow()).about(Matter.LIQUID, question.thing());
        MeasureMeaning base =
                new Resolver(knowledge, book, new Setting(where, systems), asked).resolve();
        if (!(base instanceof Measured m)) {
            return base;
        }
        Rational factor = word.factor();
        Estimate one = m.one().times(factor);
        String reason =
                "One "
                        + word.word()
                        + " is "
                        + factor
                        + " of the "
                        + m.word()
                        + ", "
                        + AmountFormat.write(one, "ml")
                        + ". "
                        + m.reason();
        List<Answer> answers =
                m.answers().stream()
                        .map(a -> new Answer(a.amount() * factor.toDouble(), a.share(), a.who()))
                        .toList();
        return new Measured(
                word.word(),
                m.dimension(),
                one,
                m.exact().map(e -> e.times(factor)),
                ladder(word, m),
                answers,
                m.systems(),
                reason,
                m.warnings(),
                Explanation.of(reason, m.explanation()));
    }

    /** Shows the word's own definitions with the weight that their systems have for the base. */
    private List<WeightedAuthority> ladder(MeasureWord word, Measured base) {
        Gathering gathering = new Gathering(knowledge, book, question, where, systems);
        List<Candidate> own = gathering.find(word, Dimension.VOLUME).candidates();
        List<WeightedAuthority> shown = weighted(own, gathering);
        return shown.isEmpty() ? base.authorities() : shown;
    }

    private MeasureMeaning nothing(MeasureWord word, Gathering gathering) {
        List<String> warnings = gathering.warnings(word);
        String of = question.thing().isEmpty() ? "" : " of " + question.thing();
        String reason =
                warnings.isEmpty()
                        ? "No figure is known for a " + word.word() + of + "."
                        : "No safe figure is known for a "
                                + word.word()
                                + of
                                + ": "
                                + warnings.getFirst();
        List<Explanation> because = warnings.stream().map(w -> Explanation.of(w)).toList();
        return new Unmeasured(word.word(), reason, warnings, Explanation.of(reason, because));
    }

    private Measured measured(
            MeasureWord word, Dimension dimension, Gathering gathering, Gathering.Found found) {
        List<Candidate> candidates = found.candidates();
        Range range = range(candidates, word.scatter());
        Optional<Rational> exact =
                range.low() == range.high() ? exact(candidates, range.likely()) : Optional.empty();
        Estimate one =
                exact.map(Estimate::exact)
                        .orElseGet(() -> unknown(name(word, dimension, found), range));
        Optional<Knowledge.SizeFactor> size = found.sized() ? Optional.empty() : size(dimension);
        Finding finding =
                new Finding(
                        word,
                        dimension,
                        question,
                        new Setting(where, systems),
                        size.map(s -> resized(one, s)).orElse(one),
                        size.isEmpty() ? exact : Optional.empty(),
                        weighted(candidates, gathering),
                        Answers.of(candidates),
                        gathering.warnings(word),
                        size);
        return meaning(finding, gathering);
    }

    private Measured meaning(Finding f, Gathering gathering) {
        String reason = Reasons.sentence(f);
        List<WeightedAuthority> all = new ArrayList<>(f.authorities());
        all.addAll(gathering.spoken(f.word(), f.dimension()));
        return new Measured(
                f.word().word(),
                f.dimension(),
                f.one(),
                f.exact(),
                all,
                f.answers(),
                systems,
                reason,
                f.warnings(),
                Reasons.tree(f, reason, knowledge.customary()));
    }

    /** Ends and likely value of an amount. */
    private record Range(double low, double likely, double high) {}

    private Range range(List<Candidate> candidates, double scatter) {
        double tail = where.isKnown() ? TAIL : TAIL_UNKNOWN;
        double likely = Candidate.likeliest(candidates);
        double low = Candidate.quantile(candidates, Candidate::low, tail);
        double high = Candidate.quantile(candidates, Candidate::high, 1 - tail);
        return new Range(
                Math.min(low, likely * (1 - scatter)),
                likely,
                Math.max(high, likely * (1 + scatter)));
    }

    private static Estimate unknown(String name, Range range) {
        return Estimate.of(Origin.pert(name, range.low(), range.likely(), range.high()));
    }

    private Optional<Knowledge.SizeFactor> size(Dimension dimension) {
        String of = dimension == Dimension.MASS ? "mass" : "volume";
        return question.size().flatMap(s -> knowledge.size(s.word(), of));
    }

    private static Optional<Rational> exact(List<Candidate> candidates, double likely) {
        return candidates.stream()
                .filter(c -> c.weight() > 0 && c.likely() == likely)
                .map(c -> c.authority().content().orElseThrow().likely())
                .findFirst();
    }

    private String name(MeasureWord word, Dimension dimension, Gathering.Found found) {
        String of = found.specific() ? " of " + question.thing() : "";
        String size = found.sized() ? question.size().map(s -> s.word() + " ").orElse("") : "";
        String mass = dimension == Dimension.MASS ? " by weight" : "";
        return size + word.word() + of + mass + " (" + where.text() + ")";
    }

    private Estimate resized(Estimate one, Knowledge.SizeFactor size) {
        if (size.low() == size.high()) {
            return one;
        }
        String name = "how " + size.size() + " a " + size.size() + " one is (" + where.text() + ")";
        return one.times(
                Estimate.of(
                        Origin.pert(
                                name + (size.dimension().equals("mass") ? " by weight" : ""),
                                size.low(),
                                size.likely(),
                                size.high())));
    }

    private static List<WeightedAuthority> weighted(
            List<Candidate> candidates, Gathering gathering) {
        double total = candidates.stream().mapToDouble(Candidate::weight).sum();
        return candidates.stream()
                .sorted(
                        Comparator.comparingDouble((Candidate c) -> -c.weight())
                                .thenComparing(c -> Gathering.year(c.authority()))
                                .thenComparing(c -> c.authority().id()))
                .map(
                        c ->
                                new WeightedAuthority(
                                        c.authority(),
                                        gathering.weigher().placeName(c.authority()),
                                        total > 0 ? c.weight() / total : 0,
                                        c.why()))
                .collect(Collectors.toList());
    }
}
