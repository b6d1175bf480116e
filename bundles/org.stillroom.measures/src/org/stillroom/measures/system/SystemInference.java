package org.stillroom.measures.system;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.stillroom.measures.knowledge.Authority;
import org.stillroom.measures.knowledge.Dimension;
import org.stillroom.measures.knowledge.MeasureSystem;
import org.stillroom.measures.knowledge.UnitTable;
import org.stillroom.measures.place.Locality;
import org.stillroom.measures.system.Systems.Clue;
import org.stillroom.measures.system.Systems.Era;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.source.Trade;

/**
 * Judges which system of measures a book used, by Bayes' rule.
 *
 * <p>The prior comes from place, year and trade; each word of measure in the book multiplies the
 * odds; the book's own table decides where it defines a pint or a gill; the user's decision stands
 * above all.
 */
public final class SystemInference {

    /** How many years of a wide date are tried. */
    private static final int YEARS = 25;

    /** Odds of a system whose unit the book's own table gives; common practice, no source. */
    static final double OWN_TABLE = 200;

    private static final YearRange ANY_YEAR = new YearRange(1780, 1990);

    private final Systems systems;
    private final UnitTable units;

    /** Makes an inference from this knowledge. */
    public SystemInference(Systems systems, UnitTable units) {
        this.systems = systems;
        this.units = units;
    }

    /** Returns how likely each system is for a book written in these circumstances. */
    public SystemPosterior posterior(Where where, BookContext book) {
        Optional<SystemOverride> decided = book.override();
        if (decided.isPresent()) {
            return decided(decided.get());
        }
        List<Explanation> because = new ArrayList<>();
        SortedMap<MeasureSystem, Double> odds = prior(where, because);
        List<Explanation> evidence = new ArrayList<>();
        book.words().stream()
                .sorted()
                .map(w -> systems.clue(w, where.years()))
                .flatMap(Optional::stream)
                .forEach(c -> evidence.addAll(apply(c, odds)));
        for (Authority own : book.ownTable().rows()) {
            evidence.addAll(apply(own, odds));
        }
        evidence.addAll(new OwnRatios(units).apply(book.ownTable(), odds));
        normalise(odds);
        String reason = sentence(odds, because, evidence);
        List<Explanation> all = new ArrayList<>(because);
        all.addAll(evidence);
        return new SystemPosterior(odds, reason, Explanation.of(reason, all));
    }

    private static SystemPosterior decided(SystemOverride by) {
        SortedMap<MeasureSystem, Double> shares = new TreeMap<>();
        shares.put(by.system(), 1.0);
        String reason =
                capital(by.system().label())
                        + ": so decided for "
                        + by.level().words()
                        + " by "
                        + by.who()
                        + ".";
        return new SystemPosterior(shares, reason, Explanation.of(reason));
    }

    private SortedMap<MeasureSystem, Double> prior(Where where, List<Explanation> because) {
        YearRange years = where.years().orElse(ANY_YEAR);
        SortedMap<MeasureSystem, Double> odds = new TreeMap<>();
        if (where.place().isPresent()) {
            Locality place = where.place().get();
            add(odds, place.codes(), where.trade(), years, 1);
            because.add(explain(place.name(), place.codes(), where, years));
        } else {
            Systems.Origins origins = systems.origins(where.language(), where.trade());
            origins.shares()
                    .forEach(
                            (code, share) -> add(odds, List.of(code), where.trade(), years, share));
            because.add(Explanation.of("the place is not known, and " + origins.statement()));
        }
        if (where.years().isEmpty()) {
            because.add(Explanation.of("the date is not known"));
        }
        return odds;
    }

    private Explanation explain(String place, List<String> codes, Where where, YearRange years) {
        NavigableMap<Integer, Era> eras = systems.eras(codes, where.trade());
        int middle = (years.from() + years.to()) / 2;
        Era era = Optional.ofNullable(eras.floorEntry(middle)).orElse(eras.firstEntry()).getValue();
        String when = where.years().map(y -> " in " + y.toText()).orElse("");
        return Explanation.cited(era.statement() + " (" + place + when + ")", era.citation());
    }

