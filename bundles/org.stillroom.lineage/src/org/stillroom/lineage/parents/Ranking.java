package org.stillroom.lineage.parents;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.lineage.collation.Token;
import org.stillroom.model.date.Certainty;
import org.stillroom.model.date.UncertainDate;

/**
 * Ranks the texts that a later one may have been taken from.
 *
 * <p>The order in which texts are given changes nothing.
 */
public final class Ranking {

    /** Texts that share this much wording belong to one line of copies. */
    private static final double COPIED = 0.45;

    /** Only what a candidate may itself have changed can have been changed back. */
    private static final double KIN = 0.3;

    /** How many candidates are looked at closely: those nearest in wording. */
    private static final int CLOSE = 60;

    /** Weight of what is usual in any drink beside what this drink's versions show. */
    private static final double USUAL_WEIGHT = 2;

    /** Bits against a candidate that is earlier only possibly. */
    private static final double POSSIBLY = 1;

    /** Bits against a candidate where either has no date. */
    private static final double UNDATED = 3;

    /** Bits that one edit of a plain word is worth, about. */
    static final double BITS_AN_EDIT = 5;

    private final List<Text> texts;
    private final Settings settings;

    /** Makes a ranking among the texts of one drink, earliest first. */
    public Ranking(List<Text> texts, Settings settings) {
        this.texts = List.copyOf(texts);
        this.settings = settings;
    }

    /**
     * A text that a later one may have been taken from.
     *
     * @param evidence what speaks for it
     * @param support how likely it is the nearest source held, 0 to 1
     */
    record Ranked(Evidence evidence, double support) {}

    /**
     * The candidates of one text.
     *
     * @param ranked likeliest first
     * @param none how likely it is that none of them is the source, 0 to 1
     * @param margin edits by which the first is ahead of the second, not negative
     */
    record Result(List<Ranked> ranked, double none, double margin) {}

    /** Returns the ids of the candidates of a text, likeliest first, with their support. */
    public Map<String, Double> supports(Text later) {
        Map<String, Double> supports = new java.util.LinkedHashMap<>();
        rank(later).ranked().forEach(r -> supports.put(r.evidence().earlier().id(), r.support()));
        return supports;
    }

    /** Returns the margin in edits between the first two candidates of a text. */
    public double margin(Text later) {
        return rank(later).margin();
    }

    Result rank(Text later) {
        List<Text> candidates = candidates(later);
        Map<String, Sites> sites = new HashMap<>();
        candidates.forEach(c -> sites.put(c.id(), Sites.of(c.tokens(), later.tokens())));
        Map<String, double[]> sums = new HashMap<>();
        sites.forEach((id, s) -> sums.put(id, Blend.sums(later, s, settings)));
        List<Evidence> evidence = new ArrayList<>();
        for (Text candidate : candidates) {
            double[] chance = chance(candidate, later, candidates, sites);
            Evidence plain =
                    Evidence.of(candidate, later, sites.get(candidate.id()), chance, settings);
            Evidence reversed = reversed(plain, later, candidates, sites);
            evidence.add(reversed.blended(Blend.of(candidate, candidates, sums)));
        }
        return result(later, evidence);
    }

    /** Returns the texts that are earlier, or may be, nearest in wording first. */
    private List<Text> candidates(Text later) {
        return texts.stream()
                .filter(t -> mayPrecede(t, later))
                .sorted(
                        Comparator.comparingDouble(
                                        (Text t) -> -t.wording().jaccard(later.wording()))
                                .thenComparing(Text::id))
                .limit(CLOSE)
                .toList();
    }

    private boolean mayPrecede(Text earlier, Text later) {
        if (earlier == later) {
            return false;
        }
        if (earlier.source().equals(later.source())) {
            return later.cites().contains(earlier.id());
        }
        if (later.cites().contains(earlier.id())
                || earlier.date().isEmpty()
                || later.date().isEmpty()) {
            return !earlier.cites().contains(later.id());
        }
        UncertainDate a = earlier.date().get();
        UncertainDate b = later.date().get();
        boolean first = a.middleYear() < b.middleYear();
        boolean same =
                a.middleYear() == b.middleYear() && texts.indexOf(earlier) < texts.indexOf(later);
        return a.before(b) == Certainty.CERTAIN
                || a.before(b) == Certainty.POSSIBLE && (first || same);
    }

