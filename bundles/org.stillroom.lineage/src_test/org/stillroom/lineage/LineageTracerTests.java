package org.stillroom.lineage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.spec.Role;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;

final class LineageTracerTests {

    private static SpecLine sherry(String words, String jiggers) {
        return Samples.line(words, jiggers, "jigger", "sherry", Role.WINE, Estimate.exact(60));
    }

    private static SpecLine sugar(String words) {
        return Samples.line(words, "1/2", "tablespoon", "sugar", Role.SWEET, Estimate.exact(7));
    }

    private static SpecLine orange(String words) {
        return Samples.line(words, "2", "slice", "orange", Role.FRUIT, Estimate.exact(10));
    }

    private static Version oldest() {
        return Samples.version(
                "1860 hand",
                "1860",
                "Josiah Marl",
                "Pontoon Cobbler",
                "Take a large tumbler. Put to it a table-spoon of sugar and the juice of an orange, and"
                        + " with 2 jiggers sherry fill up.",
                sherry("2 jiggers sherry", "2"));
    }

    private static Version misprinted() {
        return Samples.version(
                "1884 finder",
                "1884",
                "Silas Brome",
                "Pontoon Cobbler",
                "Half a tablespoonful sugar, two slices orange, muddle together; twelve jiggers sherry."
                        + " Fill the glass with fine ice; shake. Trim with fruit in season, serve with"
                        + " straws.",
                sugar("Half a tablespoonful sugar"),
                orange("two slices orange"),
                sherry("twelve jiggers sherry", "12"));
    }

    private static Version copied() {
        return Samples.version(
                "1891 companion",
                "1891",
                "Anonymous",
                "River Cobbler",
                "Half a tablespoonful sugar, two slices orange, muddle together; twelve jiggers sherry."
                        + " Fill the glass with fine ice; shake. Trim with fruit, serve with straws.",
                sugar("Half a tablespoonful sugar"),
                orange("two slices orange"),
                sherry("twelve jiggers sherry", "12"));
    }

    private static Version unlike(String id, String date) {
        return Samples.version(
                id,
                date,
                "Ruth Anker",
                "Pontoon Cobbler",
                "Stir wine and syrup upon crushed ice in any goblet you please, then dress it.",
                Samples.line("wine", "3", "oz", "sherry", Role.WINE, Estimate.exact(90)),
                Samples.line("syrup", "1/2", "oz", "sugar", Role.SWEET, Estimate.exact(15)));
    }

    private static Drink drink(Version... versions) {
        List<Version> ordered = new ArrayList<>(Arrays.asList(versions));
        ordered.sort(VersionOrder.BY_DATE);
        return new Drink("d", "Pontoon Cobbler", List.of("Pontoon Cobbler"), ordered);
    }

    private static Descent descent(Lineage lineage, Version version) {
        return lineage.descents().stream()
                .filter(d -> d.version().id().equals(version.id()))
                .findFirst()
                .orElseThrow();
    }

    private static Lineage trace(Version... versions) {
        return new LineageTracer().trace(drink(versions), Progress.SILENT);
    }

    @Test
    void aCopyIsKnownByItsWordingAndBySharingAnImpossibleAmount() {
        Lineage lineage = trace(oldest(), misprinted(), copied(), unlike("1934 shake", "1934"));
        Descent copy = descent(lineage, copied());
        assertEquals(Descent.Standing.REPRINT, copy.standing(), copy.toString());
        assertEquals(misprinted().id(), copy.parent().orElseThrow().id());
        String reasons = String.join("; ", copy.candidates().get(0).reasons());
        assertTrue(reasons.contains("words alike"), reasons);
        assertEquals(Descent.Standing.EARLIEST, descent(lineage, oldest()).standing());
        assertTrue(copy.margin() >= 1);
    }

    @Test
    void independentWordingIsNoCopyAndItsRootIsItself() {
        Version modern = unlike("1934 shake", "1934");
        Lineage lineage = trace(oldest(), misprinted(), copied(), modern);
        Descent descent = descent(lineage, modern);
        assertEquals(Descent.Standing.INDEPENDENT, descent.standing(), descent.toString());
        assertFalse(descent.candidates().isEmpty(), "the nearest are shown all the same");
        assertEquals(modern.id(), lineage.roots().get(modern.id()));
        assertEquals(misprinted().id(), lineage.roots().get(copied().id()));
        assertEquals(3, lineage.roots().values().stream().distinct().count());
    }

