package org.stillroom.drift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.estimate.Origin;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.source.Witness;
import org.stillroom.model.spec.Role;
import org.stillroom.model.spec.Spec;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;

final class DriftAnalysisTests {

    private static Estimate ml(double amount) {
        return Estimate.exact(amount);
    }

    private static Version punch(String id, String date, double rum, double sugar, double lemon) {
        return Samples.version(
                id,
                date,
                "Ann Quill",
                "Wharf Punch",
                "Rum, sugar, lemon.",
                Samples.line("rum", "1", "ml", "rum", Role.SPIRIT, ml(rum)),
                Samples.line("sugar", "1", "ml", "sugar", Role.SWEET, ml(sugar)),
                Samples.line("lemon", "1", "ml", "lemon", Role.SOUR, ml(lemon)));
    }

    private static Drift analyse(Version... versions) {
        List<Observation> observations = new ArrayList<>();
        for (Version v : versions) {
            observations.add(new Observation(v, v.id()));
        }
        return new DriftAnalysis().analyse(observations, Progress.SILENT);
    }

    private static Drift rising() {
        return analyse(
                punch("a", "1800", 20, 20, 20),
                punch("b", "1820", 25, 20, 20),
                punch("c", "1840", 30, 20, 20),
                punch("d", "1860", 36, 20, 20),
                punch("e", "1880", 44, 20, 20));
    }

    @Test
    void fiveInOrderMakeATrendToldEffectFirstAndProbabilityLast() {
        Drift drift = rising();
        Drift.Trend.Tested spirit =
                assertInstanceOf(Drift.Trend.Tested.class, drift.trends().get(0));
        assertEquals("spirit", spirit.role());
        assertEquals(2.0 / 120, spirit.p(), 1e-12);
        assertTrue(spirit.slopePerDecade() > 0.02 && spirit.slopePerDecade() < 0.03);
        assertTrue(spirit.low() <= spirit.slopePerDecade());
        assertTrue(spirit.high() >= spirit.slopePerDecade());
        String words = drift.words().get(0);
        assertTrue(words.startsWith("Spirit rises from 33 % of the whole in 1800 to 52 %"), words);
        assertTrue(words.indexOf("5 independent versions") < words.indexOf("p = 0.017"), words);
        assertTrue(words.contains("3 looks"), words);
        assertEquals(List.of("spirit", "sweet", "sour"), drift.roles());
    }

    @Test
    void fourAreRefusedWithTheReason() {
        Drift drift =
                analyse(
                        punch("a", "1800", 20, 20, 20),
                        punch("b", "1820", 25, 20, 20),
                        punch("c", "1840", 30, 20, 20),
                        punch("d", "1860", 36, 20, 20));
        Drift.Trend.Refused refused =
                assertInstanceOf(Drift.Trend.Refused.class, drift.trends().get(0));
        assertTrue(refused.words().contains("at least five"), refused.words());
        assertTrue(refused.words().contains("4 independent versions"), refused.words());
    }

