package org.stillroom.lineage.parents;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stillroom.lineage.collation.Token;

/**
 * Whether the end of a text follows another source than its beginning.
 *
 * <p>The copying model of Li and Stephens (Genetics 165, 2003), with at most one change of exemplar.
 *
 * @param rest the source of the end, where there is one
 * @param bits the evidence for both sources together, the cost of the change taken off; 0 where
 *     the first alone explains the text as well
 */
record Blend(Optional<Text> rest, double bits) {

    /** How often a copyist changes a word, for finding where the source changes. */
    private static final double RATE = 0.12;

    /** Bits that a change of exemplar costs, beside the choice of which and where. */
    private static final double CHANGE = 8;

    /** Each source gives at least this share of the text. */
    private static final double LEAST = 0.2;

    private static final Blend NONE = new Blend(Optional.empty(), 0);

    /** Returns the evidence of each place, and of the gap before it, added up from the start. */
    static double[] sums(Text later, Sites sites, Settings settings) {
        int n = later.tokens().size();
        double[] sums = new double[n + 1];
        for (int j = 0; j < n; j++) {
            Token token = later.tokens().get(j);
            double q = token.kind().usual();
            double ratio = sites.agrees()[j] ? (1 - RATE) / q : RATE / (1 - q);
            double bits = Evidence.weight(token, settings) * Math.log(ratio) / Math.log(2);
            for (Token dropped : sites.dropped().get(j)) {
                double gone = RATE / (1 - dropped.kind().usual());
                bits += Evidence.weight(dropped, settings) * Math.log(gone) / Math.log(2) / 2;
            }
            sums[j + 1] = sums[j] + bits;
        }
        return sums;
    }

    /** Returns the best change from one source to another, with what both then explain. */
    static Blend of(Text first, List<Text> candidates, Map<String, double[]> sums) {
        double[] own = sums.get(first.id());
        int n = own.length - 1;
        double choices = Math.max(1, (candidates.size() - 1.0) * n);
        double cost = CHANGE + Math.log(choices) / Math.log(2);
        Blend best = NONE;
        for (Text other : candidates) {
            double[] theirs = sums.get(other.id());
            if (other == first) {
                continue;
            }
            for (int at = (int) Math.ceil(LEAST * n); at <= (1 - LEAST) * n; at++) {
                double both = own[at] + theirs[n] - theirs[at] - cost;
                if (both > best.bits && both > own[n]) {
                    best = new Blend(Optional.of(other), both);
                }
            }
        }
        return best;
    }
}