    @Test
    void whoeverNamesHisSourceIsBelievedThoughHeWordsItAnew() {
        Version thankful =
                Samples.version(
                        "1994 revived",
                        "1994",
                        "Ruth Anker",
                        "Pontoon Cobbler",
                        "Stir wine and syrup upon crushed ice in any goblet. After Quill.",
                        Samples.line("wine", "3", "oz", "sherry", Role.WINE, Estimate.exact(90)),
                        Samples.line(
                                "syrup", "1/2", "oz", "sugar", Role.SWEET, Estimate.exact(15)));
        Lineage lineage = trace(signed("Quill"), copied(), thankful);
        Descent descent = descent(lineage, thankful);
        assertEquals(Descent.Standing.TAKEN, descent.standing(), descent.toString());
        assertEquals("1860 signed#1", descent.parent().orElseThrow().id());
        assertEquals(
                thankful.id(), lineage.roots().get(thankful.id()), "its proportions are its own");
        Descent trade = descent(trace(signed("Quill, cellarman"), copied(), thankful), thankful);
        assertEquals("1860 signed#1", trade.parent().orElseThrow().id());
    }

    private static Version signed(String surname) {
        return Samples.version(
                "1860 signed",
                "1860",
                "Amos " + surname,
                "Pontoon Cobbler",
                "Put in a large glass one tablespoonful sugar and two slices orange. Add two"
                        + " wineglasses sherry, then fill up with shaved ice and shake well.",
                sugar("one tablespoonful sugar"),
                orange("two slices orange"),
                sherry("two wineglasses sherry", "2"));
    }

    @Test
    void twoEqualSourcesAreTiedAndCountOnceAtTheirRoot() {
        Version reissue =
                Samples.version(
                        "1899 reissue",
                        "1899",
                        "Silas Brome",
                        "Pontoon Cobbler",
                        misprinted().words().substring("Pontoon Cobbler\n".length()),
                        sugar("Half a tablespoonful sugar"),
                        orange("two slices orange"),
                        sherry("twelve jiggers sherry", "12"));
        Version late =
                Samples.version(
                        "1905 late",
                        "1905",
                        "Anonymous",
                        "Pontoon Cobbler",
                        misprinted().words().substring("Pontoon Cobbler\n".length()),
                        sugar("Half a tablespoonful sugar"),
                        orange("two slices orange"),
                        sherry("twelve jiggers sherry", "12"));
        Lineage lineage = trace(oldest(), misprinted(), reissue, late);
        assertEquals(Descent.Standing.TIED, descent(lineage, late).standing());
        assertEquals(misprinted().id(), lineage.roots().get(late.id()));
    }

    @Test
    void supportOfAllCandidatesAndOfNoneIsOne() {
        Lineage lineage = trace(oldest(), misprinted(), copied(), unlike("1934 shake", "1934"));
        for (Descent d : lineage.descents()) {
            double sum = d.candidates().stream().mapToDouble(Candidate::support).sum();
            assertTrue(sum <= 1 + 1e-9, d.toString());
            assertTrue(d.candidates().stream().allMatch(c -> c.support() >= 0));
        }
    }

    @Test
    void aTextWithoutDateIsNotPlacedByGuess() {
        Version undated = unlike("nd list", "");
        Lineage lineage = trace(oldest(), misprinted(), undated);
        assertEquals(Descent.Standing.UNPLACED, descent(lineage, undated).standing());
    }

    @Test
    void theOrderOfTheVersionsChangesNothing() {
        List<Version> versions =
                new ArrayList<>(
                        List.of(oldest(), misprinted(), copied(), unlike("1934 shake", "1934")));
        Lineage expected = trace(versions.toArray(Version[]::new));
        Random random = new Random(4);
        for (int i = 0; i < 10; i++) {
            Collections.shuffle(versions, random);
            Drink shuffled =
                    new Drink("d", "Pontoon Cobbler", List.of("Pontoon Cobbler"), versions);
            Lineage lineage = new LineageTracer().trace(shuffled, Progress.SILENT);
            for (Descent d : expected.descents()) {
                assertEquals(d, descent(lineage, d.version()));
            }
        }
    }

