package org.stillroom.measures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.measures.MeasureMeaning.Measured;
import org.stillroom.measures.book.OwnTable;
import org.stillroom.measures.knowledge.Authority;
import org.stillroom.measures.system.BookContext;
import org.stillroom.measures.system.SystemOverride;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Size;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;
import org.stillroom.model.source.Trade;

class MeasureTableTests {

    private static final MeasureTable TABLE = MeasureTable.shipped();

    static Circumstances at(String place, String date, String trade) {
        return new Circumstances(
                Optional.ofNullable(place).map(Place::of),
                Optional.ofNullable(date).flatMap(UncertainDate::parse),
                Optional.ofNullable(trade).flatMap(Trade::of),
                Optional.of("en"));
    }

    private static Measured measured(String word, Circumstances where) {
        return assertInstanceOf(Measured.class, TABLE.resolve(word, Optional.empty(), where));
    }

    @Test
    void knowsAtLeast140MeasuresOf30WithCompetingAuthorities() {
        Map<String, Set<String>> works = new HashMap<>();
        for (Authority a : TABLE.authorities()) {
            if (a.counts()) {
                works.computeIfAbsent(a.word(), w -> new HashSet<>()).add(a.citation().key());
            }
        }
        TABLE.units().stream()
                .filter(u -> !u.word().isEmpty())
                .forEach(
                        u ->
                                works.computeIfAbsent(u.word(), w -> new HashSet<>())
                                        .add(u.system().id()));
        long competing = works.values().stream().filter(s -> s.size() > 1).count();
        System.out.printf(
                Locale.ROOT,
                "Measures: %d, of which %d with competing authorities; %d statements%n",
                works.size(),
                competing,
                TABLE.authorities().size());
        assertTrue(works.size() >= 140, "measures: " + works.size());
        assertTrue(competing >= 30, "with competing authorities: " + competing);
    }

    @Test
    void everyStatementHasASource() {
        for (Authority a : TABLE.authorities()) {
            assertFalse(a.citation().work().isBlank(), a.id());
            assertFalse(a.statement().isBlank(), a.id());
        }
    }

    /**
     * The range of Kitchiner, Enquire Within and the half gill, reference sections B and Appendix
     * A.
     */
    @Test
    void wineglassInABritishKitchenOf1862() {
        Estimate one = measured("wine-glassfuls", at("GB", "1862", "kitchen")).one();
        assertEquals(56.8, one.likely(), 0.05);
        assertEquals(50.0, one.low(), 0.1);
        assertEquals(71.0, one.high(), 0.1);
    }

    @ParameterizedTest
    @CsvSource({
        "gill,GB,1862,kitchen,142.0653125",
        "gill,US,1862,bar,118.29411825",
        "jill,US,1840,kitchen,118.29411825",
        "pint,GB,1810,kitchen,473.176473",
        "pint,GB,1895,bar,568.26125",
        "quart,US,1895,bar,946.352946",
        "drachm,GB,1860,pharmacy,3.5516328125",
        "minim,US,1900,pharmacy,0.061611519921875",
        "oz,US,1936,bar,29.5735295625",
        "oz,GB,1936,bar,28.4130625",
        "gallon,London,1900,distilling,4546.09",
        "cl,FR,1936,bar,10",
        "go,JP,1900,bar,180.39068",
        "mutchkin,Edinburgh,1780,kitchen,423.622"
    })
    void legalUnitsAreExact(
            String word, String place, String date, String trade, double millilitres) {
        Measured m = measured(word, at(place, date, trade));
        assertEquals(millilitres, m.one().likely(), millilitres * 1e-6, m.reason());
        assertTrue(m.exact().isPresent(), m.reason());
        assertTrue(m.one().isExact());
    }

