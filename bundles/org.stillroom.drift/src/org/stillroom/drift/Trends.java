package org.stillroom.drift;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.stillroom.drift.trend.FalseDiscovery;
import org.stillroom.drift.trend.MannKendall;
import org.stillroom.drift.trend.TheilSen;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.spec.Role;

/**
 * Tests each role's share for a trend on independent versions, or refuses.
 *
 * <p>Below five versions even a perfect order has a probability of one in twelve, so that nothing can
 * be claimed at one in twenty: with n values the least two-sided probability is 2/n!.
 */
final class Trends {

    /** The fewest independent versions that a trend is tested on. */
    static final int FEWEST = 5;

    /** A role that never has this share moves by less than a dash is sure. */
    private static final double LEAST = 0.02;

    private static final double LEVEL = 0.05;
    private static final int DATE_DRAWS = 2000;
    private static final long SEED = 17_940_601L;

    private final List<Drift.Point> points;
    private final Map<String, UncertainDate> dates;
    private final double[] years;

    private Trends(List<Drift.Point> points, Map<String, UncertainDate> dates) {
        this.points = points.stream().filter(Drift.Point::independent).toList();
        this.dates = dates;
        this.years = this.points.stream().mapToDouble(Drift.Point::year).toArray();
    }

    /** Returns one finding for each role, in the order of the roles. */
    static List<Drift.Trend> of(
            List<Drift.Point> points,
            Map<String, UncertainDate> dates,
            Set<Role> roles,
            Progress progress) {
        Trends trends = new Trends(points, dates);
        List<Role> all = List.copyOf(roles);
        int n = trends.points.size();
        if (n < FEWEST) {
            return all.stream().map(r -> refusal(r, n)).toList();
        }
        if (Arrays.stream(trends.years).distinct().count() < 2) {
            return all.stream()
                    .<Drift.Trend>map(
                            r ->
                                    new Drift.Trend.Refused(
                                            r.word(),
                                            "No trend is tested for "
                                                    + r.word()
                                                    + ": all versions are of one time."))
                    .toList();
        }
        return trends.tested(all, progress);
    }

    private static Drift.Trend refusal(Role role, int n) {
        String held =
                switch (n) {
                    case 0 -> "no independent version with amounts is";
                    case 1 -> "one independent version with amounts is";
                    default -> n + " independent versions with amounts are";
                };
        String why = "a trend needs at least five, because fewer could stand in order by chance";
        return new Drift.Trend.Refused(
                role.word(),
                "No trend is tested for " + role.word() + ": " + held + " held, and " + why + ".");
    }

    private List<Drift.Trend> tested(List<Role> roles, Progress progress) {
        Map<Role, double[]> values = new EnumMap<>(Role.class);
        for (int r = 0; r < roles.size(); r++) {
            int role = r;
            double[] shares =
                    points.stream().mapToDouble(p -> p.shares().get(role).likely()).toArray();
            if (Arrays.stream(shares).max().orElse(0) >= LEAST) {
                values.put(roles.get(r), shares);
            }
        }
        Map<Role, MannKendall> tests = new EnumMap<>(Role.class);
        values.forEach((role, shares) -> tests.put(role, MannKendall.test(years, shares)));
        double[] p = tests.values().stream().mapToDouble(MannKendall::p).toArray();
        List<Role> looks = List.copyOf(tests.keySet());
        double[] adjusted = FalseDiscovery.adjust(p);
        List<Drift.Trend> trends = new ArrayList<>();
        for (Role role : roles) {
            progress.check();
            int look = looks.indexOf(role);
            trends.add(
                    look < 0
                            ? tooSmall(role)
                            : tested(role, values.get(role), tests.get(role), adjusted, look));
        }
        return trends;
    }

    private static Drift.Trend tooSmall(Role role) {
        return new Drift.Trend.Refused(
                role.word(),
                String.format(
                        Locale.ROOT,
                        "No trend is tested for %s: it is never as much as %.0f %% of the whole.",
                        role.word(),
                        100 * LEAST));
    }

