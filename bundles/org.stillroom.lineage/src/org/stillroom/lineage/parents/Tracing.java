package org.stillroom.lineage.parents;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.stillroom.lineage.Candidate;
import org.stillroom.lineage.Descent;
import org.stillroom.lineage.Drink;
import org.stillroom.lineage.Lineage;
import org.stillroom.lineage.VersionOrder;
import org.stillroom.model.date.Certainty;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.spec.Version;

/** Seeks the parents of every version of one drink. */
public final class Tracing {

    /** Edits by which support falls to 1/e. */
    private static final double TEMPERATURE = 1.2;

    /** Margin in edits below which two candidates are tied. */
    private static final double TIE = 1;

    private static final int MOST = 5;

    /** Less support for a candidate that is earlier only possibly. */
    private static final double POSSIBLY = 0.5;

    private final Drink drink;
    private final Progress progress;

    /** Makes a search for one drink. */
    public Tracing(Drink drink, Progress progress) {
        this.drink = drink;
        this.progress = progress;
    }

    /** Returns the drink’s lineage. */
    public Lineage trace() {
        List<Version> ordered =
                drink.versions().stream().sorted(VersionOrder.BY_DATE).toList();
        List<Text> texts = ordered.stream().map(Text::of).toList();
        Set<String> common = common(texts);
        progress.begin("Tracing " + drink.name(), texts.size());
        List<Descent> descents = new ArrayList<>();
        for (Text text : texts) {
            progress.check();
            descents.add(descent(text, texts, common));
            progress.step(1);
        }
        return new Lineage(drink, descents);
    }

    /** Returns amounts that more than two versions have: sharing one of them tells nothing. */
    private static Set<String> common(List<Text> texts) {
        Map<String, Integer> counts = new HashMap<>();
        for (Text text : texts) {
            text.amounts().forEach(a -> counts.merge(a, 1, Integer::sum));
        }
        Set<String> common = new TreeSet<>();
        counts.forEach(
                (amount, n) -> {
                    if (n > 2 || usual(amount)) {
                        common.add(amount);
                    }
                });
        return common;
    }

    /** A number up to four, or a common fraction, is no oddity even where only two have it. */
    private static boolean usual(String amount) {
        return amount.matches(
                ".* (?:[1-6]|(?:[12] )?(?:1/2|1/3|2/3|1/4|3/4)) [^ ]+(?: [^ ]+)?");
    }

    private Descent descent(Text later, List<Text> texts, Set<String> common) {
        List<Comparison> compared = new ArrayList<>();
        for (Text earlier : texts) {
            if (mayPrecede(earlier, later, texts)) {
                compared.add(Comparison.of(earlier, later, common));
            }
        }
        compared.sort(
                Comparator.comparing((Comparison c) -> !c.isNearVerbatim())
                        .thenComparingDouble(Comparison::cost)
                        .thenComparing(c -> c.earlier().version(), VersionOrder.BY_DATE));
        List<Candidate> candidates = candidates(later, compared);
        double margin = margin(compared);
        Descent.Standing standing = standing(later, compared, margin);
        return new Descent(
                later.version(), standing, candidates, margin, reason(standing, compared, margin));
    }

    private static boolean mayPrecede(Text earlier, Text later, List<Text> order) {
        if (earlier == later || sameBook(earlier, later)) {
            return false;
        }
        if (earlier.date().isEmpty() || later.date().isEmpty()) {
            return later.date().isEmpty();
        }
        UncertainDate a = earlier.date().get();
        UncertainDate b = later.date().get();
        Certainty before = a.before(b);
        boolean first = order.indexOf(earlier) < order.indexOf(later);
        return before == Certainty.CERTAIN || before == Certainty.POSSIBLE && first;
    }

    private static boolean sameBook(Text a, Text b) {
        return a.version().source().id().equals(b.version().source().id());
    }

    private static double margin(List<Comparison> compared) {
        List<Comparison> near = compared.stream().filter(Comparison::isNear).toList();
        if (near.isEmpty()) {
            return 0;
        }
        double first = near.get(0).cost();
        double second =
                compared.stream().skip(1).mapToDouble(Comparison::cost).min().orElse(first + 10);
        return Math.max(0, second - first);
    }

    private static List<Candidate> candidates(Text later, List<Comparison> compared) {
        double none = Math.exp(-0.5 * later.weight() / TEMPERATURE / 2);
        double total = none;
        double least = compared.stream().mapToDouble(Comparison::cost).min().orElse(0);
        double[] shares = new double[compared.size()];
        for (int i = 0; i < shares.length; i++) {
            Comparison c = compared.get(i);
            double possible = certain(c.earlier(), later) ? 1 : POSSIBLY;
            double near = c.isNear() ? 1 : 0.2;
            shares[i] = near * possible * Math.exp(-(c.cost() - least) / TEMPERATURE);
            total += shares[i];
        }
        boolean any = compared.stream().anyMatch(Comparison::isNear);
        double whole = any ? total : total + compared.size();
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < Math.min(MOST, shares.length); i++) {
            Comparison c = compared.get(i);
            candidates.add(
                    new Candidate(
                            c.earlier().version(),
                            shares[i] / whole,
                            c.cost(),
                            c.isNearVerbatim(),
                            c.reasons(later)));
        }
        return candidates;
    }

    private static boolean certain(Text earlier, Text later) {
        return earlier.date().isPresent()
                && later.date().isPresent()
                && earlier.date().get().before(later.date().get()) == Certainty.CERTAIN;
    }

    private Descent.Standing standing(Text later, List<Comparison> compared, double margin) {
        if (compared.isEmpty()) {
            return later.date().isEmpty()
                    ? Descent.Standing.UNPLACED
                    : Descent.Standing.EARLIEST;
        }
        Comparison best = compared.get(0);
        if (best.isNearVerbatim()) {
            long others = compared.stream().filter(Comparison::isNearVerbatim).count();
            return others > 1 && margin < 0.2 ? Descent.Standing.TIED : Descent.Standing.REPRINT;
        }
        if (later.date().isEmpty()) {
            return Descent.Standing.UNPLACED;
        }
        if (!best.isNear()) {
            return Descent.Standing.INDEPENDENT;
        }
        return margin < TIE ? Descent.Standing.TIED : Descent.Standing.TAKEN;
    }

    private static String reason(
            Descent.Standing standing, List<Comparison> compared, double margin) {
        String first =
                compared.isEmpty() ? "" : compared.get(0).earlier().version().source().shortName();
        String second =
                compared.size() < 2
                        ? ""
                        : compared.get(1).earlier().version().source().shortName();
        return switch (standing) {
            case EARLIEST -> "nothing earlier of this drink is in the library.";
            case REPRINT -> "the text of " + first + " but for accidentals.";
            case TAKEN ->
                    "taken from " + first
                            + (second.isEmpty()
                                    ? ", the only earlier version."
                                    : String.format(
                                            Locale.ROOT,
                                            ", %.1f edits nearer than %s.",
                                            margin,
                                            second));
            case TIED -> "tied between " + first + " and " + second
                    + String.format(Locale.ROOT, ": %.1f edits apart.", margin);
            case INDEPENDENT ->
                    "no earlier version in this library is near enough to be its source; the "
                            + "nearest is " + first + ".";
            case UNPLACED ->
                    "it bears no date, so that its place is open"
                            + (first.isEmpty() ? "." : "; the nearest in wording is " + first + ".");
        };
    }
}
