package org.stillroom.measures.physics;

import java.util.List;
import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.stillroom.measures.rows.Row;
import org.stillroom.measures.rows.Rows;

/**
 * Solutions of cane sugar: degrees Brix, density, grams to the litre, and Baumé.
 *
 * <p>Density at 20 °C by a cubic spline through the values of NBS Circular 440 (1942), table 109,
 * which stand in {@code sugar.csv}.
 */
public final class SugarSolution {

    /** The modulus of the modern Baumé scale at 20 °C, always to be named beside a degree. */
    public static final double MODULUS = 145;

    /** The modulus of nineteenth-century tables such as Stammer's (in Rixford 1883). */
    public static final double PERIOD_MODULUS = 144;

    /** The modulus of Gerlach's older scale at 17.5 °C; from memory. */
    public static final double OLD_MODULUS = 146.78;

    /** Solubility of sugar at 20 °C in per cent by mass; from memory. */
    public static final double SATURATED = 66.7;

    private static final PolynomialSplineFunction DENSITY = read();

    private SugarSolution() {}

    private static PolynomialSplineFunction read() {
        List<Row> rows = Rows.shipped("sugar.csv");
        double[] brix = column(rows, "brix");
        return new SplineInterpolator().interpolate(brix, column(rows, "density"));
    }

    private static double[] column(List<Row> rows, String heading) {
        return rows.stream().mapToDouble(r -> r.number(heading).orElseThrow().toDouble()).toArray();
    }

    /**
     * Returns the density at 20 °C.
     *
     * @param brix per cent of sugar by mass, 0 to 85
     * @return kg/l
     */
    public static double density(double brix) {
        if (!(brix >= 0 && brix <= 85)) {
            throw new IllegalArgumentException("Degrees Brix go from 0 to 85 here, not " + brix);
        }
        return DENSITY.value(brix);
    }

    /** Returns the specific gravity 20/20 °C of degrees Brix, 0 to 85. */
    public static double gravity(double brix) {
        return density(brix) / density(0);
    }

    /** Returns the degrees Brix of a density at 20 °C in kg/l. */
    public static double brix(double density) {
        if (!(density >= density(0) && density <= density(85))) {
            throw new IllegalArgumentException(
                    "Sugar solutions have a density of "
                            + density(0)
                            + " to "
                            + density(85)
                            + " kg/l, not "
                            + density);
        }
        return Fractions.solve(SugarSolution::density, density, 0, 85);
    }

    /** Returns grams of sugar in a litre of solution of degrees Brix, 0 to 85. */
    public static double gramsPerLitre(double brix) {
        return 10 * brix * density(brix);
    }

    /** Returns the degrees Brix of a solution with so many grams of sugar in a litre. */
    public static double brixOfGramsPerLitre(double grams) {
        Fractions.checkAmount("content", grams);
        return Fractions.solve(SugarSolution::gramsPerLitre, grams, 0, 85);
    }

    /** Returns the degrees Brix of sugar and water weighed together. */
    public static double brixOfMasses(double sugar, double water) {
        Fractions.checkAmount("mass", sugar);
        Fractions.checkAmount("mass", water);
        if (sugar + water == 0) {
            throw new IllegalArgumentException("A syrup needs sugar or water");
        }
        return 100 * sugar / (sugar + water);
    }

    /** Returns degrees Baumé of a specific gravity 1 or more: modulus − modulus / gravity. */
    public static double baume(double gravity, double modulus) {
        return modulus - modulus / gravity;
    }

    /** Returns the specific gravity of degrees Baumé, heavier than water. */
    public static double gravityOfBaume(double degrees, double modulus) {
        if (!(degrees >= 0 && degrees < modulus)) {
            throw new IllegalArgumentException(
                    "Degrees Baumé lie between 0 and " + modulus + ", not at " + degrees);
        }
        return modulus / (modulus - degrees);
    }
}
