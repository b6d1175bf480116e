package org.stillroom.model.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.stillroom.model.number.Rational;

class EstimateTests {

    private static final Origin WINEGLASS = Origin.pert("wineglass", 50, 57, 71);

    @Test
    void linesThatShareAWineglassHaveAnExactRatioAndAWideSum() {
        Estimate two = Estimate.of(WINEGLASS).times(Rational.of(2));
        Estimate half = Estimate.of(WINEGLASS).times(Rational.of(1, 2));
        Estimate ratio = two.dividedBy(half);
        assertEquals(4, ratio.low(), 1e-12);
        assertEquals(4, ratio.high(), 1e-12);
        Estimate sum = two.plus(half);
        assertEquals(125, sum.low(), 1e-9);
        assertEquals(177.5, sum.high(), 1e-9);
        assertEquals(0, two.minus(two).high(), 1e-12);
    }

    /** Values of PERT, triangular and rectangular shape: JCGM 100:2008 4.3 and the PERT rule. */
    @Test
    void meansAndUncertaintiesOfTheThreeShapes() {
        Origin triangular = new Origin("t", 50, 57, 71, Origin.Shape.TRIANGULAR);
        Origin rectangular = new Origin("r", 50, 57, 71, Origin.Shape.RECTANGULAR);
        assertEquals(58.167, WINEGLASS.mean(), 5e-4);
        assertEquals(3.869, WINEGLASS.uncertainty(), 5e-4);
        assertEquals(59.333, triangular.mean(), 5e-4);
        assertEquals(4.365, triangular.uncertainty(), 5e-4);
        assertEquals(60.5, rectangular.mean(), 5e-4);
        assertEquals(6.062, rectangular.uncertainty(), 5e-4);
        Origin dash = Origin.pert("d", .4, .8, 1.5);
        assertEquals(.85, dash.mean(), 5e-4);
        assertEquals(.204, dash.uncertainty(), 5e-4);
    }

    /** Worked example of our own reckoning, by the method of JCGM 101:2008 with 10^7 draws. */
    @Test
    void strengthOfADrinkByRepeatedDraws() {
        Estimate spirit = Estimate.of(Origin.pert("v1", 50, 57, 71));
        Estimate sour = Estimate.of(Origin.pert("v2", 12, 20, 30));
        Estimate sweet = Estimate.of(Origin.pert("v3", 10, 15, 20));
        Estimate strength = Estimate.of(new Origin("a", .40, .45, .50, Origin.Shape.RECTANGULAR));
        Estimate dilution = Estimate.of(Origin.pert("d", .15, .25, .35));
        Estimate all = spirit.plus(sour).plus(sweet).times(Estimate.exact(1).plus(dilution));
        Distribution d = new MonteCarlo(200_000).propagate(spirit.times(strength).dividedBy(all));
        assertEquals(.2243, d.mean(), .0005);
        assertEquals(.0193, d.uncertainty(), .0005);
        assertEquals(.189, d.low(), .001);
        assertEquals(.263, d.high(), .001);
        assertEquals("a", d.dominant().orElseThrow().name());
        assertEquals(.56, d.share(), .03);
    }

    @Test
    void theSameEstimateGivesTheSameDraws() {
        Estimate wide = Estimate.of(WINEGLASS).times(3);
        assertEquals(MonteCarlo.usual().propagate(wide), MonteCarlo.usual().propagate(wide));
    }

    @Test
    void twoUnknownsOfOneNameAreRefused() {
        Estimate other = Estimate.of(Origin.pert("wineglass", 1, 2, 3));
        Estimate sum = Estimate.of(WINEGLASS).plus(other);
        assertThrows(IllegalArgumentException.class, sum::low);
        assertThrows(IllegalArgumentException.class, () -> Origin.pert("x", 3, 2, 1));
    }

    @Test
    void theEnvelopeOfManyUnknownsIsExactAndFast() {
        Estimate sum = Estimate.exact(0);
        Estimate strong = Estimate.exact(0);
        for (int i = 0; i < 20; i++) {
            Estimate part = Estimate.of(Origin.pert("o" + i, 1, 2, 3));
            sum = sum.plus(part);
            strong = strong.plus(part.times(Estimate.of(Origin.pert("s" + i, 0, .2, .4))));
        }
        assertEquals(20, sum.low(), 1e-9);
        assertEquals(60, sum.high(), 1e-9);
        assertTrue(sum.dividedBy(sum).low() <= 1);
        Estimate strength = strong.dividedBy(sum);
        assertEquals(0, strength.low(), 1e-9);
        assertTrue(strength.high() >= 0.4 - 1e-9, strength.toString());
    }

