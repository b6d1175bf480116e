package org.stillroom.measures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.stillroom.measures.knowledge.Authority;
import org.stillroom.measures.knowledge.Authority.Content;
import org.stillroom.measures.knowledge.Authority.Role;
import org.stillroom.measures.knowledge.Dimension;
import org.stillroom.measures.knowledge.LegalUnit;
import org.stillroom.measures.knowledge.MeasureWord;
import org.stillroom.measures.place.Locality;
import org.stillroom.measures.system.BookContext;
import org.stillroom.measures.system.SystemPosterior;
import org.stillroom.measures.system.Where;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.reading.Size;
import org.stillroom.model.source.Trade;

/** Gathers the statements that answer a question and weighs each of them. */
final class Gathering {

    /** How much nearer a statement about this very stuff is; common practice, no source. */
    private static final double SPECIFIC = 2;

    /** How much more the user's own rows count than ours; common practice, no source. */
    private static final double USER = 3;

    private final Knowledge knowledge;
    private final BookContext book;
    private final MeasureQuestion question;
    private final Where where;
    private final Weigher weigher;
    private final SystemPosterior systems;

    Gathering(
            Knowledge knowledge,
            BookContext book,
            MeasureQuestion question,
            Where where,
            SystemPosterior systems) {
        this.knowledge = knowledge;
        this.book = book;
        this.question = question;
        this.where = where;
        this.systems = systems;
        this.weigher = new Weigher(where, knowledge.places(), knowledge.tongues());
    }

    /**
     * What was gathered.
     *
     * @param candidates the statements with their weights
     * @param specific whether they speak of the very stuff
     * @param sized whether they speak of the very size
     */
    record Found(List<Candidate> candidates, boolean specific, boolean sized) {}

    Found find(MeasureWord word, Dimension dimension) {
        List<Authority> own = own(word, dimension);
        if (!own.isEmpty()) {
            return all(own, "the book's own table");
        }
        List<Authority> spoken =
                knowledge.of(word.word()).stream()
                        .filter(a -> a.counts() && a.dimension() == dimension)
                        .toList();
        List<Authority> overruling =
                spoken.stream()
                        .filter(a -> a.role() == Role.OVERRULE && fits(a))
                        .filter(a -> weigher.weigh(a).value() > 0.1)
                        .toList();
        if (!overruling.isEmpty()) {
            return all(overruling, "this library's own row, which sets ours aside");
        }
        boolean specific = spoken.stream().anyMatch(a -> isAbout(a, true));
        List<Authority> about = about(word, spoken, dimension, specific);
        boolean sized = question.size().isPresent() && about.stream().anyMatch(this::ofSize);
        Predicate<Authority> size =
                sized ? this::ofSize : noSize(about) ? a -> a.size().isEmpty() : a -> true;
        List<Candidate> candidates = new ArrayList<>(laws(word, dimension));
        candidates.addAll(
                weighed(about.stream().filter(size).toList(), List.copyOf(candidates), specific));
        return new Found(candidates, specific, sized);
    }

    private List<Authority> own(MeasureWord word, Dimension dimension) {
        return book.ownTable().rows().stream()
                .filter(a -> a.word().equals(word.word()) && a.dimension() == dimension)
                .filter(a -> a.content().isPresent() && fits(a))
                .toList();
    }

    private boolean fits(Authority a) {
        return a.of().isEmpty() || isAbout(a, true);
    }

    private static Found all(List<Authority> authorities, String why) {
        return new Found(
                authorities.stream().map(a -> new Candidate(a, 1, why)).toList(), false, false);
    }

    private boolean ofSize(Authority a) {
        return a.size().equals(question.size());
    }

    private static boolean noSize(List<Authority> authorities) {
        return authorities.stream().anyMatch(a -> a.size().isEmpty());
    }

    private boolean isAbout(Authority a, boolean loosely) {
        return loosely ? a.isAbout(question.thing()) : isExactlyAbout(a);
    }

    private boolean isExactlyAbout(Authority a) {
        return !a.of().isEmpty() && a.of().equals(question.thing());
    }

    /** Picks the statements about the stuff; about another stuff only where nothing was named. */
    private List<Authority> about(
            MeasureWord word, List<Authority> spoken, Dimension dimension, boolean specific) {
        List<Authority> general = spoken.stream().filter(a -> a.of().isEmpty()).toList();
        if (specific) {
            boolean exactly = spoken.stream().anyMatch(a -> isAbout(a, false));
            List<Authority> about =
                    new ArrayList<>(spoken.stream().filter(a -> isAbout(a, !exactly)).toList());
            if (dimension == Dimension.VOLUME) {
                about.addAll(general);
            }
            return about;
        }
        if (!general.isEmpty() || word.kind() == MeasureWord.Kind.FRUIT) {
            return general;
        }
        boolean sugar = spoken.stream().anyMatch(a -> a.of().equals("sugar"));
        return sugar && question.thing().isEmpty()
                ? spoken.stream().filter(a -> a.of().equals("sugar")).toList()
                : question.thing().isEmpty() ? spoken : List.of();
    }