    private static Drinks group(List<Version> versions, Assertion... decisions) {
        return new DrinkGrouping().group(versions, List.of(decisions), Progress.SILENT);
    }

    private static Assertion decision(String id, String action, String a, String b) {
        return new Assertion(
                id,
                "2001-01-01T00:00:00Z",
                "test",
                "drink",
                "",
                java.util.Optional.empty(),
                new TreeMap<>(java.util.Map.of("action", action, "a", a, "b", b)),
                java.util.Optional.empty());
    }

    private static Version ginAndBitters(String id, String date) {
        return Samples.version(
                id,
                date,
                "Ann Quill",
                "Ebbing",
                "Swill the glass with bitters and pour in the gin.",
                Samples.line("gin", "1", "jigger", "gin", Role.SPIRIT, Estimate.exact(50)),
                Samples.line("bitters", "3", "dash", "bitters", Role.BITTER, Estimate.exact(2)));
    }

    private static Version rumAndCider(String id, String date) {
        return Samples.version(
                id,
                date,
                "Tom Reck",
                "Ebbing",
                "Rum upon ice in a long glass, sweet cider to the top.",
                Samples.line("rum", "1", "jigger", "rum", Role.SPIRIT, Estimate.exact(60)),
                Samples.line("cider", "6", "oz", "cider", Role.BEER, Estimate.exact(180)));
    }

    private static List<Version> library() {
        return List.of(
                oldest(),
                misprinted(),
                copied(),
                ginAndBitters("1874 cellar", "1874"),
                ginAndBitters("1934 gin", "1934"),
                rumAndCider("1860 rum", "1860"),
                rumAndCider("1908 rum", "1908"));
    }

    @Test
    void oneNameForTwoDrinksSplitsAndOneDrinkUnderTwoNamesJoins() {
        Drinks drinks = group(library());
        Drink cobbler = drinks.of(copied().id()).orElseThrow();
        assertEquals(3, cobbler.versions().size(), cobbler.names().toString());
        assertEquals("Pontoon Cobbler", cobbler.name());
        assertTrue(cobbler.names().contains("River Cobbler"));
        assertFalse(
                drinks.of("1874 cellar#1")
                        .orElseThrow()
                        .id()
                        .equals(drinks.of("1860 rum#1").orElseThrow().id()));
        assertEquals(3, drinks.drinks().size());
    }

    @Test
    void theOrderOfTheFilesChangesNoDrink() {
        List<Version> versions = new ArrayList<>(library());
        Drinks expected = group(versions);
        Random random = new Random(8);
        for (int i = 0; i < 10; i++) {
            Collections.shuffle(versions, random);
            assertEquals(expected, group(versions));
        }
    }

    @Test
    void whatAPersonDecidedHolds() {
        String gin = "1874 cellar#1";
        String rum = "1860 rum#1";
        Drinks same = group(library(), decision("1", "same", gin, rum));
        assertEquals(4, same.of(gin).orElseThrow().versions().size());
        Drinks apart =
                group(library(), decision("1", "different", misprinted().id(), copied().id()));
        assertEquals(1, apart.of(copied().id()).orElseThrow().versions().size());
        Drinks changed =
                group(
                        library(),
                        decision("1", "same", gin, rum),
                        decision("2", "different", gin, rum));
        assertEquals(2, changed.of(gin).orElseThrow().versions().size());
    }

    @Test
    void drinksAreFoundByAnyNameHoweverSpelt() {
        Drinks drinks = group(library());
        DrinkFinder finder = new DrinkFinder();
        assertEquals("Pontoon Cobbler", finder.find(drinks, "the ponton cobler").get(0).name());
        assertEquals("Pontoon Cobbler", finder.find(drinks, "RIVER COBBLER").get(0).name());
        assertTrue(finder.find(drinks, "Candlewick").isEmpty());
    }
}
