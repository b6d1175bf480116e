package org.stillroom.measures.physics;

import java.util.List;

/**
 * What comes of pouring spirits and water together, with contraction and without.
 *
 * @param millilitres volume of the mixture at 20 °C, after contraction
 * @param strength its strength by volume, 0 to 1, after contraction
 * @param additiveMillilitres the volumes simply added
 * @param additiveStrength the strength by simply adding volumes
 */
public record Mixture(
        double millilitres, double strength, double additiveMillilitres, double additiveStrength) {

    /** From this error on the shortcut is not good enough, as a fraction (0.1 % by volume). */
    public static final double TOLERANCE = 0.001;

    /**
     * A liquid that goes into a mixture.
     *
     * @param millilitres its volume at 20 °C, 0 or more
     * @param strength its strength by volume, 0 to 1
     */
    public record Part(double millilitres, double strength) {

        /** Refuses a volume below 0 and a strength outside 0 to 1. */
        public Part {
            Fractions.checkAmount("volume", millilitres);
            Fractions.check("strength by volume", strength);
        }
    }

    /** Returns the mixture of at least one part, by masses and the densities of OIML R 22. */
    public static Mixture of(List<Part> parts) {
        double mass = 0;
        double ethanol = 0;
        double volume = 0;
        double alcohol = 0;
        for (Part part : parts) {
            double share = EthanolWater.byMass(part.strength());
            double grams =
                    part.millilitres() * EthanolWater.density(share, EthanolWater.REFERENCE) / 1000;
            mass += grams;
            ethanol += grams * share;
            volume += part.millilitres();
            alcohol += part.millilitres() * part.strength();
        }
        if (!(volume > 0)) {
            throw new IllegalArgumentException("A mixture needs at least one part with a volume");
        }
        double share = Math.clamp(ethanol / mass, 0, 1);
        double density = EthanolWater.density(share, EthanolWater.REFERENCE) / 1000;
        return new Mixture(mass / density, EthanolWater.byVolume(share), volume, alcohol / volume);
    }

    /** Returns the mixture of two parts. */
    public static Mixture of(Part one, Part other) {
        return of(List.of(one, other));
    }

    /** Returns the volume lost by contraction, as a fraction of the volumes added. */
    public double contraction() {
        return 1 - millilitres / additiveMillilitres;
    }

    /** Returns how far the additive strength is off, as a fraction by volume; below 0: too low. */
    public double additiveError() {
        return additiveStrength - strength;
    }

    /** Tells whether adding volumes is good enough to be shown without a word. */
    public boolean additiveIsEnough() {
        return Math.abs(additiveError()) <= TOLERANCE;
    }

    /**
     * Returns the water at 20 °C that brings a spirit down to a strength, in the unit of the
     * volume.
     *
     * @param volume volume of the spirit
     * @param from its strength by volume, 0 to 1
     * @param to the strength wanted, more than 0 and not above {@code from}
     */
    public static double waterToReduce(double volume, double from, double to) {
        Fractions.check("strength by volume", from);
        if (!(to > 0 && to <= from)) {
            throw new IllegalArgumentException(
                    "Water brings a spirit of " + from + " to less than that, not to " + to);
        }
        double share = EthanolWater.byMass(from);
        double mass = volume * EthanolWater.density(share, EthanolWater.REFERENCE);
        double water = mass * share / EthanolWater.byMass(to) - mass;
        return water / EthanolWater.density(0, EthanolWater.REFERENCE);
    }
}
