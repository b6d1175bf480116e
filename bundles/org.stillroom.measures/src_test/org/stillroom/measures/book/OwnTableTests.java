package org.stillroom.measures.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.measures.MeasureMeaning.Measured;
import org.stillroom.measures.MeasureTable;
import org.stillroom.measures.system.BookContext;
import org.stillroom.measures.system.SystemOverride;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.number.Rational;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;

/** A book's own table as one system of exact ratios; legal sizes by Weights and Measures Act 1985. */
class OwnTableTests {

    private static final MeasureTable TABLE = MeasureTable.shipped();

    private static Circumstances at(String place, String date) {
        return new Circumstances(
                Optional.of(Place.of(place)),
                UncertainDate.parse(date),
                Optional.empty(),
                Optional.empty());
    }

    private static Equation eq(int line, long n, String one, long m, String other) {
        return new Equation(
                Side.of(Rational.of(n), one),
                Side.of(Rational.of(m), other),
                "",
                "book.md",
                line,
                Optional.of("12"),
                n + " " + one + " = " + m + " " + other);
    }

    private static MeasureTable with(Equation... equations) {
        OwnTable own = TABLE.ownTable("book.md", List.of(equations)).table();
        return TABLE.forBook(new BookContext(Set.of(), own, List.of()));
    }

    private static Measured measured(MeasureTable table, String word, Circumstances where) {
        return (Measured) table.resolve(word, Optional.empty(), where);
    }

    @Test
    void relativeDefinitionsAreExactThroughTheBooksPint() {
        MeasureTable book =
                with(
                        eq(1, 4, "teaspoon", 1, "tablespoon"),
                        eq(2, 4, "tablespoon", 1, "wineglass"),
                        eq(3, 2, "wineglass", 1, "gill"),
                        eq(4, 4, "gill", 1, "pint"));
        Circumstances where = at("London", "1862");
        Measured spoon = measured(book, "teaspoon", where);
        assertEquals(
                Rational.of(568_26125, 100_000).dividedBy(Rational.of(128)),
                spoon.exact().orElseThrow());
        assertEquals(71.03265625, measured(book, "wineglass", where).one().likely(), 1e-12);
        assertTrue(spoon.reason().contains("p. 12, line 1"), spoon.reason());
        assertTrue(
                spoon.explanation().toText().contains("outranks every other authority"),
                spoon.explanation().toText());
        assertEquals("the book's own table", spoon.authorities().getFirst().source());
        assertTrue(
                spoon.authorities().stream().skip(1).allMatch(a -> a.share() == 0),
                "all others are set aside and shown");
        assertTrue(spoon.authorities().size() > 5, "the others are still shown");
    }

    @Test
    void nearTheYear1826TheRatiosStayExactWhileThePintIsOpen() {
        MeasureTable book = with(eq(1, 4, "gill", 1, "pint"), eq(2, 2, "wineglass", 1, "gill"));
        Circumstances where = at("London", "1825/1827");
        Measured glass = measured(book, "wineglass", where);
        Measured pint = measured(book, "pint", where);
        assertTrue(glass.exact().isEmpty() && !glass.one().isExact());
        assertEquals(2, glass.answers().size());
        var ratio = pint.one().dividedBy(glass.one());
        assertEquals(8, ratio.low(), 1e-9);
        assertEquals(8, ratio.high(), 1e-9);
    }

    @Test
    void twentyOuncesToThePintTellTheSystem() {
        Circumstances where = at("London", "1826");
        double open = TABLE.systems(where).share("imperial");
        MeasureTable twenty = with(eq(1, 20, "fluid ounce", 1, "pint"));
        MeasureTable sixteen = with(eq(1, 16, "fluid ounce", 1, "pint"));
        assertTrue(open > 0.1 && open < 0.9, "" + open);
        assertTrue(twenty.systems(where).share("imperial") > 0.95);
        assertTrue(sixteen.systems(where).share("wine-before-1826") > 0.95);
        assertTrue(
                twenty.systems(where).reason().contains("its own table of measures"),
                twenty.systems(where).reason());
    }