    private List<Candidate> weighed(
            List<Authority> authorities, List<Candidate> laws, boolean specific) {
        Map<String, Long> groups =
                authorities.stream()
                        .filter(a -> !a.group().isEmpty())
                        .collect(Collectors.groupingBy(Authority::group, Collectors.counting()));
        List<Candidate> candidates = new ArrayList<>();
        for (Authority a : authorities) {
            Optional<Candidate> law = laws.stream().filter(l -> agrees(l, a)).findFirst();
            Weigher.Weight weight = weigher.weigh(a);
            double value = weight.value() / groups.getOrDefault(a.group(), 1L);
            if (a.citation().status() == Citation.Status.USER) {
                value *= USER;
            }
            if (specific && !a.of().isEmpty()) {
                value *= SPECIFIC;
            }
            candidates.add(
                    law.isPresent()
                            ? new Candidate(a, 0, "agrees with the definition")
                            : new Candidate(a, value, weight.why()));
        }
        return candidates;
    }

    private static boolean agrees(Candidate law, Authority a) {
        double stated = a.content().orElseThrow().likely().toDouble();
        return Math.abs(law.likely() / stated - 1) < 0.005;
    }

    private List<Candidate> laws(MeasureWord word, Dimension dimension) {
        List<LegalUnit> units =
                knowledge.units().ofWord(word.word()).stream()
                        .filter(u -> u.dimension() == dimension)
                        .toList();
        List<Candidate> weighted =
                units.stream()
                        .map(u -> new Candidate(authority(u), share(u), "by the likely system"))
                        .toList();
        double total = weighted.stream().mapToDouble(Candidate::weight).sum();
        if (total < 0.001) {
            weighted =
                    units.stream()
                            .map(u -> new Candidate(authority(u), distance(u), "by its place"))
                            .toList();
            double nearness = weighted.stream().mapToDouble(Candidate::weight).sum();
            double whole = Math.max(nearness, 1e-9);
            boolean alone = knowledge.of(word.word()).stream().noneMatch(Authority::counts);
            return weighted.stream().map(c -> c.times(alone ? 1 / whole : 1)).toList();
        }
        return weighted.stream().map(c -> c.times(1 / total)).toList();
    }

    private double distance(LegalUnit unit) {
        return weigher.weigh(authority(unit)).value();
    }

    private double share(LegalUnit unit) {
        double share =
                switch (unit.system().id()) {
                    case "avoirdupois" -> weighsByTroy() ? 0.3 : 0.97;
                    case "apothecaries" -> weighsByTroy() ? 0.7 : 0.03;
                    default -> systems.share(unit.system().id());
                };
        boolean elsewhere =
                where.place().isPresent()
                        && !unit.places().isEmpty()
                        && unit.dimension() == Dimension.MASS
                        && unit.places().stream().noneMatch(where.place().get()::isWithin);
        return elsewhere ? share * 0.1 : share;
    }

    /** Pharmacists dispensed by the apothecaries' table until it gave way to the metric one. */
    private boolean weighsByTroy() {
        return where.trade().filter(t -> t == Trade.PHARMACY).isPresent();
    }

    private Authority authority(LegalUnit unit) {
        return new Authority(
                unit.id().isEmpty() ? unit.code() : unit.id(),
                unit.word(),
                Optional.<Size>empty(),
                "",
                unit.dimension(),
                Optional.of(new Content(unit.amount(), unit.amount(), unit.amount())),
                unit.code(),
                String.join(";", unit.places()),
                unit.from(),
                unit.to(),
                "law",
                unit.citation(),
                unit.system().label(),
                Role.STATEMENT,
                "",
                unit.statement(),
                "");
    }

    /** Returns the statements about a word that carry no number, and those set aside. */
    List<WeightedAuthority> spoken(MeasureWord word, Dimension dimension) {
        return knowledge.of(word.word()).stream()
                .filter(a -> !a.counts() && a.role() != Role.OWN_TABLE)
                .filter(a -> a.content().isEmpty() || a.dimension() == dimension)
                .map(a -> new WeightedAuthority(a, weigher.placeName(a), 0, "does not count"))
                .toList();
    }

    /** Returns the warnings about a word that may concern these circumstances. */
    List<String> warnings(MeasureWord word) {
        return knowledge.of(word.word()).stream()
                .filter(a -> a.role() == Role.WARNING)
                .filter(a -> a.of().isEmpty() || isAbout(a, true) || mayBeAbout(word))
                .filter(a -> weigher.weigh(a).value() > 0.01 || !where.isKnown())
                .filter(a -> word.kind() != MeasureWord.Kind.LEGAL || isOfThePlace(a))
                .map(a -> a.statement() + " (" + a.shortName() + ")")
                .toList();
    }

    /** Where no stuff is named a warning about one may concern it, but not a legal measure. */
    private boolean mayBeAbout(MeasureWord word) {
        return question.thing().isEmpty() && word.kind() != MeasureWord.Kind.LEGAL;
    }

    /** A legal measure of one country has nothing to fear from the books of another. */
    private boolean isOfThePlace(Authority a) {
        Optional<String> country = where.place().flatMap(Locality::country);
        return a.place().isEmpty() || country.filter(c -> !a.place().contains(c)).isEmpty();
    }

    Weigher weigher() {
        return weigher;
    }

    /** Returns the years that a statement speaks for, for sorting: unknown ones last. */
    static int year(Authority a) {
        OptionalInt year = a.from().isPresent() ? a.from() : a.to();
        return year.orElse(Integer.MAX_VALUE);
    }
}
