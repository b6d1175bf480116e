package org.stillroom.lineage.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.stillroom.lineage.parents.Ranking;
import org.stillroom.lineage.parents.Settings;
import org.stillroom.lineage.parents.Text;

/** Parents sought in traditions whose descent is known; seeded, so that the figures stand. */
final class TraditionTests {

    private static final Tradition.Settings USUAL =
            new Tradition.Settings(40, 12, 0.08, 0.3, 0.15, 0.1);

    @Test
    void parentsAreFoundThoughTextsAreLostAndMixed() {
        TraditionScores scores = TraditionScores.of(USUAL, Settings.PLAIN, 60, 1794);
        assertTrue(scores.topOne() >= 0.78, scores.toString());
        assertTrue(scores.rightWords() >= 0.83, scores.toString());
        assertTrue(scores.topThree() >= 0.96, scores.toString());
        assertTrue(scores.calibrationError() <= 0.06, scores.toString());
        assertEquals(scores.equal(), scores.tied(), "equal candidates are always reported");
    }

    @Test
    void whereLittleChangesTiesAreToldAndTheWordsAreRight() {
        Tradition.Settings still = new Tradition.Settings(40, 12, 0.03, 0.3, 0.15, 0.3);
        TraditionScores scores = TraditionScores.of(still, Settings.PLAIN, 30, 1838);
        assertTrue(scores.rightWords() >= 0.88, scores.toString());
        assertTrue(scores.equal() > scores.texts() / 4, scores.toString());
        assertEquals(scores.equal(), scores.tied());
    }

    @Test
    void theSameSeedGivesTheSameTradition() {
        Tradition one = new TraditionGenerator(USUAL, 5).next();
        Tradition two = new TraditionGenerator(USUAL, 5).next();
        assertEquals(one.parents(), two.parents());
        assertEquals(
                one.texts().stream().map(Text::tokens).toList(),
                two.texts().stream().map(Text::tokens).toList());
    }

    /** What is before what is told by dates alone, so any order of the same texts ranks alike. */
    @Test
    void theOrderOfTheTextsChangesNoRanking() {
        Random random = new Random(9);
        TraditionGenerator generator = new TraditionGenerator(USUAL, 9);
        for (int t = 0; t < 5; t++) {
            Tradition tradition = generator.next();
            List<Text> shuffled = new ArrayList<>(tradition.texts());
            Collections.shuffle(shuffled, random);
            shuffled.sort(Comparator.comparingDouble(x -> x.date().orElseThrow().middleYear()));
            for (Text text : tradition.texts()) {
                Map<String, Double> expected =
                        new Ranking(tradition.texts(), Settings.PLAIN).supports(text);
                assertEquals(expected, new Ranking(shuffled, Settings.PLAIN).supports(text));
            }
        }
    }
}
