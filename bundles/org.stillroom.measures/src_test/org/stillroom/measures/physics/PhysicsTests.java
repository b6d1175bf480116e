package org.stillroom.measures.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.estimate.Origin;

class PhysicsTests {

    @Test
    void massAndVolumeAreInverse() {
        Random random = new Random(3);
        for (int n = 0; n < 500; n++) {
            double strength = random.nextDouble();
            double back = EthanolWater.byVolume(EthanolWater.byMass(strength));
            assertEquals(strength, back, 1e-12, "seed 3");
        }
    }

    @Test
    void densityFallsWithStrengthAndTemperature() {
        double before = Double.MAX_VALUE;
        for (int i = 0; i <= 1000; i++) {
            double density = EthanolWater.density(i / 1000.0, 20);
            assertTrue(density < before, "at " + i);
            before = density;
            assertEquals(i / 1000.0, EthanolWater.byDensity(density, 20), 1e-9);
        }
        assertTrue(EthanolWater.density(0.4, 30) < EthanolWater.density(0.4, 20));
    }

    /** Density of water at other temperatures; common handbook values, from memory, to 0.02. */
    @ParameterizedTest
    @CsvSource({"5,999.97", "15,999.10", "25,997.05", "30,995.65"})
    void pureWaterFollowsItsTemperature(double celsius, double density) {
        assertEquals(density, EthanolWater.density(0, celsius), 0.02);
    }

    /** Guards coefficient C2,3: a transcription in circulation swaps two of its digits. */
    @Test
    void theThirdSecondOrderCoefficientHasNoSwappedDigits() {
        assertEquals(
                933.355,
                EthanolWater.density(EthanolWater.byMass(Proof.fromTralles(50)), (60 - 32) / 1.8),
                0.02);
    }

    @Test
    void contractionIsLargestNearFiftyThree() {
        double most = 0;
        double at = 0;
        for (double v = 1; v < 100; v += 0.5) {
            double lost =
                    Mixture.of(new Mixture.Part(v, 1), new Mixture.Part(100 - v, 0)).contraction();
            if (lost > most) {
                most = lost;
                at = v;
            }
        }
        assertEquals(52.5, at, 0.6);
        assertEquals(0.03546, most, 0.00001);
    }

    /** Reference F93: adding volumes errs by about 0.1 % by volume at most for drinks. */
    @Test
    void theAdditiveShortcutIsEnoughForDrinksAndSaysWhenItIsNot() {
        Random random = new Random(11);
        for (int n = 0; n < 400; n++) {
            Mixture drink =
                    Mixture.of(
                            new Mixture.Part(60, 0.35 + 0.1 * random.nextDouble()),
                            new Mixture.Part(30 * random.nextDouble(), 0.2 * random.nextDouble()));
            assertEquals(0, drink.additiveError(), 0.0012, "seed 11: " + drink);
        }
        assertTrue(
                Mixture.of(new Mixture.Part(60, 0.4), new Mixture.Part(30, 0.16))
                        .additiveIsEnough());
        Mixture strong = Mixture.of(new Mixture.Part(100, 0.96), new Mixture.Part(100, 0));
        assertFalse(strong.additiveIsEnough());
        assertEquals(-0.0150, strong.additiveError(), 0.0005);
    }

    /** NBS Circular 440 (1942), table 114: apparent specific gravity 20/20 °C in air. */
    @ParameterizedTest
    @CsvSource({
        "3,1.01173", "7,1.02773", "10,1.04003", "12,1.04837", "16,1.06542", "20,1.08297",
        "24,1.10104", "27,1.11493", "30,1.12913", "33,1.14364", "36,1.15847", "40,1.17874",
        "44,1.19961", "48,1.22106", "50,1.23202", "53,1.24874", "57,1.27156", "60,1.28909",
        "63,1.30694", "66,1.32516", "70,1.34997", "74,1.37541", "80,1.41471", "84,1.44165"
    })
    void sugarMatchesThePublishedTable(double brix, double apparent) {
        double gravity = SugarSolution.gravity(brix);
        double inAir = gravity + (gravity - 1) * 0.00106;
        assertEquals(apparent, inAir, 0.00005);
        assertEquals(brix, SugarSolution.brix(SugarSolution.density(brix)), 1e-9);
        double grams = SugarSolution.gramsPerLitre(brix);
        assertEquals(brix, SugarSolution.brixOfGramsPerLitre(grams), 1e-9);
    }