    @Test
    void aBritishBookNear1826ShowsBothAnswers() {
        Measured m = measured("pint", at("London", "1826", "kitchen"));
        List<Double> amounts = m.answers().stream().map(a -> a.amount()).toList();
        assertEquals(Set.of(473.176473, 568.26125), Set.copyOf(amounts));
        assertTrue(
                m.reason().contains("473.18 ml") && m.reason().contains("568.26 ml"), m.reason());
        assertTrue(m.exact().isEmpty());
    }

    @Test
    void theNorthernGillIsHalfAPint() {
        Measured m = measured("gill", at("Manchester", "1880", "bar"));
        assertEquals(284.130625, m.one().likely(), 1e-6);
        assertEquals(142.0653125, m.one().low(), 1e-6);
    }

    @Test
    void anUnknownPlaceOrDateWidensTheRangeAndSaysSo() {
        for (String word : List.of("wineglass", "teaspoon", "jigger", "gill", "dash", "tumbler")) {
            Measured known = measured(word, at("US", "1895", "bar"));
            Measured unknown = measured(word, at(null, null, "bar"));
            double narrow = known.one().high() - known.one().low();
            double wide = unknown.one().high() - unknown.one().low();
            assertTrue(wide >= narrow, word + ": " + known.one() + " and " + unknown.one());
            assertTrue(unknown.reason().contains("not known"), unknown.reason());
        }
    }

    @Test
    void linesThatShareAWineglassHaveAnExactRatioAndAWideSum() {
        Circumstances where = at("GB", "1862", "kitchen");
        Estimate two = measured("wineglass", where).times(Rational.of(2));
        Estimate half = measured("wine glass", where).times(Rational.of(1, 2));
        Estimate ratio = two.dividedBy(half);
        assertEquals(4, ratio.low(), 1e-12);
        assertEquals(4, ratio.high(), 1e-12);
        Estimate sum = two.plus(half);
        assertEquals(2.5 * 50.0, sum.low(), 0.3);
        assertEquals(2.5 * 71.03, sum.high(), 0.3);
    }

    @Test
    void aQuartSharesTheUnknownOfItsPint() {
        Circumstances where = at(null, "1880", "kitchen");
        Estimate ratio = measured("quart", where).one().dividedBy(measured("pint", where).one());
        assertEquals(2, ratio.low(), 1e-12);
        assertEquals(2, ratio.high(), 1e-12);
    }

    @Test
    void ounceOfALiquidIsAFluidOunceAndOfSugarAWeight() {
        Circumstances kitchen = at("GB", "1894", "kitchen");
        MeasureQuestion ounce = MeasureQuestion.of("oz.", kitchen);
        assertEquals(
                28.4130625,
                TABLE.resolve(ounce.about(Matter.LIQUID, "gin"))
                        .millilitres()
                        .orElseThrow()
                        .likely());
        assertEquals(
                28.349523125,
                TABLE.resolve(ounce.about(Matter.SOLID, "sugar")).grams().orElseThrow().likely(),
                1e-9);
    }

    @Test
    void sugarByTheSpoonAndTheLump() {
        Circumstances modern = at("US", "2015", "kitchen");
        MeasureQuestion spoon =
                MeasureQuestion.of("teaspoonful", modern).about(Matter.SOLID, "powdered sugar");
        assertEquals(2.5, TABLE.resolve(spoon).grams().orElseThrow().likely());
        Estimate old =
                TABLE.resolve(MeasureQuestion.of("lumps", at("GB", "1820", "kitchen")))
                        .grams()
                        .orElseThrow();
        assertEquals(9, old.likely());
        assertTrue(old.high() >= 15);
    }

    @Test
    void fruitGivesJuiceWithARangeAndRefusesWhatItDoesNotKnow() {
        MeasureQuestion juice = MeasureQuestion.of("juice of", at("US", "2015", "bar"));
        for (String lemon : List.of("lemon", "lemons", "lemon juice")) {
            Estimate one =
                    TABLE.resolve(juice.about(Matter.LIQUID, lemon)).millilitres().orElseThrow();
            assertEquals(46.5, one.likely(), 0.05, lemon);
            assertTrue(one.low() < 35 && one.high() > 55, lemon + ": " + one);
        }
        assertInstanceOf(
                MeasureMeaning.Unmeasured.class,
                TABLE.resolve(juice.about(Matter.LIQUID, "quandong")));
    }

