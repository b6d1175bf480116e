package org.stillroom.model.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
    void manyUnknownsFallBackToAnEnvelopeThatHoldsTheCorners() {
        Estimate sum = Estimate.exact(0);
        for (int i = 0; i < 20; i++) {
            sum = sum.plus(Estimate.of(Origin.pert("o" + i, 1, 2, 3)));
        }
        assertEquals(20, sum.low(), 1e-9);
        assertEquals(60, sum.high(), 1e-9);
        assertTrue(sum.dividedBy(sum).low() <= 1);
    }
}
