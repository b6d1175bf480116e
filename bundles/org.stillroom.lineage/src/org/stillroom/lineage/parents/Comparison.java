package org.stillroom.lineage.parents;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.stillroom.lineage.collation.Collation;

/**
 * An earlier text held against a later one.
 *
 * @param earlier the earlier text
 * @param collation how the later came out of it
 * @param reuse share of character runs that both have (Jaccard)
 * @param shared unusual amounts that only these two have
 * @param sameOrder whether five or more ingredients stand in the same order
 * @param cost edits, shared unusual amounts taken off
 * @param relative cost for each edit that the later text has in all
 */
record Comparison(
        Text earlier,
        Collation collation,
        double reuse,
        Set<String> shared,
        boolean sameOrder,
        double cost,
        double relative) {

    /** Texts above this are one text but for accidentals. */
    private static final double VERBATIM = 0.8;

    /** Fewest edits in substance that a reprint is not. */
    private static final double SLIP = 0.75;

    /** Below this the wording is no more alike than that of any two recipes of the drink. */
    private static final double CHANCE = 0.25;

    /** Above this share of changed weight the one is no source of the other. */
    private static final double FAR = 0.5;

    /** The same long list in the same order is rarely chance: more may have changed beside it. */
    private static final double FAR_BUT_ORDERED = 0.75;

    private static final int LONG_ORDER = 5;
    private static final double RARE = 0.8;

    static Comparison of(Text earlier, Text later, Set<String> common) {
        Collation collation = Collation.of(earlier.tokens(), later.tokens());
        Set<String> shared = new TreeSet<>(later.amounts());
        shared.retainAll(earlier.amounts());
        shared.removeAll(common);
        double cost = Math.max(0, collation.cost() - RARE * shared.size());
        double weight = Math.max(1, Math.max(later.weight(), earlier.weight()));
        boolean sameOrder =
                later.order().size() >= LONG_ORDER && later.order().equals(earlier.order());
        return new Comparison(
                earlier,
                collation,
                earlier.wording().jaccard(later.wording()),
                shared,
                sameOrder,
                cost,
                cost / weight);
    }

    boolean isNearVerbatim() {
        return reuse >= VERBATIM && collation.substantive() < SLIP;
    }

    /** Tells whether the one may be the source of the other at all. */
    boolean isNear() {
        boolean words = reuse >= CHANCE && relative <= FAR;
        boolean oddity = !shared.isEmpty() && reuse >= CHANCE * 0.7;
        return words || oddity || sameOrder && relative <= FAR_BUT_ORDERED || isNearVerbatim();
    }

    List<String> reasons(Text later) {
        List<String> reasons = new ArrayList<>();
        reasons.add(
                collation.alike() + " of " + later.tokens().size() + " words alike, "
                        + String.format(Locale.ROOT, "%.1f edits", collation.cost()));
        if (later.order().size() > 2 && later.order().equals(earlier.order())) {
            reasons.add("the same " + later.order().size() + " ingredients in the same order");
        }
        for (String amount : shared) {
            reasons.add("no other version has “" + amount + "”");
        }
        if (isNearVerbatim()) {
            reasons.add("the same text but for accidentals");
        } else if (!isNear()) {
            reasons.add("the wording is no nearer than chance");
        }
        return reasons;
    }
}
