package org.stillroom.measures.physics;

/**
 * Density of mixtures of ethanol and water, and conversion between strength by mass and by volume.
 *
 * <p>General formula and coefficients of OIML R 22:1975, as annexed to Council Directive
 * 76/766/EEC: density in kg/m³ for a mass fraction 0 to 1 and −20 to +40 °C. The strength by volume
 * refers to 20 °C.
 */
public final class EthanolWater {

    /** Reference temperature of the strength by volume, in °C. */
    public static final double REFERENCE = 20;

    private static final double[] A = {
        9.982012300e2, -1.929769495e2, 3.891238958e2, -1.668103923e3, 1.352215441e4,
        -8.829278388e4, 3.062874042e5, -6.138381234e5, 7.470172998e5, -5.478461354e5,
        2.234460334e5, -3.903285426e4
    };

    private static final double[] B = {
        -2.0618513e-1, -5.2682542e-3, 3.6130013e-5, -3.8957702e-7, 7.1693540e-9, -9.9739231e-11
    };

    private static final double[][] C = {
        {
            1.693443461530087e-1, -1.046914743455169e1, 7.196353469546523e1,
            -7.047478054272792e2, 3.924090430035045e3, -1.210164659068747e4,
            2.248646550400788e4, -2.605562982188164e4, 1.852373922069467e4,
            -7.420201433430137e3, 1.285617841998974e3
        },
        {
            -1.193013005057010e-2, 2.517399633803461e-1, -2.170575700536993,
            1.353034988843029e1, -5.029988758547014e1, 1.096355666577570e2,
            -1.422753946421155e2, 1.080435942856230e2, -4.414153236817392e1,
            7.442971530188783
        },
        {
            -6.802995733503803e-4, 1.876837790289664e-2, -2.002561813734156e-1,
            1.022992966719220, -2.895696483903638, 4.810060584300675,
            -4.672147440794683, 2.458043105903461, -5.411227621436812e-1
        },
        {4.075376675622027e-6, -8.763058573471110e-6, 6.515031360099368e-6, -1.515784836987210e-6},
        {-2.788074354782409e-8, 1.345612883493354e-8}
    };

    private EthanolWater() {}

    /**
     * Returns the density of a mixture.
     *
     * @param massFraction ethanol by mass, 0 to 1
     * @param celsius temperature, −20 to 40 °C
     * @return kg/m³
     */
    public static double density(double massFraction, double celsius) {
        Fractions.check("mass fraction", massFraction);
        if (!(celsius >= -20 && celsius <= 40)) {
            throw new IllegalArgumentException(
                    "The density formula holds from -20 to 40 °C, not at " + celsius);
        }
        double t = celsius - REFERENCE;
        double sum = polynomial(A, massFraction) + t * polynomial(B, t);
        double power = t;
        for (double[] row : C) {
            sum += power * massFraction * polynomial(row, massFraction);
            power *= t;
        }
        return sum;
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * x + coefficients[i];
        }
        return sum;
    }

    /** Returns the strength by volume at 20 °C, 0 to 1, of a mass fraction 0 to 1. */
    public static double byVolume(double massFraction) {
        return massFraction * density(massFraction, REFERENCE) / density(1, REFERENCE);
    }

    /** Returns the mass fraction, 0 to 1, of a strength by volume at 20 °C, 0 to 1. */
    public static double byMass(double byVolume) {
        Fractions.check("strength by volume", byVolume);
        return Fractions.solve(EthanolWater::byVolume, byVolume, 0, 1);
    }

    /** Returns the density in kg/m³ at a temperature of a strength by volume 0 to 1. */
    public static double densityByVolume(double byVolume, double celsius) {
        return density(byMass(byVolume), celsius);
    }

    /**
     * Returns the mass fraction that has a density, in the range where density falls with strength.
     *
     * @param density kg/m³
     * @param celsius temperature, −20 to 40 °C
     */
    public static double byDensity(double density, double celsius) {
        double most = density(0, celsius);
        double least = density(1, celsius);
        if (!(density <= most && density >= least)) {
            throw new IllegalArgumentException(
                    "Mixtures at "
                            + celsius
                            + " °C have "
                            + least
                            + " to "
                            + most
                            + " kg/m³, not "
                            + density);
        }
        return Fractions.solve(p -> -density(p, celsius), -density, 0, 1);
    }
}