    /** A peak between the ends: x (1 − x) has its greatest value at one half. */
    @Test
    void aPeakBetweenTheEndsIsInsideTheEnvelope() {
        Estimate x = Estimate.of(Origin.pert("x", 0, .4, 1));
        Estimate hill = x.times(Estimate.exact(1).minus(x));
        assertTrue(hill.high() >= .25, hill.toString());
        assertTrue(hill.high() <= .26, hill.toString());
        assertTrue(hill.low() <= 0 && hill.low() >= -.01, hill.toString());
    }

    /** One density under two weights: both fall together, and the limits are exact. */
    @Test
    void unknownsThatOnlyRiseOrFallAreExactWhateverTheFormula() {
        Estimate density = Estimate.of(Origin.pert("density", 1, 1.2, 1.5));
        Estimate honey = Estimate.exact(30).dividedBy(density);
        Estimate syrup = Estimate.exact(15).dividedBy(density.times(density));
        Estimate both = honey.plus(syrup);
        assertEquals(45, both.high(), 1e-9);
        assertEquals(20 + 15 / 2.25, both.low(), 1e-9);
    }

    /** No draw lies outside the envelope, whatever the formula; 400 formulas, 500 draws each. */
    @Test
    void theEnvelopeHoldsEveryDraw() {
        for (int seed = 0; seed < 400; seed++) {
            Random random = new Random(seed);
            List<Origin> unknowns = unknowns(random);
            Estimate estimate = formula(random, unknowns, 2 + random.nextInt(4));
            double slack = 1e-9 * (1 + Math.abs(estimate.low()) + Math.abs(estimate.high()));
            for (int n = 0; n < 500; n++) {
                SplittableRandom draws = new SplittableRandom(seed * 1000L + n);
                Map<String, Double> drawn = new TreeMap<>();
                unknowns.forEach(o -> drawn.put(o.name(), Sampler.sample(o, draws)));
                double value = estimate.valueAt(o -> drawn.get(o.name()));
                assertTrue(
                        estimate.low() - slack <= value && value <= estimate.high() + slack,
                        "seed " + seed + ", draw " + n + ": " + value + " in " + estimate);
            }
            Distribution spread = new MonteCarlo(1000).propagate(estimate);
            assertTrue(spread.low() >= estimate.low() - slack, "seed " + seed);
            assertTrue(spread.high() <= estimate.high() + slack, "seed " + seed);
        }
    }

    private static List<Origin> unknowns(Random random) {
        List<Origin> unknowns = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(14); i++) {
            double low = .1 + random.nextDouble();
            double likely = low + random.nextDouble();
            Origin.Shape shape = Origin.Shape.values()[random.nextInt(3)];
            unknowns.add(new Origin("u" + i, low, likely, likely + random.nextDouble(), shape));
        }
        return unknowns;
    }

    /** A formula of positive parts, so that nothing is divided by 0. */
    private static Estimate formula(Random random, List<Origin> unknowns, int depth) {
        if (depth == 0) {
            return random.nextInt(5) == 0
                    ? Estimate.exact(.2 + random.nextDouble())
                    : Estimate.of(unknowns.get(random.nextInt(unknowns.size())));
        }
        Estimate one = formula(random, unknowns, depth - 1);
        Estimate other = formula(random, unknowns, depth - 1);
        return switch (random.nextInt(4)) {
            case 0 -> one.plus(other);
            case 1 -> one.times(other);
            case 2 -> one.dividedBy(other);
            default -> one.plus(other.times(.5 + random.nextDouble()));
        };
    }

    /** The limits of an ordinary drink are the corners of its unknowns, no wider. */
    @Test
    void theEnvelopeOfADrinkIsNoWiderThanItsCorners() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            List<Origin> glass = List.of(Origin.pert("glass", 50, 55 + random.nextInt(5), 70));
            List<Origin> all = new ArrayList<>(glass);
            Estimate volume = Estimate.exact(random.nextInt(30));
            Estimate alcohol = Estimate.exact(0);
            for (int i = 0; i < 4; i++) {
                Origin strength = Origin.pert("strength " + i, .1 * i, .1 * i + .05, .1 * i + .1);
                Estimate line = Estimate.of(glass.get(0)).times(1 + random.nextInt(3));
                volume = volume.plus(line);
                alcohol = alcohol.plus(line.times(Estimate.of(strength)));
                all.add(strength);
            }
            Estimate share = alcohol.dividedBy(volume);
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int corner = 0; corner < 1 << all.size(); corner++) {
                int bits = corner;
                double value =
                        share.valueAt(o -> (bits >> all.indexOf(o) & 1) == 0 ? o.low() : o.high());
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
            assertEquals(low, share.low(), 1e-12, "seed " + seed);
            assertEquals(high, share.high(), 1e-12, "seed " + seed);
        }
    }
}
