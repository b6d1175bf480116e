package org.stillroom.model.estimate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The least and the greatest value that a formula can have, found fast enough for every key stroke.
 *
 * <p>No draw of the unknowns lies outside. An unknown against which the slope has one sign is put at
 * its end; one that the formula is a line or a quotient of lines in is tried at both ends, which is
 * exact; what is left is cut in pieces and bounded by interval arithmetic, which is never too narrow
 * (R. E. Moore, Interval Analysis, 1966, chapters 3 and 6).
 */
final class Envelope {

    /** The most unknowns that are tried at both ends. */
    private static final int CORNERS = 10;

    /** How many pieces all cuts together may make. */
    private static final int PIECES = 256;

    private final Formula formula;
    private final List<Origin> origins;

    Envelope(Formula formula, List<Origin> origins) {
        this.formula = formula;
        this.origins = origins;
    }

    /** Returns the least and the greatest value. */
    double[] ends() {
        return new double[] {end(false), end(true)};
    }

    private double end(boolean greatest) {
        Map<String, double[]> box = new HashMap<>();
        origins.forEach(o -> box.put(o.name(), new double[] {o.low(), o.high()}));
        List<Origin> open = settled(box, greatest);
        List<Origin> tried = new ArrayList<>();
        List<Origin> cut = new ArrayList<>();
        for (Origin o : open) {
            boolean exact = formula.degree(o) != Formula.Degree.OTHER && tried.size() < CORNERS;
            (exact ? tried : cut).add(o);
        }
        double best = greatest ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        for (int corner = 0; corner < 1 << tried.size(); corner++) {
            for (int i = 0; i < tried.size(); i++) {
                Origin o = tried.get(i);
                double at = (corner >> i & 1) == 0 ? o.low() : o.high();
                box.put(o.name(), new double[] {at, at});
            }
            double here = bound(box, cut, greatest);
            best = greatest ? Math.max(best, here) : Math.min(best, here);
        }
        return best;
    }

    /** Puts every unknown at its end against which the slope has one sign; returns the others. */
    private List<Origin> settled(Map<String, double[]> box, boolean greatest) {
        List<Origin> open = new ArrayList<>(origins);
        Function<Origin, double[]> limits = o -> box.get(o.name());
        boolean more = true;
        while (more) {
            more = false;
            for (Origin o : List.copyOf(open)) {
                double[] slope = formula.slope(o, limits);
                if (slope[0] >= 0 || slope[1] <= 0) {
                    double at = slope[0] >= 0 == greatest ? o.high() : o.low();
                    box.put(o.name(), new double[] {at, at});
                    open.remove(o);
                    more = true;
                }
            }
        }
        return open;
    }

    private double bound(Map<String, double[]> box, List<Origin> cut, boolean greatest) {
        Function<Origin, double[]> limits = o -> box.get(o.name());
        int parts = parts(cut.size());
        int pieces = (int) Math.round(Math.pow(parts, Math.min(cut.size(), 8)));
        double best = greatest ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        for (int piece = 0; piece < pieces; piece++) {
            int rest = piece;
            for (Origin o : cut) {
                double step = (o.high() - o.low()) / parts;
                int n = rest % parts;
                rest /= parts;
                box.put(o.name(), piece(o, n, n + 1 == parts, step));
            }
            double[] ends = formula.interval(limits);
            best = greatest ? Math.max(best, ends[1]) : Math.min(best, ends[0]);
        }
        return best;
    }

    private static double[] piece(Origin o, int n, boolean last, double step) {
        return new double[] {o.low() + n * step, last ? o.high() : o.low() + (n + 1) * step};
    }

    private static int parts(int unknowns) {
        return unknowns == 0 || unknowns > 8
                ? 1
                : Math.max(1, (int) Math.floor(Math.pow(PIECES, 1.0 / unknowns) + 1e-9));
    }
}
