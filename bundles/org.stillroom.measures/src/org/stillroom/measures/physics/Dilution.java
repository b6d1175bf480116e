package org.stillroom.measures.physics;

import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.estimate.Origin;

/**
 * How much water melts into a drink: a model, always to be labelled as one.
 *
 * <p>No dilution was measured in the period. The curves for stirring and shaking are those of D.
 * Arnold, Liquid Intelligence, 2014 (coefficients from memory), for 120 g of cubed ice; the ranges
 * of the trade (stirred 20–30 %, shaken 25–40 %, built 5–15 %) disagree with them, and both are
 * shown.
 */
public enum Dilution {
    /** Built in the glass: no curve, the trade's range alone; common practice, no source. */
    BUILT(new double[] {0, 0, 0.10}, 0.05, 0.15),
    /** Stirred for 15 seconds. */
    STIRRED(new double[] {-1.21, 1.246, 0.145}, 0.20, 0.30),
    /** Shaken for 10 to 12 seconds. */
    SHAKEN(new double[] {-1.567, 1.742, 0.203}, 0.25, 0.40);

    private final double[] curve;
    private final double tradeLow;
    private final double tradeHigh;

    Dilution(double[] curve, double tradeLow, double tradeHigh) {
        this.curve = curve;
        this.tradeLow = tradeLow;
        this.tradeHigh = tradeHigh;
    }

    /**
     * Returns the melt water for one volume of drink.
     *
     * @param strength strength by volume before ice, 0 to 0.5, where the curves rise
     */
    public double ratio(double strength) {
        if (!(strength >= 0 && strength <= 0.5)) {
            throw new IllegalArgumentException(
                    "The dilution model holds from 0 to 50 % by volume, not at "
                            + 100 * strength
                            + " %");
        }
        return (curve[0] * strength + curve[1]) * strength + curve[2];
    }

    /** Returns the strength by volume after ice, by adding volumes. */
    public double after(double strength) {
        return strength / (1 + ratio(strength));
    }

    /** Returns the least that the trade's rule of thumb says, a fraction of the volume. */
    public double tradeLow() {
        return tradeLow;
    }

    /** Returns the most that the trade's rule of thumb says, a fraction of the volume. */
    public double tradeHigh() {
        return tradeHigh;
    }

    /**
     * Returns the melt water for one volume of drink as an estimate that spans model and trade.
     *
     * @param strength strength by volume before ice, 0 to 0.5
     * @param drink whose dilution it is, for the unknown's name
     */
    public Estimate estimate(double strength, String drink) {
        double model = ratio(strength);
        double low = Math.min(0.75 * model, tradeLow);
        double high = Math.max(1.25 * model, tradeHigh);
        return Estimate.of(Origin.pert("dilution of " + drink, low, model, high));
    }

    /** Returns the sentence that stands beside every modelled dilution. */
    public String label() {
        return "modelled, not measured: "
                + (this == BUILT ? "the trade's rule of thumb" : "a published curve for cubed ice")
                + "; the trade says "
                + Math.round(100 * tradeLow)
                + " to "
                + Math.round(100 * tradeHigh)
                + " % of the volume";
    }
}
