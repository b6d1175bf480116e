package org.stillroom.lineage.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

final class ClusterScoresTests {

    /** Worked by hand from the definitions named in {@link ClusterScores}. */
    @Test
    void sixItemsInThreeGroups() {
        ClusterScores scores =
                ClusterScores.of(
                        List.of("0", "0", "0", "1", "1", "2"),
                        List.of("0", "0", "1", "1", "1", "2"));
        assertEquals(0.5, scores.pairPrecision(), 1e-12);
        assertEquals(0.5, scores.pairRecall(), 1e-12);
        assertEquals(0.5, scores.pairF1(), 1e-12);
        assertEquals(0.7778, scores.bCubedF1(), 0.00005);
        assertEquals(0.318182, scores.adjustedRand(), 0.0000005);
        assertEquals(0.685331, scores.v(), 0.0000005);
    }

    @Test
    void theTruthAgreesWithItselfWhateverTheGroupsAreCalled() {
        ClusterScores scores =
                ClusterScores.of(List.of("a", "a", "b", "c"), List.of("x", "x", "y", "z"));
        assertEquals(1, scores.pairF1(), 1e-12);
        assertEquals(1, scores.bCubedF1(), 1e-12);
        assertEquals(1, scores.adjustedRand(), 1e-12);
        assertEquals(1, scores.v(), 1e-12);
    }

    @Test
    void groupingsOfDifferentItemsAreRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> ClusterScores.of(List.of("a"), List.of("a", "b")));
    }
}