    /** The example rows of docs/knowledge-measures.md. */
    @Test
    void theExampleOfTheDocumentationLoads() {
        MeasureTable.Extended more =
                TABLE.with(
                        "knowledge/measures.csv",
                        "word,of,low,likely,high,unit,place,from,to,trade,source,role,statement\n"
                                + "wineglass,,,2 1/2,,imp-fl-oz,Lancashire,1870,1890,kitchen,"
                                + "\"a manuscript receipt book of my own, f. 3\",,Half a gill.\n"
                                + "juice-of,lemon,36,44,54,ml,,,,bar,"
                                + "\"my own measurement, 12 lemons, May 2024\",overrule,\n"
                                + "toddy-stick,,,12,,ml,GB,1860,1870,bar,"
                                + "\"letter of a cellarman, 1866\",,\n");
        assertTrue(more.problems().isEmpty(), () -> more.problems().toString());
        MeasureQuestion juice =
                MeasureQuestion.of("juice of", at("GB", "1895", "bar"))
                        .about(Matter.LIQUID, "lemon");
        Estimate own = more.table().resolve(juice).millilitres().orElseThrow();
        assertEquals(44, own.likely());
    }

    @Test
    void sizeComesFromAuthoritiesOrFromCommonPractice() {
        Circumstances where = at("US", "1917", "bar");
        MeasureMeaning large = TABLE.resolve("bar-glass", Optional.of(Size.LARGE), where);
        assertEquals(354.88, large.millilitres().orElseThrow().likely(), 0.01);
        Estimate small =
                TABLE.resolve("wineglass", Optional.of(Size.SMALL), where)
                        .millilitres()
                        .orElseThrow();
        Estimate plain = measured("wineglass", where).one();
        assertEquals(0.8 * plain.likely(), small.likely(), 1e-9);
        assertTrue(small.low() < plain.low());
    }

    @Test
    void openWordsHaveNoAmount() {
        for (String word : List.of("part", "fill", "top", "unstated", "to taste")) {
            MeasureMeaning m = TABLE.resolve(word, Optional.empty(), Circumstances.UNKNOWN);
            assertInstanceOf(MeasureMeaning.Open.class, m);
            assertTrue(m.millilitres().isEmpty() && m.grams().isEmpty());
        }
    }

    @Test
    void anUnknownWordNamesTheNearest() {
        MeasureMeaning m = TABLE.resolve("wineglasfool", Optional.empty(), Circumstances.UNKNOWN);
        MeasureMeaning.Unknown unknown = assertInstanceOf(MeasureMeaning.Unknown.class, m);
        assertEquals("wineglass", unknown.nearest().getFirst());
        assertTrue(unknown.reason().contains("wineglass"));
    }

    @Test
    void theBooksOwnTableOutranksEverything() {
        MeasureTable.Extended own =
                TABLE.with(
                        "knowledge/measures.csv",
                        "word,likely,unit,source,role,book\n"
                                + "wineglass,3,imp-fl-oz,the book itself,own-table,household.md\n"
                                + "pint,16,us-fl-oz,the book itself,own-table,household.md\n"
                                + "gill,9,us-fl-oz,another book,own-table,other.md\n");
        assertTrue(own.problems().isEmpty(), () -> own.problems().toString());
        OwnTable table = own.table().ownTable("household.md", List.of()).table();
        MeasureTable book = own.table().forBook(new BookContext(Set.of(), table, List.of()));
        Circumstances where = at("GB", "1862", "kitchen");
        Measured m = (Measured) book.resolve("wineglass", Optional.empty(), where);
        assertEquals(85.2391875, m.one().likely(), 1e-9);
        assertEquals(1, m.authorities().getFirst().share());
        assertTrue(
                book.systems(where).share("wine-before-1826") > 0.5, book.systems(where).reason());
    }

