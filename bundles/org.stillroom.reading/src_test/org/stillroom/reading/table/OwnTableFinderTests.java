package org.stillroom.reading.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.measures.knowledge.MeasureWords;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.SourceText;
import org.stillroom.reading.cut.BookCutter;

/** A book's own table of measures in many layouts; every text is invented. */
class OwnTableFinderTests {

    private static final OwnTableFinder FINDER = new OwnTableFinder(MeasureWords.shipped());

    static List<OwnStatement> find(String text) {
        Source source =
                new Source(
                        "book.txt",
                        Bibliography.titled("A book"),
                        SourceText.of(text),
                        List.of(),
                        "");
        return FINDER.find(source, new BookCutter().cut(source));
    }

    static String said(String text) {
        return find(text).stream()
                .map(OwnStatement::equation)
                .map(
                        e ->
                                e.one().low()
                                        + " "
                                        + e.one().word()
                                        + " = "
                                        + e.other().low()
                                        + (e.other().high().equals(e.other().low())
                                                ? ""
                                                : "–" + e.other().high())
                                        + " "
                                        + e.other().word()
                                        + (e.of().isEmpty() ? "" : " of " + e.of()))
                .collect(Collectors.joining("; "));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '#',
            value = {
                "A wineglass holds 2 ounces.#1 wineglass = 2 fluid ounce",
                "4 gills = 1 pint#4 gill = 1 pint",
                "60 drops make a teaspoonful.#60 drop = 1 teaspoon",
                "A jigger holds two ounces and a pony one.#1 jigger = 2 fluid ounce; 1 pony = 1 fluid ounce",
                "By a wine-glass I mean two ounces, neither more nor less.#1 wineglass = 2 fluid ounce",
                "The pewter tot runs five to the half pint.#5 tot = 1/2 pint",
                "Where I ſay a Glaſs I mean ſuch a Wine-glaſs as ſtands eight to the Pint.#1 glass = 1 wineglass; 8 wineglass = 1 pint",
                "Four tea-spoonfuls make a table-spoonful, four table-spoonfuls a wine-glass, and two wine-glasses a gill.#4 teaspoon = 1 tablespoon; 4 tablespoon = 1 wineglass; 2 wineglass = 1 gill",
                "My wine-glass holds four table-spoonfuls, and my gill is the quarter of a pint.#1 wineglass = 4 tablespoon; 1 gill = 1/4 pint",
                "Where we say a cup we mean a breakfast cup, which is half a pint.#1 cup = 1 breakfast cup; 1 breakfast cup = 1/2 pint",
                "One pint equals four gills, or twenty ounces.#1 pint = 4 gill; 1 pint = 20 fluid ounce",
                "There are four gills in a pint.#4 gill = 1 pint",
                "The jigger of this house holds two ounces, and the pony half as much.#1 jigger = 2 fluid ounce; 1 pony = 1 fluid ounce",
                "A wineglass is from 2 to 2½ ounces.#1 wineglass = 2–2 1/2 fluid ounce",
                "2 tablespoonfuls = 1 oz. = ⅛ gill#2 tablespoon = 1 fluid ounce; 1 fluid ounce = 1/8 gill",
                "A tablespoonful of powdered sugar is half an ounce.#1 tablespoon = 1/2 oz of powdered sugar",
                "A dash is six drops; a barspoonful is a teaspoonful.#1 dash = 6 drop; 1 barspoon = 1 teaspoon",
                "A jigger is a measure used for mixing drinks; it holds two ounces.#1 jigger = 2 fluid ounce",
                "By a goblet is meant a large tumbler, holding twelve ounces.#1 goblet = 1 tumbler; 1 tumbler = 12 fluid ounce",
                "Un verre à liqueur contient 3 cl.#1 liqueur glass = 3 cl",
                "Ein Weinglas enthält 100 ccm.#1 wineglass = 100 ml",
            })
    void sentencesAndSigns(String text, String expected) {
        assertEquals(expected, said("TO THE READER.\n\n" + text + "\n"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '#',
            value = {
                "60 drops . . . . 1 teaspoonful%4 teaspoonfuls . . . . 1 tablespoonful%2 do. . . . . 1 ounce#60 drop = 1 teaspoon; 4 teaspoon = 1 tablespoon; 2 teaspoon = 1 fluid ounce",
                "| Measure | Ounces |%|---|---|%| 1 gill | 5 |%| ½ gill | 2½ |%| ¼ gill | 1¼ |#1 gill = 5 fluid ounce; 1/2 gill = 2 1/2 fluid ounce; 1/4 gill = 1 1/4 fluid ounce",
                "1 jigger, 2 ounces%1 pony, 1 ounce%1 barspoon, 1 teaspoon#1 jigger = 2 fluid ounce; 1 pony = 1 fluid ounce; 1 barspoon = 1 teaspoon",
                "Wineglass ...... 2 oz.%Tumbler ...... 10 oz.#1 wineglass = 2 fluid ounce; 1 tumbler = 10 fluid ounce",
                "4 gills      1 pint%2 pints      1 quart%4 quarts     1 gallon#4 gill = 1 pint; 2 pint = 1 quart; 4 quart = 1 gallon",
                "- 60 minims make 1 drachm%- 8 drachms make 1 ounce%- 20 ounces make 1 pint#60 minim = 1 drachm; 8 drachm = 1 fluid ounce; 20 fluid ounce = 1 pint",
                "Jigger: 1½ oz.%Pony: ¾ oz.#1 jigger = 1 1/2 fluid ounce; 1 pony = 3/4 fluid ounce",
                "Four gills to the pint%Two pints to the quart#4 gill = 1 pint; 2 pint = 1 quart",
                "Wineglass — 2 ounces%Teacup — 5 ounces#1 wineglass = 2 fluid ounce; 1 teacup = 5 fluid ounce",
            })
    void tablesInColumns(String text, String expected) {
        assertEquals(expected, said("MEASURES.\n\n" + text.replace('%', '\n') + "\n"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '#',
            value = {
                "Take two wineglasses of rum and one gill of water.",
                "Add 20 drops to the pint and stir.",
                "Put two ounces of sugar to the quart.",
                "Boil it until two quarts are reduced to one pint.",
                "Pour into a goblet that holds a pint; a gill of rum is enough for it.",
                "1 wineglass rum%2 dashes bitters%1 teaspoonful sugar",
                "Into a mixing-glass, fill glass one-third full of ice.",
                "Place a bar spoon in a hot water glass; add one lump of sugar.",
                "One quart of ripe berries or enough to make one pint of juice.",
                "A pint is a pound the world around.",
            })
    void recipesAreNoTables(String text) {
        assertEquals("", said(text.replace('%', '\n')));
    }

    @Test
    void aStatementKnowsItsLineAndPage() {
        String text =
                "[p. 1]\n\nPREFACE.\n\nTo the reader.\n\n[p. 2]\n\nMEASURES.\n\n4 gills = 1 pint\n"
                        + "2 pints = 1 quart\n\n[p. 3]\n\nGIN SLING.\n\nOne wineglass gin. Stir.\n";
        List<OwnStatement> found = find(text);
        assertEquals(2, found.size());
        assertEquals(11, found.get(0).equation().line());
        assertEquals("2", found.get(0).equation().page().orElseThrow());
        assertEquals("p. 2, line 11", found.get(0).equation().where());
        assertTrue(found.get(0).row());
    }
}