    @Test
    void copiesOfOneTextCountOnce() {
        List<Observation> observations = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            Version v = punch("v" + i, Integer.toString(1800 + 10 * i), 20 + i, 20, 20);
            observations.add(new Observation(v, i < 3 ? "v0" : v.id()));
        }
        Drift drift = new DriftAnalysis().analyse(observations, Progress.SILENT);
        assertEquals(6, drift.versions());
        assertEquals(4, drift.independent());
        assertEquals(6, drift.points().size());
        assertEquals(4, drift.points().stream().filter(Drift.Point::independent).count());
        assertInstanceOf(Drift.Trend.Refused.class, drift.trends().get(0));
        String basis = drift.words().get(drift.words().size() - 1);
        assertTrue(basis.contains("6 versions") && basis.contains("4 independent"), basis);
    }

    @Test
    void whatStandsForACopiedLineIsTheFirstThatCanBeCompared() {
        Version bare =
                Samples.version(
                        "a",
                        "1800",
                        "Ann Quill",
                        "Wharf Punch",
                        "Rum and sugar to taste.",
                        Samples.line("rum", "1", "ml", "rum", Role.SPIRIT, ml(10)),
                        Samples.line(
                                "sugar",
                                "",
                                "",
                                "sugar",
                                Role.SWEET,
                                Optional.empty(),
                                LineKind.MEASURED));
        Version copy = punch("b", "1810", 20, 20, 20);
        Drift drift =
                new DriftAnalysis()
                        .analyse(
                                List.of(new Observation(bare, "a"), new Observation(copy, "a")),
                                Progress.SILENT);
        assertEquals(1, drift.left().size());
        assertTrue(drift.left().get(0).contains("sugar"), drift.left().toString());
        assertEquals("b", drift.points().get(0).version().replace("#1", ""));
        assertTrue(drift.points().get(0).independent());
    }

    /** The one error that must not be made: an unknown glass makes volumes unsure, not shares. */
    @Test
    void oneUnknownGlassForAllLinesLeavesSharesSure() {
        Estimate glass = Estimate.of(new Origin("a glass", 50, 57, 71, Origin.Shape.PERT));
        Version v =
                Samples.version(
                        "a",
                        "1800",
                        "Ann Quill",
                        "Wharf Punch",
                        "Rum, sugar.",
                        Samples.line("rum", "2", "glass", "rum", Role.SPIRIT, glass.times(2)),
                        Samples.line("sugar", "1", "glass", "sugar", Role.SWEET, glass));
        Drift.Share share = analyse(v).points().get(0).shares().get(0);
        assertEquals(2.0 / 3, share.low(), 1e-12);
        assertEquals(2.0 / 3, share.likely(), 1e-12);
        assertEquals(2.0 / 3, share.high(), 1e-12);
    }

    @Test
    void twoUnknownGlassesMakeSharesUnsure() {
        Estimate one = Estimate.of(new Origin("one glass", 50, 57, 71, Origin.Shape.PERT));
        Estimate other = Estimate.of(new Origin("other glass", 50, 57, 71, Origin.Shape.PERT));
        Version v =
                Samples.version(
                        "a",
                        "1800",
                        "Ann Quill",
                        "Wharf Punch",
                        "Rum, sugar.",
                        Samples.line("rum", "1", "glass", "rum", Role.SPIRIT, one),
                        Samples.line("sugar", "1", "glass", "sugar", Role.SWEET, other));
        Drift.Share share = analyse(v).points().get(0).shares().get(0);
        assertEquals(50.0 / 121, share.low(), 1e-12);
        assertEquals(71.0 / 121, share.high(), 1e-12);
    }

    @Test
    void distancesAreOnWhatBothHaveAndTheRestIsNamed() {
        Version first = punch("a", "1800", 2, 1, 1);
        Version second =
                Samples.version(
                        "b",
                        "1820",
                        "Ann Quill",
                        "Wharf Punch",
                        "Rum, sugar, tea.",
                        Samples.line("rum", "1", "ml", "rum", Role.SPIRIT, ml(5)),
                        Samples.line("sugar", "1", "ml", "sugar", Role.SWEET, ml(1)),
                        Samples.line("tea", "1", "ml", "tea", Role.DILUTION, ml(3)));
        Drift.Distance distance = analyse(first, second).distances().get(0);
        assertEquals(0.647915390, distance.aitchison().orElseThrow(), 1e-9);
        assertEquals(List.of("tea"), distance.added());
        assertEquals(List.of("lemon"), distance.dropped());
    }

    @Test
    void anIngredientEntersBetweenTheLastWithoutAndTheFirstWith() {
        SpecLine rum = Samples.line("rum", "1", "ml", "rum", Role.SPIRIT, ml(50));
        SpecLine sugar = Samples.line("sugar", "1", "ml", "sugar", Role.SWEET, ml(10));
        SpecLine egg =
                Samples.line(
                        "egg", "1", "whole", "egg", Role.RICH, Optional.empty(), LineKind.MEASURED);
        SpecLine perhaps =
                Samples.line(
                        "egg",
                        "1",
                        "whole",
                        "egg",
                        Role.RICH,
                        Optional.empty(),
                        LineKind.ALTERNATIVE);
        Drift drift =
                analyse(
                        sour("a", "1860", rum, sugar),
                        sour("b", "1884", rum, sugar),
                        sour("c", "1908", rum, sugar, perhaps),
                        sour("d", "1934", rum, sugar, egg),
                        sour("e", "1958", rum, sugar, egg));
        assertEquals(1, drift.events().size(), drift.events().toString());
        Drift.Event event = drift.events().get(0);
        assertTrue(event.enters());
        assertEquals("Quill 1884", event.after());
        assertEquals("Quill 1934", event.by());
    }

    private static Version sour(String id, String date, SpecLine... lines) {
        return Samples.version(id, date, "Ann Quill", "Jetty Sour", "Rum, sugar.", lines);
    }

    @Test
    void theJuiceOfALemonIsLemonJuice() {
        Version squeezed =
                Samples.version(
                        "a",
                        "1800",
                        "Ann Quill",
                        "Jetty Sour",
                        "Rum, a lemon.",
                        Samples.line("rum", "1", "ml", "rum", Role.SPIRIT, ml(60)),
                        Samples.line("lemon", "1", "juice-of", "lemon", Role.FRUIT, ml(20)));
        Drift drift = analyse(squeezed, punch("b", "1820", 60, 20, 20));
        assertTrue(drift.roles().contains("sour"), drift.roles().toString());
        assertFalse(drift.roles().contains("fruit"), drift.roles().toString());
    }

    @Test
    void twoRecipesOfOneSourceAreOneWitness() {
        Version first = punch("a", "1800", 20, 20, 20);
        List<Observation> twice =
                List.of(new Observation(first, "x"), new Observation(second(first), "y"));
        Drift drift = new DriftAnalysis().analyse(twice, Progress.SILENT);
        assertEquals(2, drift.points().size());
        assertTrue(drift.points().get(0).independent());
        assertFalse(drift.points().get(1).independent());
        assertEquals(
                "No trend is tested: one independent version with amounts is held, and a trend"
                        + " needs at least five, because fewer could stand in order by chance.",
                drift.words().get(0));
    }

    /** The same words once more, as the second recipe of the same source. */
    private static Version second(Version v) {
        Witness w = v.witness();
        Witness next =
                new Witness(
                        w.source(),
                        2,
                        w.number(),
                        w.title(),
                        w.titleSpan(),
                        w.span(),
                        w.body(),
                        w.page());
        Reading r = v.reading();
        Reading reading =
                new Reading(
                        next,
                        r.genre(),
                        r.lines(),
                        r.inherited(),
                        r.steps(),
                        r.vessels(),
                        r.serves(),
                        r.reference(),
                        r.temperature(),
                        r.doubts(),
                        r.confidence());
        Spec s = v.spec();
        return new Version(
                v.source(),
                new Spec(
                        reading,
                        s.lines(),
                        s.system(),
                        s.systemReason(),
                        s.volume(),
                        s.strength(),
                        s.sugar(),
                        s.cautions()));
    }

    @Test
    void oneIngredientTakesThePlaceOfAnotherOfItsRole() {
        SpecLine rum = Samples.line("rum", "1", "ml", "rum", Role.SPIRIT, ml(50));
        SpecLine orgeat = Samples.line("orgeat", "1", "ml", "orgeat", Role.SWEET, ml(10));
        SpecLine syrup = Samples.line("syrup", "1", "ml", "syrup", Role.SWEET, ml(10));
        Drift drift =
                analyse(
                        sour("a", "1860", rum, orgeat),
                        sour("b", "1884", rum, orgeat),
                        sour("c", "1908", rum, syrup),
                        sour("d", "1934", rum, syrup));
        assertEquals(2, drift.events().size());
        long told =
                drift.words().stream()
                        .filter(
                                w ->
                                        w.startsWith(
                                                "syrup takes the place of orgeat between Quill 1884"))
                        .count();
        assertEquals(1, told, drift.words().toString());
    }

    @Test
    void theOrderOfTheObservationsChangesNothing() {
        Version[] versions = {
            punch("e", "1880", 44, 20, 20),
            punch("b", "1820", 25, 20, 20),
            punch("d", "1860", 36, 20, 20),
            punch("a", "1800", 20, 20, 20),
            punch("c", "1840", 30, 20, 20)
        };
        assertEquals(rising(), analyse(versions));
    }

    @Test
    void uncertainDatesAreDrawnAndSaid() {
        Drift drift =
                analyse(
                        punch("a", "1800", 20, 20, 20),
                        punch("b", "182X", 25, 20, 20),
                        punch("c", "1815/1850", 30, 20, 20),
                        punch("d", "1860", 36, 20, 20),
                        punch("e", "1880", 44, 20, 20));
        assertTrue(drift.words().get(0).contains("2 dates are uncertain"), drift.words().get(0));
    }

    @Test
    void nothingAndNoDateAreNoError() {
        assertEquals(0, analyse().points().size());
        Drift undated = analyse(punch("a", "", 2, 1, 1));
        assertEquals(0, undated.points().size());
        assertTrue(undated.left().get(0).contains("date is unknown"));
    }

    @Test
    void theUserCanEndIt() {
        Progress impatient =
                new Progress() {
                    @Override
                    public void begin(String task, int steps) {
                        // not listened to
                    }

                    @Override
                    public void step(int steps) {
                        // not listened to
                    }

                    @Override
                    public boolean isCancelled() {
                        return true;
                    }
                };
        Observation one = new Observation(punch("a", "1800", 2, 1, 1), "a");
        assertThrows(
                CancellationException.class,
                () -> new DriftAnalysis().analyse(List.of(one), impatient));
    }
}