    private Drift.Trend tested(
            Role role, double[] shares, MannKendall test, double[] adjusted, int look) {
        TheilSen line = TheilSen.fit(years, shares);
        return new Drift.Trend.Tested(
                role.word(),
                points.size(),
                10 * line.slope(),
                10 * line.low(),
                10 * line.high(),
                test.p(),
                words(role, shares, line, test, adjusted, look));
    }

    private String words(
            Role role, double[] shares, TheilSen line, MannKendall test, double[] adjusted, int r) {
        StringBuilder out = new StringBuilder();
        out.append(effect(role, shares, line, adjusted[r]));
        out.append(
                String.format(
                        Locale.ROOT,
                        " (limits %s to %s at %.0f %%), on %d independent versions",
                        signed(1000 * line.low()),
                        signed(1000 * line.high()),
                        100 * line.coverage(),
                        points.size()));
        out.append(dateDoubt(shares));
        out.append("; p = ").append(probability(test.p()));
        if (adjusted.length > 1) {
            out.append(", ")
                    .append(probability(adjusted[r]))
                    .append(" after allowing for ")
                    .append(adjusted.length)
                    .append(" looks");
        }
        return out.append('.').toString();
    }

    private String effect(Role role, double[] shares, TheilSen line, double p) {
        String name =
                role.word().substring(0, 1).toUpperCase(Locale.ROOT) + role.word().substring(1);
        int last = shares.length - 1;
        String ends =
                String.format(
                        Locale.ROOT,
                        "from %s of the whole in %s to %s in %s",
                        percent(shares[0]),
                        year(0),
                        percent(shares[last]),
                        year(last));
        String slope = signed(1000 * line.slope()) + " percentage points a decade";
        if (p >= LEVEL) {
            return name + " shows no trend: it goes " + ends + ", " + slope;
        }
        String verb = line.slope() > 0 ? " rises " : line.slope() < 0 ? " falls " : " moves ";
        return name + verb + ends + ", " + slope;
    }

    private String year(int point) {
        UncertainDate date = dates.get(points.get(point).version());
        return date == null
                ? String.format(Locale.ROOT, "%.0f", points.get(point).year())
                : date.toText();
    }

    /** Says in how many draws from the uncertain dates the trend stands, where any is uncertain. */
    private String dateDoubt(double[] shares) {
        long wide = points.stream().filter(p -> width(p) > 0).count();
        if (wide == 0) {
            return "";
        }
        SplittableRandom random = new SplittableRandom(SEED);
        int holds = 0;
        double[] drawn = new double[years.length];
        for (int d = 0; d < DATE_DRAWS; d++) {
            for (int i = 0; i < drawn.length; i++) {
                double width = width(points.get(i));
                drawn[i] = years[i] + (random.nextDouble() - 0.5) * width;
            }
            holds += holds(drawn, shares) ? 1 : 0;
        }
        String dated = wide == 1 ? "1 date is" : wide + " dates are";
        return String.format(
                Locale.ROOT,
                "; %s uncertain, and drawn within the limits p is below 0.05 in %s of draws",
                dated,
                percent((double) holds / DATE_DRAWS));
    }

    private boolean holds(double[] drawn, double[] shares) {
        return MannKendall.test(drawn, shares).p() < LEVEL;
    }

    /**
     * Returns how many years a date may span, 0 within one year; half-open ones count as known at
     * their known end.
     */
    private double width(Drift.Point point) {
        UncertainDate date = dates.get(point.version());
        if (date == null || date.earliest().isEmpty() || date.latest().isEmpty()) {
            return 0;
        }
        LocalDate from = date.earliest().get();
        LocalDate to = date.latest().get();
        return from.getYear() == to.getYear()
                ? 0
                : (to.toEpochDay() - from.toEpochDay() + 1) / 365.2425;
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    private static String signed(double points) {
        return String.format(Locale.ROOT, "%+.1f", points + 0.0).replace('-', '−');
    }

    private static String probability(double p) {
        return p < 0.001 ? "0.001 or less" : String.format(Locale.ROOT, "%.3f", p);
    }
}