    /** GNU units 2.22, methods Appendix A: baume(32) = 1.2831858 with the modulus 145. */
    @Test
    void baumeNeedsItsModulus() {
        assertEquals(1.2831858, SugarSolution.gravityOfBaume(32, SugarSolution.MODULUS), 1e-7);
        assertEquals(32, SugarSolution.baume(1.2831858407, SugarSolution.MODULUS), 1e-6);
        assertThrows(
                IllegalArgumentException.class,
                () -> SugarSolution.gravityOfBaume(145, SugarSolution.MODULUS));
    }

    /** Reference E32: 85 per cent by mass would be supersaturated. */
    @Test
    void eightyFivePerCentSyrupIsByVolume() {
        double brix = SugarSolution.brixOfGramsPerLitre(850);
        assertEquals(64.7, brix, 0.06);
        assertTrue(85 > SugarSolution.SATURATED);
    }

    @Test
    void dilutionRisesWithStrengthAndIsLabelled() {
        for (Dilution dilution : Dilution.values()) {
            double before = -1;
            for (double s = 0; s <= 0.5; s += 0.01) {
                double ratio = dilution.ratio(s);
                assertTrue(ratio >= before && ratio >= 0, dilution + " at " + s);
                assertTrue(s == 0 || dilution.after(s) < s);
                before = ratio;
            }
            Estimate e = dilution.estimate(0.3, "a drink");
            assertTrue(e.low() <= dilution.tradeLow() && e.high() >= dilution.tradeHigh());
            assertTrue(dilution.label().contains("modelled"));
        }
        assertEquals(0.489, Dilution.SHAKEN.ratio(0.2), 0.001);
        assertTrue(Math.abs(Dilution.SHAKEN.ratio(0.2) - 0.306) > 0.1, "the guard of H05");
        assertThrows(IllegalArgumentException.class, () -> Dilution.STIRRED.ratio(0.6));
    }

    /** Worked by hand: prior 20 ± 5 counts twice; 18, 22 and 26 were measured. */
    @Test
    void ownMeasurementsUpdateByTheConjugateRule() {
        Estimate before = Estimate.of(Origin.pert("half a lemon", 10, 20, 30));
        OwnMeasurements own =
                new OwnMeasurements("half a lemon", List.of(18.0, 22.0, 26.0), "May 2024");
        OwnMeasurements.Posterior after = own.update(before);
        assertEquals((2 * 20 + 66) / 5.0, after.mean(), 1e-9);
        assertEquals(Math.sqrt((2 * 25 + 32 + 1.2 * 4) / 5), after.deviation(), 1e-9);
        assertEquals(3, after.count());
        assertTrue(own.toText().contains("3 own measurements") && own.toText().contains("May"));
        assertThrows(
                IllegalArgumentException.class,
                () -> new OwnMeasurements("half a lemon", List.of(), ""));
    }

    @Test
    void impossibleValuesAreRefusedInWords() {
        for (Runnable bad :
                List.<Runnable>of(
                        () -> EthanolWater.byMass(1.2),
                        () -> EthanolWater.density(0.5, 90),
                        () -> EthanolWater.byDensity(2000, 20),
                        () -> new Mixture.Part(-1, 0.4),
                        () -> Mixture.of(List.of()),
                        () -> Mixture.waterToReduce(1, 0.4, 0.5),
                        () -> Proof.fromUnderProof(120),
                        () -> SugarSolution.density(99),
                        () -> SugarSolution.brix(3))) {
            IllegalArgumentException e = assertThrows(IllegalArgumentException.class, bad::run);
            assertTrue(e.getMessage().length() > 20, e.getMessage());
        }
    }

    @Test
    void massAndVolumeByDensity() {
        Densities.Density lemon = Densities.shipped().of("lemon juice").orElseThrow();
        assertEquals(46.5, lemon.millilitres(Estimate.exact(48)).likely(), 0.05);
        assertEquals(48, lemon.grams(lemon.millilitres(Estimate.exact(48))).likely(), 1e-9);
        assertEquals(0.948, Densities.spirit(0.40), 0.0005);
    }
}