    /**
     * Returns for each place of the later text how often independent recipes agree there: what is
     * usual for such a word, drawn towards what versions outside the candidate's line of copies show.
     */
    private double[] chance(
            Text candidate, Text later, List<Text> candidates, Map<String, Sites> sites) {
        List<Sites> others =
                candidates.stream()
                        .filter(o -> o != candidate)
                        .filter(o -> o.wording().jaccard(candidate.wording()) < COPIED)
                        .map(o -> sites.get(o.id()))
                        .toList();
        double[] chance = new double[later.tokens().size()];
        for (int j = 0; j < chance.length; j++) {
            int place = j;
            long agree = others.stream().filter(s -> s.agrees()[place]).count();
            double usual = later.tokens().get(j).kind().usual();
            chance[j] = (agree + USUAL_WEIGHT * usual) / (others.size() + USUAL_WEIGHT);
        }
        return chance;
    }

    /**
     * Takes off for places where the later text differs from the candidate and agrees with texts
     * that the candidate may come from: what the candidate changed would have been changed back.
     */
    private Evidence reversed(
            Evidence plain, Text later, List<Text> candidates, Map<String, Sites> sites) {
        List<Sites> before =
                candidates.stream()
                        .filter(o -> certainlyBefore(o, plain.earlier()))
                        .filter(o -> o.wording().jaccard(plain.earlier().wording()) >= KIN)
                        .map(o -> sites.get(o.id()))
                        .toList();
        double bits = 0;
        int places = 0;
        for (int j = 0; j < plain.sites().agrees().length; j++) {
            int place = j;
            Token token = later.tokens().get(j);
            boolean older =
                    !plain.sites().agrees()[j] && before.stream().anyMatch(s -> s.agrees()[place]);
            if (older && rare(plain, j)) {
                places++;
                bits += settings.reversal() * Evidence.weight(token, settings);
            }
        }
        for (int g = 0; g < plain.sites().dropped().size(); g++) {
            int gap = g;
            boolean older =
                    !plain.sites().dropped().get(g).isEmpty()
                            && before.stream().anyMatch(s -> s.dropped().get(gap).isEmpty());
            if (older) {
                places++;
                bits +=
                        settings.reversal()
                                * plain.sites().dropped().get(g).stream()
                                        .mapToDouble(t -> Evidence.weight(t, settings))
                                        .max()
                                        .orElse(0);
            }
        }
        return plain.returning(places, bits);
    }

    private static boolean rare(Evidence evidence, int place) {
        return evidence.chance()[place] <= 0.5;
    }

    private static boolean certainlyBefore(Text a, Text b) {
        return a.date().isPresent()
                && b.date().isPresent()
                && a.date().get().before(b.date().get()) == Certainty.CERTAIN;
    }

    private Result result(Text later, List<Evidence> evidence) {
        Map<Evidence, Double> bits = new HashMap<>();
        for (Evidence e : evidence) {
            boolean certain =
                    certainlyBefore(e.earlier(), later) || later.cites().contains(e.earlier().id());
            boolean dated = e.earlier().date().isPresent() && later.date().isPresent();
            bits.put(e, e.bits() - (certain ? 0 : dated ? POSSIBLY : UNDATED));
        }
        List<Evidence> sorted =
                evidence.stream()
                        .sorted(
                                Comparator.comparingDouble(
                                                (Evidence e) -> -Math.round(1e6 * bits.get(e)))
                                        .thenComparingInt(e -> -texts.indexOf(e.earlier())))
                        .toList();
        double most = Math.max(settings.prior(), sorted.isEmpty() ? 0 : bits.get(sorted.get(0)));
        // Each candidate is as likely beforehand as any other, so that many do not outvote “none”.
        double none =
                Math.max(1, sorted.size())
                        * Math.pow(2, (settings.prior() - most) / settings.temperature());
        double total = none;
        for (Evidence e : sorted) {
            total += Math.pow(2, (bits.get(e) - most) / settings.temperature());
        }
        List<Ranked> ranked = new ArrayList<>();
        for (Evidence e : sorted) {
            double share = Math.pow(2, (bits.get(e) - most) / settings.temperature()) / total;
            ranked.add(new Ranked(e, share));
        }
        double margin =
                sorted.size() < 2
                        ? Math.max(1, sorted.isEmpty() ? 0 : bits.get(sorted.get(0)) / BITS_AN_EDIT)
                        : (bits.get(sorted.get(0)) - bits.get(sorted.get(1))) / BITS_AN_EDIT;
        return new Result(List.copyOf(ranked), none / total, Math.max(0, margin));
    }
}
