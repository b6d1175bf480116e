package org.stillroom.inquiry;

import java.util.List;
import java.util.Optional;
import org.stillroom.measures.format.AmountFormat;
import org.stillroom.model.estimate.Distribution;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.estimate.MonteCarlo;
import org.stillroom.model.estimate.Origin;
import org.stillroom.model.explain.Explanation;

/**
 * Says how widely an amount spreads within its limits, and which unknown most of that comes from.
 *
 * <p>The limits of an amount are its envelope, found at once; the spread within is by repeated draws
 * (JCGM 101:2008), always the same for the same unknowns.
 */
final class Spread {

    private static final int DRAWS = 20_000;

    /** From this share on the rest is not worth a word. */
    private static final double NEARLY_ALL = 0.995;

    private Spread() {}

    /** Returns the spread of an amount in a unit, or nothing where it is known exactly. */
    static Optional<Explanation> of(Estimate amount, String unit) {
        if (amount.isExact()) {
            return Optional.empty();
        }
        Distribution spread = new MonteCarlo(DRAWS).propagate(amount);
        int place = AmountFormat.place(Math.max((spread.high() - spread.low()) / 2, 1e-9));
        String ends =
                AmountFormat.rounded(spread.low(), place)
                        + "–"
                        + AmountFormat.rounded(spread.high(), place)
                        + " "
                        + unit;
        String all = AmountFormat.poured(amount, unit);
        String statement =
                "The limits of "
                        + all
                        + " are the furthest that the unknowns allow together; 95 of 100 draws of"
                        + " them give "
                        + ends
                        + "."
                        + spread.dominant().map(o -> cause(o, spread.share())).orElse("");
        return Optional.of(Explanation.of(statement, List.of()));
    }

    private static String cause(Origin origin, double share) {
        if (share > NEARLY_ALL) {
            return " All of the spread comes from one unknown: " + name(origin) + ".";
        }
        String most = share > 0.5 ? " Most of the spread" : " The largest part of the spread";
        return most
                + " ("
                + Math.round(100 * share)
                + " %) comes from one unknown: "
                + name(origin)
                + ".";
    }

    private static String name(Origin origin) {
        return origin.name().replace("juice-of of", "the juice of");
    }
}
