package org.stillroom.measures.physics;

/**
 * Scales of the strength of spirits.
 *
 * <p>Strengths are fractions by volume at 20 °C, 0 to 1, unless a method says otherwise.
 */
public final class Proof {

    /**
     * British proof spirit by volume at 20 °C: weighs 12/13 of an equal measure of water at 51 °F
     * (statute of 1816; Nicholson, Men and Measures, 1912). Densities by OIML R 22.
     */
    public static final double SIKES_PROOF = 0.5715;

    /** 51 °F, the temperature of the statute of 1816, in °C. */
    private static final double STATUTE = (51 - 32) / 1.8;

    /** 60 °F in °C. */
    private static final double SIXTY = (60 - 32) / 1.8;

    private Proof() {}

    /** Returns the strength of degrees of United States proof (27 CFR 19.1): half per cent each. */
    public static double fromUs(double degrees) {
        return degrees / 200;
    }

    /** Returns the degrees of United States proof of a strength. */
    public static double toUs(double strength) {
        return strength * 200;
    }

    /** Returns the strength of degrees of British proof, where 100 is proof spirit. */
    public static double fromSikes(double degrees) {
        return degrees / 100 * SIKES_PROOF;
    }

    /** Returns the degrees of British proof of a strength. */
    public static double toSikes(double strength) {
        return strength / SIKES_PROOF * 100;
    }

    /**
     * Returns the strength of so many degrees over proof: 100 volumes of it make 100 and so many of
     * proof spirit (Nicholson 1912).
     */
    public static double fromOverProof(double degrees) {
        return fromSikes(100 + degrees);
    }

    /** Returns the strength of so many degrees under proof: so many parts of water in a hundred. */
    public static double fromUnderProof(double degrees) {
        if (!(degrees >= 0 && degrees <= 100)) {
            throw new IllegalArgumentException("Under proof goes from 0 to 100, not " + degrees);
        }
        return fromSikes(100 - degrees);
    }

    /**
     * Returns the strength of spirit of which one gallon of water brings so many gallons to proof
     * (“1 to 20 over proof”; Accum, A Treatise on Adulterations of Food, 1820).
     */
    public static double fromOneTo(double gallons) {
        return SIKES_PROOF * (gallons + 1) / gallons;
    }

    /**
     * Returns the strength of spirit of which one gallon of water in so many must be taken away to
     * leave proof spirit (“1 in 6 under proof”; Accum 1820).
     */
    public static double fromOneIn(double gallons) {
        return SIKES_PROOF * (gallons - 1) / gallons;
    }

    /** Returns the strength that weighs 12/13 of water at 51 °F, computed from OIML R 22. */
    public static double statutoryProof() {
        double density = EthanolWater.density(0, STATUTE) * 12 / 13;
        return EthanolWater.byVolume(EthanolWater.byDensity(density, STATUTE));
    }

    /** Returns the same by volume at 60 °F, as Nicholson 1912 states it. */
    public static double statutoryProofAt60() {
        double density = EthanolWater.density(0, STATUTE) * 12 / 13;
        double mass = EthanolWater.byDensity(density, STATUTE);
        return byVolumeAt(mass, SIXTY);
    }

    /**
     * Returns the strength at 20 °C of degrees Gay-Lussac, per cent by volume at 15 °C
     * (Encyclopaedia Britannica 1911).
     */
    public static double fromGayLussac(double degrees) {
        return fromVolumeAt(degrees / 100, 15);
    }

    /** Returns the degrees Gay-Lussac of a strength at 20 °C. */
    public static double toGayLussac(double strength) {
        return 100 * byVolumeAt(EthanolWater.byMass(strength), 15);
    }

    /**
     * Returns the strength at 20 °C of degrees Tralles, per cent by volume at 60 °F (Encyclopaedia
     * Britannica 1911; the temperature of its water is disputed, which moves it by less than 0.1).
     */
    public static double fromTralles(double degrees) {
        return fromVolumeAt(degrees / 100, SIXTY);
    }

    /** Returns the degrees Tralles of a strength at 20 °C. */
    public static double toTralles(double strength) {
        return 100 * byVolumeAt(EthanolWater.byMass(strength), SIXTY);
    }

    /** Returns the share by volume at a temperature of a mass fraction 0 to 1. */
    public static double byVolumeAt(double massFraction, double celsius) {
        return massFraction
                * EthanolWater.density(massFraction, celsius)
                / EthanolWater.density(1, celsius);
    }

    private static double fromVolumeAt(double share, double celsius) {
        Fractions.check("strength by volume", share);
        double mass = Fractions.solve(p -> byVolumeAt(p, celsius), share, 0, 1);
        return EthanolWater.byVolume(mass);
    }

    /** Returns the specific gravity at 60 °F against water at 60 °F of a mass fraction 0 to 1. */
    public static double gravityAt60(double massFraction) {
        return EthanolWater.density(massFraction, SIXTY) / EthanolWater.density(0, SIXTY);
    }
}