    @Test
    void theNarrowestDecisionOfTheUserWins() {
        SystemOverride library =
                new SystemOverride(
                        SystemOverride.Level.LIBRARY,
                        TABLE.system("us").orElseThrow(),
                        "A. Reader");
        SystemOverride line =
                new SystemOverride(
                        SystemOverride.Level.LINE,
                        TABLE.system("imperial").orElseThrow(),
                        "A. Reader");
        Circumstances where = at("GB", "1810", "kitchen");
        MeasureTable decided =
                TABLE.forBook(new BookContext(Set.of(), OwnTable.NONE, List.of(line, library)));
        Measured pint = (Measured) decided.resolve("pint", Optional.empty(), where);
        assertEquals(568.26125, pint.one().likely());
        assertTrue(pint.systems().reason().contains("the line"), pint.systems().reason());
        MeasureTable wide =
                TABLE.forBook(new BookContext(Set.of(), OwnTable.NONE, List.of(library)));
        assertEquals(
                473.176473,
                ((Measured) wide.resolve("pint", Optional.empty(), where)).one().likely());
    }

    @Test
    void aLibrarysOwnRowsAddToOursOrSetThemAside() {
        String head = "word,likely,unit,place,from,to,trade,source,role\n";
        Circumstances where = at("GB", "1862", "bar");
        MeasureTable more =
                TABLE.with(
                                "knowledge/measures.csv",
                                head
                                        + "wineglass,90,ml,GB,1860,1865,bar,my find,overrule\n"
                                        + "slosh,2,us-fl-oz,US,,,bar,my find,\n")
                        .table();
        Measured m = (Measured) more.resolve("wineglass", Optional.empty(), where);
        assertEquals(90, m.one().likely());
        assertTrue(m.explanation().toText().contains("sets ours aside"), m.explanation().toText());
        Measured elsewhere =
                (Measured) more.resolve("wineglass", Optional.empty(), at("US", "1895", "bar"));
        assertEquals(59.147, elsewhere.one().likely(), 0.01);
        Measured slosh =
                (Measured) more.resolve("sloshes".substring(0, 5), Optional.empty(), where);
        assertEquals(59.147, slosh.one().likely(), 0.01);
        MeasureTable beside =
                TABLE.with(
                                "knowledge/measures.csv",
                                head + "wineglass,90,ml,GB,1860,1865,bar,my find,\n")
                        .table();
        Measured both = (Measured) beside.resolve("wineglass", Optional.empty(), where);
        assertTrue(both.one().high() >= 90, both.reason());
        assertTrue(both.authorities().stream().anyMatch(a -> a.source().equals("my find")));
    }

    @Test
    void copiesOfOneRuleCountAsOneWitness() {
        Measured m = measured("drop", at("US", "1857", "kitchen"));
        double copied =
                m.authorities().stream()
                        .filter(a -> a.authority().group().equals("twenty-five-drops"))
                        .mapToDouble(WeightedAuthority::share)
                        .sum();
        assertTrue(copied < 0.25, "share of the copied rule: " + copied);
        assertTrue(m.warnings().stream().anyMatch(w -> w.contains("one witness")));
    }

    @Test
    void theSharesOfTheAuthoritiesMakeAWhole() {
        for (String word : List.of("wineglass", "jigger", "pint", "gill", "dash", "teacup")) {
            Measured m = measured(word, at("GB", "1862", "kitchen"));
            double sum = m.authorities().stream().mapToDouble(WeightedAuthority::share).sum();
            assertEquals(1, sum, 1e-9, word);
            double answers = m.answers().stream().mapToDouble(a -> a.share()).sum();
            assertEquals(1, answers, 1e-9, word);
        }
    }

