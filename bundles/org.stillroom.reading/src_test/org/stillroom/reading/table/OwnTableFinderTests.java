package org.stillroom.reading.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.measures.knowledge.MeasureWords;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.SourceText;
import org.stillroom.reading.cut.BookCutter;

/** A book's own table of measures in many layouts; every text is invented. */
class OwnTableFinderTests {

    private static final OwnTableFinder FINDER = new OwnTableFinder(MeasureWords.shipped());

    static List<OwnStatement> find(String text) {
        return search(text).statements();
    }

    private static OwnTableFinder.Found search(String text) {
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
                "A large tumbler holds a pint and a half.#1 tumbler = 1 1/2 pint",
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
                "Une cuillerée à café contient cinq millilitres, une cuillerée à bouche quinze.#1 teaspoon = 5 ml; 1 tablespoon = 15 ml",
                "Le verre à madère équivaut à environ 6 centilitres.#1 madeira glass = 6 cl",
                "Trois cuillerées à café font une cuillerée à bouche.#3 teaspoon = 1 tablespoon",
                "Dix verres à liqueur font un demi-litre.#10 liqueur glass = 1/2 litre",
                "Il y a huit verres à bordeaux dans un litre.#8 wineglass = 1 litre",
                "Par un verre ordinaire j'entends deux décilitres.#1 glass = 2 dl",
                "La chopine vaut deux demi-setiers.#1 chopine = 2 demi-setier",
                "Un verre à vin contient un décilitre et demi.#1 wineglass = 1 1/2 dl",
                "Une bouteille équivaut à trois quarts de litre.#1 bottle = 3/4 litre",
                "Un verre à liqueur représente deux et demi centilitres.#1 liqueur glass = 2 1/2 cl",
                "Soixante gouttes font une cuillerée à café, et quatre cuillerées à café une once.#60 drop = 1 teaspoon; 4 teaspoon = 1 fluid ounce",
                "Une cuillerée à bouche de sucre pèse vingt grammes.#1 tablespoon = 20 g of sucre",
                "Le petit verre tient de 2 à 3 centilitres.#1 liqueur glass = 2–3 cl",
            })
    void sentencesInFrench(String text, String expected) {
        assertEquals(expected == null ? "" : expected, said("AU LECTEUR.\n\n" + text + "\n"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '#',
            value = {
                "Ein Weinglas fasst ungefähr ein Achtel Liter.#1 wineglass = 1/8 litre",
                "Drei Teelöffel sind gleich einem Esslöffel.#3 teaspoon = 1 tablespoon",
                "Acht Weingläser gehen auf einen Liter.#8 wineglass = 1 litre",
                "Auf den Liter gehen acht Weingläser.#1 litre = 8 wineglass",
                "Unter einem Glas verstehe ich immer 200 ccm.#1 glass = 200 ml",
                "Ein Schoppen enthält einen halben Liter.#1 schoppen = 1/2 litre",
                "Eine Flasche hält drei viertel Liter.#1 bottle = 3/4 litre",
                "Ein Likörglas misst zwei und ein halb Zentiliter.#1 liqueur glass = 2 1/2 cl",
                "Zwanzig Tropfen entsprechen einem Milliliter.#20 drop = 1 ml",
                "Ein Esslöffel Zucker wiegt 15 Gramm.#1 tablespoon = 15 g of zucker",
                "Ein Esslöffel entspricht drei Teelöffeln oder fünfzehn Milliliter.#1 tablespoon = 3 teaspoon; 1 tablespoon = 15 ml",
                "Ein Weinglas hält zwei bis drei Unzen.#1 wineglass = 2–3 fluid ounce",
                "Ein Seidel ist 0,35 Liter.#1 seidel = 7/20 litre",
            })
    void sentencesInGerman(String text, String expected) {
        assertEquals(expected == null ? "" : expected, said("AN DEN LESER.\n\n" + text + "\n"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '#',
            value = {
                "Una copa de vino equivale a unos doce centilitros.#1 wineglass = 12 cl",
                "Tres cucharaditas hacen una cucharada.#3 teaspoon = 1 tablespoon",
                "La copita contiene tres centilitros, y el vaso veinte.#1 liqueur glass = 3 cl; 1 glass = 20 cl",
                "Hay cuatro cuartillos en una azumbre.#4 cuartillo = 1 azumbre",
                "Por un vaso se entiende un cuarto de litro.#1 glass = 1/4 litre",
                "Una cucharada de azúcar pesa quince gramos.#1 tablespoon = 15 g of azucar",
                "Un cuartillo es medio litro.#1 cuartillo = 1/2 litre",
                "Una botella tiene tres cuartos de litro, o seis copas de vino.#1 bottle = 3/4 litre; 1 bottle = 6 wineglass",
                "Una copita mide dos y medio centilitros.#1 liqueur glass = 2 1/2 cl",
                "El vaso ordinario lleva de 2 a 3 decilitros.#1 glass = 2–3 dl",
                "Veinte gotas equivalen a un mililitro.#20 drop = 1 ml",
            })
    void sentencesInSpanish(String text, String expected) {
        assertEquals(expected == null ? "" : expected, said("AL LECTOR.\n\n" + text + "\n"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '#',
            value = {
                "MESURES DU BAR%%La cuillerée à café . . . . 5 grammes%Le verre à liqueur . . . . 3 centilitres%Le verre à madère . . . . 6 cl#1 liqueur glass = 3 cl; 1 madeira glass = 6 cl",
                "MESURES%%| Mesure | Centilitres |%|---|---|%| verre à vin | 12 |%| petit verre | 2½ |%| un demi-verre à vin | 6 |#1 wineglass = 12 cl; 1 liqueur glass = 2 1/2 cl; 1/2 wineglass = 6 cl",
                "MASSE%%1 Teelöffel = 5 ccm%1 Esslöffel = 3 Teelöffel%1 Weinglas = 0,1 l#1 teaspoon = 5 ml; 1 tablespoon = 3 teaspoon; 1 wineglass = 1/10 litre",
                "MASSE%%| Maß | Inhalt in ccm |%|---|---|%| Likörglas | 25 |%| Weinglas | 125 |%| halbes Glas | 100 |#1 liqueur glass = 25 ml; 1 wineglass = 125 ml; 1/2 glass = 100 ml",
                "MASSE%%Ein Weinglas: ein achtel Liter%Ein Likörglas: 2 cl%Ein Schuss: 6 Tropfen#1 wineglass = 1/8 litre; 1 liqueur glass = 2 cl; 1 dash = 6 drop",
                "MEDIDAS%%1 copita = 3 cl%1 copa de vino = 4 copitas%1 litro = 2 cuartillos#1 liqueur glass = 3 cl; 1 wineglass = 4 liqueur glass; 1 litre = 2 cuartillo",
                "MEDIDAS%%Cucharadita ...... 5 mililitros%Cucharada ...... 15 mililitros%Vaso ...... un cuarto de litro#1 teaspoon = 5 ml; 1 tablespoon = 15 ml; 1 glass = 1/4 litre",
            })
    void tablesInOtherLanguages(String text, String expected) {
        assertEquals(expected, said(text.replace('%', '\n') + "\n"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '#',
            value = {
                "1 gill = 5 ounces%1 zorb = 2 ounces%1 pint = 4 gills#4#zorb",
                "4 gills . . . . 1 pint%3 quibbles . . . . 1 gill%2 pints . . . . 1 quart#4#quibbles",
                "| Measure | Ounces |%|---|---|%| 1 gill | 5 |%| ½ gill | 2½ |#0#",
                "1 Weinglas = 100 ccm%1 Humpelglas = 200 ccm%1 Esslöffel = 15 ccm#4#humpelglas",
                "Un verre à vin = 12 cl%Une zorbine = 3 cl%Un petit verre = 2 cl#4#zorbine",
                "1 copita = 3 cl%1 zurrón = 4 litros%1 vaso = 2 decilitros#4#zurron",
                "1 gill = 5 ounces%4 shillings, a fair price%1 pint = 4 gills#0#",
                "1 wineglass rum%2 dashes bitters%1 zorb syrup#0#",
                "1 pint = 4 gills%1 pint = 3 zorbs#4#zorbs",
                "1 pint = 4 gills%1 joggler = 2 ounces#4#joggler",
            })
    void aRowWithAnUnknownMeasureIsReported(String rows, int line, String word) {
        List<Problem> problems =
                search("MEASURES.\n\n" + rows.replace('%', '\n') + "\n").problems();
        if (line == 0) {
            assertEquals(List.of(), problems);
            return;
        }
        assertEquals(1, problems.size(), problems.toString());
        Problem problem = problems.getFirst();
        assertEquals("book.txt", problem.file());
        assertEquals(line, problem.line().orElseThrow());
        assertTrue(problem.reason().contains("“" + word + "”"), problem.reason());
        assertTrue(problem.remedy().contains("knowledge/measures.csv"), problem.remedy());
    }

    @Test
    void theNearestKnownMeasureIsNamed() {
        Problem problem =
                search("MEASURES.\n\n1 pint = 4 gills\n1 tumbrel = 2 gills\n")
                        .problems()
                        .getFirst();
        assertTrue(
                problem.remedy().startsWith("The nearest known word is “tumbler”"),
                problem.remedy());
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
                "Prenez deux verres de rhum et un litre d'eau.",
                "Mettez quinze gouttes de bitter dans un verre à vin.",
                "Une once de sucre par litre de vin.",
                "Nehmt zwei Gläser Rum auf ein Liter Wasser.",
                "Man nimmt zwei Esslöffel Zucker und ein Weinglas Rum.",
                "Échese una copita de ron en un vaso de agua.",
                "Dos copas de ron por un litro de agua.",
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
