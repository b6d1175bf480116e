package org.stillroom.drift;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.stillroom.drift.composition.Composing;
import org.stillroom.drift.composition.Composition;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.spec.Role;
import org.stillroom.model.spec.Version;

/**
 * Finds how a drink's proportions moved over time.
 *
 * <p>Copies of one text count once, by the earliest of them that can be compared, and so do several
 * recipes of one source. What cannot be
 * compared is named with the reason. Ingredients that come in or drop out are events; distances and
 * trends concern what is there. See {@link Composing} for what counts and {@link Trends} for what
 * is tested.
 */
public final class DriftAnalysis {

    /** One version that can be compared. */
    record Comparable(Observation observation, double year, Composition composition) {
        Version version() {
            return observation.version();
        }
    }

    /**
     * Analyses the versions of a drink.
     *
     * @param observations the versions, in any order, each with its line of copies
     * @param progress hears of each version, and may cancel
     * @throws java.util.concurrent.CancellationException where the user cancels
     */
    public Drift analyse(List<Observation> observations, Progress progress) {
        progress.begin("Comparing proportions", observations.size());
        List<Observation> ordered = ordered(observations);
        List<String> left = new ArrayList<>();
        List<Comparable> usable = new ArrayList<>();
        for (Observation observation : ordered) {
            progress.check();
            read(observation, left).ifPresent(usable::add);
            progress.step(1);
        }
        Set<String> standing = standing(usable);
        Set<Role> roles = roles(usable);
        List<Drift.Point> points = usable.stream().map(c -> point(c, roles, standing)).toList();
        List<Drift.Trend> trends = Trends.of(points, dates(usable), roles, progress);
        int independent = (int) ordered.stream().map(Observation::root).distinct().count();
        List<Drift.Event> events = new Turnover(ordered).events();
        return new Drift(
                ordered.size(),
                independent,
                roles.stream().map(Role::word).toList(),
                points,
                distances(usable),
                events,
                trends,
                DriftWords.of(ordered.size(), independent, points, trends, events, left),
                left);
    }

    private static List<Observation> ordered(List<Observation> observations) {
        return observations.stream()
                .sorted(
                        Comparator.comparingDouble(DriftAnalysis::yearOrLast)
                                .thenComparing(o -> o.version().source().id())
                                .thenComparingInt(o -> o.version().witness().ordinal()))
                .toList();
    }

    private static double yearOrLast(Observation observation) {
        double year = year(observation);
        return Double.isNaN(year) ? Double.MAX_VALUE : year;
    }

    static double year(Observation observation) {
        return date(observation).map(UncertainDate::middleYear).orElse(Double.NaN);
    }

    private static Optional<UncertainDate> date(Observation observation) {
        return observation.version().source().bibliography().date();
    }

    private static Optional<Comparable> read(Observation observation, List<String> left) {
        String label = label(observation.version());
        double year = year(observation);
        if (Double.isNaN(year)) {
            left.add(label + ": its date is unknown");
            return Optional.empty();
        }
        return switch (Composing.of(observation.version())) {
            case Composing.Result.Usable(Composition composition) ->
                    Optional.of(new Comparable(observation, year, composition));
            case Composing.Result.Left(String reason) -> {
                left.add(label + ": " + reason);
                yield Optional.empty();
            }
        };
    }

    static String label(Version version) {
        return version.source().shortName() + ", " + version.witness().title();
    }

    /**
     * Returns the ids of the versions that stand for their line of copies: the earliest of each, and
     * of each source the first, because two recipes of one writer are no two witnesses.
     */
    private static Set<String> standing(List<Comparable> usable) {
        Set<String> roots = new HashSet<>();
        Set<String> sources = new HashSet<>();
        Set<String> standing = new HashSet<>();
        for (Comparable c : usable) {
            boolean newRoot = roots.add(c.observation.root());
            if (newRoot && sources.add(c.version().source().id())) {
                standing.add(c.version().id());
            }
        }
        return standing;
    }

    private static Set<Role> roles(List<Comparable> usable) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        usable.forEach(c -> c.composition.parts().values().forEach(p -> roles.add(p.role())));
        return roles;
    }

    private static Map<String, UncertainDate> dates(List<Comparable> usable) {
        Map<String, UncertainDate> dates = new HashMap<>();
        usable.forEach(c -> date(c.observation).ifPresent(d -> dates.put(c.version().id(), d)));
        return dates;
    }

    private static Drift.Point point(Comparable c, Set<Role> roles, Set<String> standing) {
        List<Drift.Share> shares = roles.stream().map(r -> share(c.composition.share(r))).toList();
        return new Drift.Point(
                c.version().id(),
                c.version().source().shortName(),
                c.year,
                standing.contains(c.version().id()),
                shares);
    }

    private static Drift.Share share(Optional<Estimate> share) {
        return share.map(
                        s -> new Drift.Share(within(s.low()), within(s.likely()), within(s.high())))
                .orElse(new Drift.Share(0, 0, 0));
    }

    private static double within(double share) {
        return Math.max(0, Math.min(1, share));
    }

    private static List<Drift.Distance> distances(List<Comparable> usable) {
        List<Drift.Distance> distances = new ArrayList<>();
        for (int i = 1; i < usable.size(); i++) {
            Comparable a = usable.get(i - 1);
            Comparable b = usable.get(i);
            distances.add(
                    new Drift.Distance(
                            a.version().id(),
                            b.version().id(),
                            a.composition.distance(b.composition),
                            b.composition.without(a.composition),
                            a.composition.without(b.composition)));
        }
        return distances;
    }
}