    private void add(
            SortedMap<MeasureSystem, Double> odds,
            List<String> codes,
            Optional<Trade> trade,
            YearRange years,
            double weight) {
        NavigableMap<Integer, Era> eras = systems.eras(codes, trade);
        int[] sample = years.sample(YEARS).toArray();
        for (int year : sample) {
            at(eras, year)
                    .forEach(
                            (id, share) ->
                                    systems.find(id)
                                            .ifPresent(
                                                    s ->
                                                            odds.merge(
                                                                    s,
                                                                    share * weight / sample.length,
                                                                    Double::sum)));
        }
    }

    /** Returns the shares in a year, in a straight line between the years that are known. */
    private static Map<String, Double> at(NavigableMap<Integer, Era> eras, int year) {
        Map.Entry<Integer, Era> before = eras.floorEntry(year);
        Map.Entry<Integer, Era> after = eras.ceilingEntry(year);
        if (before == null || after == null || before.getKey().equals(after.getKey())) {
            return (before == null ? after : before).getValue().shares();
        }
        double t = (year - before.getKey()) / (double) (after.getKey() - before.getKey());
        Map<String, Double> shares = new TreeMap<>();
        before.getValue().shares().forEach((s, v) -> shares.merge(s, v * (1 - t), Double::sum));
        after.getValue().shares().forEach((s, v) -> shares.merge(s, v * t, Double::sum));
        return shares;
    }

    private static List<Explanation> apply(Clue clue, SortedMap<MeasureSystem, Double> odds) {
        odds.replaceAll((s, p) -> p * clue.factors().getOrDefault(s.id(), 0.5));
        return List.of(
                Explanation.cited(
                        "it measures by the " + clue.word() + ", and " + clue.statement(),
                        clue.citation()));
    }

    /** Finds the systems whose own unit a line of the book's table gives, to one per cent. */
    private List<Explanation> apply(Authority own, SortedMap<MeasureSystem, Double> odds) {
        if (own.content().isEmpty() || own.dimension() != Dimension.VOLUME) {
            return List.of();
        }
        double stated = own.content().get().likely().toDouble();
        List<String> same =
                units.ofWord(own.word()).stream()
                        .filter(u -> u.dimension() == Dimension.VOLUME)
                        .filter(u -> Math.abs(u.amount().toDouble() / stated - 1) < 0.01)
                        .map(u -> u.system().id())
                        .toList();
        if (same.isEmpty()) {
            return List.of();
        }
        odds.replaceAll((s, p) -> same.contains(s.id()) ? p * OWN_TABLE : p);
        return List.of(
                Explanation.cited(
                        "its own table of measures says so of the " + own.word(), own.citation()));
    }

    private static void normalise(SortedMap<MeasureSystem, Double> odds) {
        double sum = odds.values().stream().mapToDouble(Double::doubleValue).sum();
        odds.replaceAll((s, p) -> p / sum);
        odds.values().removeIf(p -> p < 1e-6);
    }

    private static String sentence(
            SortedMap<MeasureSystem, Double> odds,
            List<Explanation> because,
            List<Explanation> evidence) {
        String systems =
                odds.entrySet().stream()
                        .sorted(
                                Comparator.comparing(
                                        (Map.Entry<MeasureSystem, Double> e) -> -e.getValue()))
                        .filter(e -> e.getValue() >= 0.1)
                        .limit(3)
                        .map(e -> e.getKey().label() + " (" + percent(e.getValue()) + ")")
                        .collect(Collectors.joining(" or "));
        List<String> clauses = new ArrayList<>();
        because.forEach(e -> clauses.add(e.statement()));
        evidence.stream().limit(2).forEach(e -> clauses.add(e.statement()));
        return capital(systems) + ": " + String.join("; ", clauses) + ".";
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", Math.min(99, 100 * share));
    }

    private static String capital(String words) {
        return words.isEmpty()
                ? words
                : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