    @Test
    void aContradictionIsReportedWithLineAndWordsAndTheEarlierLineKept() {
        OwnTable.Built built =
                TABLE.ownTable(
                        "book.md",
                        List.of(
                                eq(3, 3, "teaspoon", 1, "tablespoon"),
                                eq(4, 2, "tablespoon", 1, "fluid ounce"),
                                eq(9, 8, "teaspoon", 1, "fluid ounce")));
        assertEquals(1, built.problems().size());
        var problem = built.problems().getFirst();
        assertEquals(9, problem.line().orElseThrow());
        assertEquals("8 teaspoon = 1 fluid ounce", problem.words());
        assertTrue(problem.reason().contains("line 3"), problem.reason());
        assertEquals(
                Rational.of(1, 6),
                built.table().definition(Optional.empty(), "teaspoon").orElseThrow().ratio().low());
    }

    @Test
    void aMeasureThatIsTwiceItselfIsAContradictionToo() {
        OwnTable.Built built = TABLE.ownTable("book.md", List.of(eq(5, 1, "gill", 2, "gill")));
        assertEquals(5, built.problems().getFirst().line().orElseThrow());
        assertTrue(built.table().definitions().isEmpty());
    }

    @Test
    void definitionsThatRestOnOneAnotherAloneAreACircle() {
        OwnTable.Built built =
                TABLE.ownTable(
                        "book.md",
                        List.of(eq(2, 2, "glug", 1, "slosh"), eq(7, 1, "slosh", 2, "glug")));
        var problem = built.problems().getFirst();
        assertEquals(2, problem.line().orElseThrow());
        assertTrue(problem.reason().contains("circle: glug, slosh"), problem.reason());
    }

    @Test
    void aRangeStaysARange() {
        Equation range =
                new Equation(
                        Side.of(Rational.ONE, "wineglass"),
                        new Side(
                                Rational.of(2), Rational.of(5, 2), Optional.empty(), "fluid ounce"),
                        "",
                        "book.md",
                        1,
                        Optional.empty(),
                        "A wineglass is from 2 to 2½ ounces");
        Measured glass = measured(with(range), "wineglass", at("London", "1862"));
        assertEquals(56.826125, glass.one().low(), 1e-6);
        assertEquals(71.03265625, glass.one().high(), 1e-6);
    }

    @Test
    void aDecisionOfTheUserSetsThePintThatTheTableHangsOn() {
        OwnTable own = TABLE.ownTable("book.md", List.of(eq(1, 2, "wineglass", 1, "gill"))).table();
        SystemOverride us =
                new SystemOverride(
                        SystemOverride.Level.SOURCE, TABLE.system("us").orElseThrow(), "a reader");
        MeasureTable book = TABLE.forBook(new BookContext(Set.of(), own, List.of(us)));
        assertEquals(
                59.147059125,
                measured(book, "wineglass", at("London", "1862")).one().likely(),
                1e-9);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void anyOrderOfAConsistentTableGivesTheSameRatios(long seed) {
        List<Equation> lines =
                new ArrayList<>(
                        List.of(
                                eq(1, 60, "minim", 1, "drachm"),
                                eq(2, 8, "drachm", 1, "fluid ounce"),
                                eq(3, 20, "fluid ounce", 1, "pint"),
                                eq(4, 160, "drachm", 1, "pint"),
                                eq(5, 2, "pint", 1, "quart"),
                                eq(6, 4, "quart", 1, "gallon")));
        java.util.Collections.shuffle(lines, new Random(seed));
        OwnTable.Built built = TABLE.ownTable("book.md", lines);
        assertTrue(built.problems().isEmpty(), "seed " + seed + ": " + built.problems());
        assertEquals(
                Rational.of(1, 9600),
                built.table().definition(Optional.empty(), "minim").orElseThrow().ratio().low(),
                "seed " + seed);
    }
}
