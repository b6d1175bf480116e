package org.stillroom.lineage.parents;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.stillroom.lineage.Candidate;
import org.stillroom.lineage.Descent;
import org.stillroom.lineage.Drink;
import org.stillroom.lineage.Lineage;
import org.stillroom.lineage.VersionOrder;
import org.stillroom.lineage.collation.Token;
import org.stillroom.model.date.Certainty;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.spec.Version;

/** Seeks the parents of every version of one drink. */
public final class Tracing {

    /** Margin in edits below which two candidates are tied. */
    private static final double TIE = 1;

    /** An undated text is placed by its wording only with this much support. */
    private static final double SURE = 0.9;

    private static final int MOST = 5;

    /** Among so few versions no word is unusual. */
    private static final int FEWEST = 3;

    private final Drink drink;
    private final Progress progress;
    private final List<Text> texts = new ArrayList<>();
    private final Map<String, Version> versions = new HashMap<>();
    private final Map<String, String> parents = new HashMap<>();
    private final Map<String, Integer> uses = new HashMap<>();

    /** Makes a search for one drink. */
    public Tracing(Drink drink, Progress progress) {
        this.drink = drink;
        this.progress = progress;
        for (Version v : drink.versions().stream().sorted(VersionOrder.BY_DATE).toList()) {
            texts.add(Text.of(v));
            versions.put(v.id(), v);
        }
        for (Text text : texts) {
            text.tokens().stream()
                    .map(Token::value)
                    .distinct()
                    .forEach(w -> uses.merge(w, 1, Integer::sum));
        }
    }

    /** Returns the drink’s lineage. */
    public Lineage trace() {
        progress.begin("Tracing " + drink.name(), texts.size());
        Ranking ranking = new Ranking(texts, Settings.RECIPES);
        List<Descent> descents = new ArrayList<>();
        for (Text text : texts) {
            progress.check();
            Descent descent = descent(text, ranking);
            descent.parent().ifPresent(p -> parents.put(text.id(), p.id()));
            descents.add(descent);
            progress.step(1);
        }
        return new Lineage(drink, descents);
    }

    private Descent descent(Text later, Ranking ranking) {
        Version version = versions.get(later.id());
        Ranking.Result result = ranking.rank(later);
        List<Candidate> candidates = new ArrayList<>();
        for (Ranking.Ranked r : result.ranked()) {
            Evidence e = r.evidence();
            candidates.add(
                    new Candidate(
                            versions.get(e.earlier().id()),
                            r.support(),
                            e.cost(),
                            e.copied(),
                            e.verbatim(),
                            Reasons.of(
                                    e,
                                    later,
                                    version,
                                    isEarlier(e.earlier(), later),
                                    this::isRare,
                                    id -> versions.get(id).source().shortName())));
        }
        Descent.Standing standing = standing(later, result, ranking);
        List<Candidate> shown = candidates.subList(0, Math.min(MOST, candidates.size()));
        return new Descent(
                version, standing, shown, result.margin(), reason(standing, shown, result));
    }

    /** Tells whether no more than two versions have a word. */
    private boolean isRare(String word) {
        return texts.size() > FEWEST && uses.getOrDefault(word, 0) <= 2;
    }

    private static boolean isEarlier(Text a, Text b) {
        boolean cited = b.cites().contains(a.id());
        return cited
                || a.date().isPresent()
                        && b.date().isPresent()
                        && a.date().get().before(b.date().get()) == Certainty.CERTAIN;
    }

    private Descent.Standing standing(Text later, Ranking.Result result, Ranking ranking) {
        if (result.ranked().isEmpty()) {
            return later.date().isEmpty() ? Descent.Standing.UNPLACED : Descent.Standing.EARLIEST;
        }
        Evidence best = result.ranked().get(0).evidence();
        boolean cited = later.cites().contains(best.earlier().id());
        if (later.date().isEmpty() && !cited && !isPlaced(later, result, ranking)) {
            return Descent.Standing.UNPLACED;
        }
        if (result.none() >= 0.5) {
            boolean earlier =
                    result.ranked().stream()
                            .anyMatch(r -> isEarlier(r.evidence().earlier(), later));
            return earlier ? Descent.Standing.INDEPENDENT : Descent.Standing.EARLIEST;
        }
        if (result.margin() < TIE || leadsTo(best.earlier().id(), later.id())) {
            return Descent.Standing.TIED;
        }
        return best.verbatim() ? Descent.Standing.REPRINT : Descent.Standing.TAKEN;
    }

    /**
     * Tells whether wording shows that an undated text follows its first candidate: the candidate
     * was itself taken from an earlier text that it is nearer to than the undated one is.
     */
    private boolean isPlaced(Text undated, Ranking.Result result, Ranking ranking) {
        Ranking.Ranked first = result.ranked().get(0);
        String parent = parents.get(first.evidence().earlier().id());
        if (parent == null || first.support() < SURE) {
            return false;
        }
        double toCandidate = cost(ranking.rank(first.evidence().earlier()), parent);
        return toCandidate + TIE <= cost(result, parent);
    }

    private static double cost(Ranking.Result result, String id) {
        return result.ranked().stream()
                .filter(r -> r.evidence().earlier().id().equals(id))
                .mapToDouble(r -> r.evidence().cost())
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Tells whether a text's line of parents comes to another, which cannot then be its child. */
    private boolean leadsTo(String from, String to) {
        String at = from;
        for (int steps = 0; at != null && steps <= texts.size(); steps++) {
            if (at.equals(to)) {
                return true;
            }
            at = parents.get(at);
        }
        return false;
    }

    private static String reason(
            Descent.Standing standing, List<Candidate> shown, Ranking.Result result) {
        String first = shown.isEmpty() ? "" : name(shown.get(0));
        String second = shown.size() < 2 ? "" : name(shown.get(1));
        String support =
                shown.isEmpty()
                        ? ""
                        : String.format(Locale.ROOT, "%.0f %%", 100 * shown.get(0).support());
        return switch (standing) {
            case EARLIEST -> "Nothing certainly earlier of this drink is in the library.";
            case REPRINT -> "The text of " + first + " but for accidentals.";
            case TAKEN ->
                    "Taken from " + first + " (support " + support + ")" + ahead(second, result);
            case TIED ->
                    second.isEmpty()
                            ? "Either may have been taken from the other: " + first + "."
                            : String.format(
                                    Locale.ROOT,
                                    "Tied between %s and %s: %.1f edits apart.",
                                    first,
                                    second,
                                    result.margin());
            case INDEPENDENT ->
                    String.format(
                            Locale.ROOT,
                            "No earlier version in this library is nearer than independent recipes of"
                                    + " one drink are; the nearest is %s (support %s).",
                            first,
                            support);
            case UNPLACED ->
                    "It bears no date, so that its place is open"
                            + (first.isEmpty()
                                    ? "."
                                    : "; the nearest in wording is " + first + ".");
        };
    }

    private static String ahead(String second, Ranking.Result result) {
        return second.isEmpty()
                ? ", the only earlier version."
                : String.format(Locale.ROOT, ", %.1f edits ahead of %s.", result.margin(), second);
    }

    private static String name(Candidate candidate) {
        return candidate.parent().source().shortName();
    }
}
