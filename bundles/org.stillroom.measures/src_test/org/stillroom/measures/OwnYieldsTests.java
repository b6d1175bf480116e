package org.stillroom.measures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.stillroom.measures.MeasureMeaning.Measured;
import org.stillroom.measures.physics.OwnMeasurements;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;
import org.stillroom.model.source.Trade;

/** The user's own squeezed fruits; the update itself is checked by hand in PhysicsTests. */
class OwnYieldsTests {

    private static final MeasureTable TABLE = MeasureTable.shipped();

    private static final String LEMONS =
            "of,each,amount,unit,date,source\n"
                    + "lemon,1/2,20;22;24,ml,2024-05,my bench\n"
                    + "lemon,1,41;45,ml,2024-06,my bench\n";

    private static Measured juice(MeasureTable table, String fruit, String word) {
        Circumstances where =
                new Circumstances(
                        Optional.of(Place.of("US")),
                        UncertainDate.parse("1895"),
                        Optional.of(Trade.BAR),
                        Optional.empty());
        return (Measured)
                table.resolve(MeasureQuestion.of(word, where).about(Matter.LIQUID, fruit));
    }

    @Test
    void ownLemonsAreTheBetterAuthorityAndSayHowManyAndWhen() {
        MeasureTable.Extended own = TABLE.withYields("knowledge/yields.csv", LEMONS);
        assertTrue(own.problems().isEmpty(), own.problems().toString());
        Measured after = juice(own.table(), "lemon", "juice-of");
        Estimate before =
                TABLE.resolve(
                                MeasureQuestion.of("juice-of", Circumstances.UNKNOWN)
                                        .about(Matter.LIQUID, "lemon"))
                        .millilitres()
                        .orElseThrow();
        double mean =
                new OwnMeasurements("lemon", List.of(40.0, 44.0, 48.0, 41.0, 45.0), "")
                        .update(before)
                        .mean();
        assertEquals(mean, after.one().likely(), 1e-9);
        assertTrue(
                after.explanation()
                        .toText()
                        .contains("5 own measurements of the juice of one lemon"),
                after.explanation().toText());
        assertTrue(after.explanation().toText().contains("2024-05, 2024-06"));
        assertEquals(
                juice(TABLE, "lime", "juice-of").one().likely(),
                juice(own.table(), "lime", "juice-of").one().likely());
    }

    @Test
    void aWrongHeadingIsReportedOnce() {
        MeasureTable.Extended own =
                TABLE.withYields(
                        "knowledge/yields.csv", "what,measured\nlemon,42 ml\nlime,30 ml\n");
        assertEquals(1, own.problems().size(), own.problems().toString());
        assertTrue(own.problems().get(0).reason().contains("“of”, “amount”, “unit”"));
        assertTrue(own.problems().get(0).remedy().contains("of,amount,unit"));
    }

    @Test
    void aLemonOfFourLitresIsAskedAbout() {
        MeasureTable.Extended own =
                TABLE.withYields(
                        "knowledge/yields.csv",
                        "of,amount,unit\nlemon,4000,ml\nlemon,0.04,ml\nlemon,44,ml\n");
        assertEquals(
                List.of(2, 3), own.problems().stream().map(p -> p.line().orElseThrow()).toList());
        assertTrue(own.problems().get(0).reason().contains("4000 ml is not what"));
        assertTrue(own.problems().get(0).remedy().contains("“each”"));
        assertTrue(juice(own.table(), "lemon", "juice-of").reason().contains("own measurements"));
    }

    @Test
    void badRowsAreReportedAndTheRestIsRead() {
        MeasureTable.Extended own =
                TABLE.withYields(
                        "knowledge/yields.csv",
                        "of,each,amount,unit,date\n"
                                + "lemon,1,44,mk,2024\n"
                                + "lemon,1,-3,ml,2024\n"
                                + ",1,44,ml,2024\n"
                                + "lemon,1,,ml,2024\n"
                                + "lime,1,27;29,ml,2024\n");
        assertEquals(
                List.of(2, 3, 4, 5),
                own.problems().stream().map(p -> p.line().orElseThrow()).toList());
        assertTrue(own.problems().get(0).reason().contains("unit is not known"));
        assertTrue(!own.problems().get(0).remedy().isBlank());
        assertTrue(juice(own.table(), "lime", "juice-of").reason().contains("own measurements"));
    }
}