    @Test
    void everyWordResolvesEverywhereInOrderedNumbers() {
        List<Circumstances> wheres =
                List.of(
                        Circumstances.UNKNOWN,
                        at("US", "1895", "bar"),
                        at("GB", "1790", "pharmacy"),
                        at("FR", "1936", "bar"),
                        at("DE", "186X", "kitchen"),
                        at("JP", null, null),
                        at("Nowhere", "../1850", "distilling"),
                        at(null, "1850~", "bar"));
        for (Circumstances where : wheres) {
            TABLE.words()
                    .all()
                    .forEach(
                            w -> {
                                MeasureMeaning m = TABLE.resolve(w.word(), Optional.empty(), where);
                                if (m instanceof Measured x) {
                                    Estimate e = x.one();
                                    assertTrue(
                                            e.low() > 0
                                                    && e.low() <= e.likely()
                                                    && e.likely() <= e.high(),
                                            w.word() + " " + e);
                                }
                                assertFalse(m.reason().isBlank(), w.word());
                            });
        }
    }

    @Test
    void manyThreadsGetTheSameAnswers() {
        MeasureTable fresh = MeasureTable.shipped();
        Circumstances where = at("US", "1895", "bar");
        Set<String> answers =
                Set.copyOf(
                        IntStream.range(0, 4000)
                                .parallel()
                                .mapToObj(
                                        i ->
                                                fresh.resolve("wineglass", Optional.empty(), where)
                                                        .explanation()
                                                        .toText())
                                .toList());
        assertEquals(1, answers.size());
    }

    /** The figures of a rind are from memory; that it is not a whole lemon is common knowledge. */
    @ParameterizedTest
    @ValueSource(strings = {"rinds of lemons", "lemon peel", "yellow part of the rind of lemon"})
    void aRindIsNoWholeFruit(String thing) {
        MeasureQuestion whole =
                new MeasureQuestion(
                        "whole", Optional.empty(), Matter.SOLID, thing, Circumstances.UNKNOWN);
        double rind = TABLE.resolve(whole).grams().orElseThrow().likely();
        double fruit =
                TABLE.resolve(whole.about(Matter.SOLID, "lemon")).grams().orElseThrow().likely();
        assertTrue(rind < fruit / 3, thing + ": " + rind + " of " + fruit);
        assertTrue(
                TABLE.resolve(whole.about(Matter.SOLID, "rind of quince")).grams().isEmpty(),
                "no figure for the rind of a quince");
    }

    /** Grams as for a large egg's parts in USDA SR 28, and less for the smaller old egg. */
    @ParameterizedTest
    @CsvSource({
        "white of egg,egg white",
        "yolks of eggs,egg yolk",
        "fresh egg,egg",
        "egg beaten,egg",
        "cloves,clove"
    })
    void whatIsCountedWholeIsTheThingItself(String thing, String word) {
        MeasureMeaning whole =
                TABLE.resolve(
                        new MeasureQuestion(
                                "whole",
                                Optional.empty(),
                                Matter.UNKNOWN,
                                thing,
                                Circumstances.UNKNOWN));
        MeasureMeaning itself = TABLE.resolve(word, Optional.empty(), Circumstances.UNKNOWN);
        assertEquals(itself.grams().orElseThrow().likely(), whole.grams().orElseThrow().likely());
    }

    /** What one stuff or another country's books warn of has nothing to do with a legal measure. */
    @Test
    void warningsKeepToTheirStuffAndPlace() {
        assertEquals(List.of(), measured("fluid ounce", at("US", "1895", "bar")).warnings());
        assertEquals(List.of(), measured("pint", at("US", "1895", "bar")).warnings());
        assertFalse(measured("pint", at("GB", "1861", "kitchen")).warnings().isEmpty());
        assertFalse(measured("drop", at("US", "1895", "bar")).warnings().isEmpty());
    }
}
