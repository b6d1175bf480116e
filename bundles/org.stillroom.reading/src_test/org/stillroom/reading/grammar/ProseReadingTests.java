package org.stillroom.reading.grammar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Step;

/** What running prose says of vessels, garnish, company and deeds; all sentences are invented. */
final class ProseReadingTests {

    private static Reading read(String words) {
        return RecipeReaderTests.read(words);
    }

    private static List<String> garnish(String words) {
        return read(words).lines().stream()
                .filter(l -> l.kind() == LineKind.GARNISH)
                .map(ReadingLine::ingredientName)
                .toList();
    }

    private static List<String> verbs(String words) {
        return read(words).steps().stream().map(Step::verb).toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    Mix a quart of ale with a gill of rum. For eleven.            | 11
                    Mix a quart of ale with a gill of rum. Twenty little cups.    | 20
                    Stir in a quart of port; it will fill some thirty glasses.    | 30
                    Add a quart of port. Forty ringers will find it enough.       | 40
                    Put into each of six glasses a spoonful of sugar.             | 6
                    Stir with two lumps of ice and divide between two tumblers.   | 2
                    The quantities are for nine. Take a quart of ale.             | 9
                    """)
    void tellsForHowMany(String words, String many) {
        assertEquals(many, read(words).serves().orElseThrow().low().toString());
    }

    @Test
    void timesAndAmountsAreNoCompany() {
        assertTrue(read("Boil a quart of ale for ten. Two pints of cider.").serves().isEmpty());
        assertTrue(read("Put two pints of ale to some sugar.").serves().isEmpty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    Fill a large goblet with fine ice; stir till the glass is cold.  | large goblet
                    Pour a quart of ale into a wide jug, and put mint in each glass. | jug
                    Pour in a wineglass and a half of rum, and serve in a tumbler.   | tumbler
                    Put six pounds of plums in a tub and leave them a week.          | tub
                    Lay the plums in a cask with a gallon of rum; bottle in May.     | cask
                    Shake with ice, and serve without straining in a claret glass.   | claret glass
                    """)
    void tellsTheVessel(String words, String vessel) {
        String read = read(words).vessel().orElseThrow().word();
        assertTrue(read.endsWith(vessel.substring(vessel.indexOf(' ') + 1)), read);
    }

    @Test
    void theGlassOverWhichPeelIsTwistedIsNotNamed() {
        String words = "Stir a pony of gin with ice; serve with lemon peel twisted over the glass.";
        assertTrue(read(words).vessel().isEmpty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    A pony of gin, and a strip of lemon peel hung over the edge.     | lemon peel
                    Add a gill of rum, and lay three grapes on the ice.              | grapes
                    Float a little claret, and stick in a slice of orange.           | orange
                    One part of port; poured over ice, and served with a cherry.     | cherry
                    """)
    void whatIsPutOnTopOrServedWithItDresses(String words, String garnish) {
        assertEquals(List.of(garnish), garnish(words));
    }

    @Test
    void whatIsGratedIntoABowlOrStrewnByThePoundGoesIn() {
        assertEquals(List.of(), garnish("Grate two quinces in a bowl, and add a pint of water."));
        assertEquals(List.of(), garnish("Slice six limes, and strew a pound of sugar over them."));
        assertEquals(
                List.of("nutmeg"),
                garnish("Sweeten with loaf sugar, grate a little nutmeg on the top."));
    }

    @Test
    void deedsAreToldOfAfterTheNamesToo() {
        assertEquals(
                List.of("shake", "strain", "serve"),
                verbs("One pony of gin. Shaken, strained, and served with an olive."));
        assertEquals(
                List.of("add", "melt", "stir"),
                verbs("Add two pounds of sugar melted in a pint of water, and stir."));
        assertEquals(List.of("fill"), verbs("Fill up with soda; a cherry for garnish."));
    }

    @Test
    void aNewAmountEndsWhatEachHolds() {
        List<ReadingLine> lines =
                read("Two ounces each of mace and dates, an ounce of nutmegs.").lines();
        assertEquals("2", lines.get(1).amount().quantity().orElseThrow().toString());
        assertEquals("1", lines.get(2).amount().quantity().orElseThrow().toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    As the Long Shed, but with rum in place of the gin.            | unstated rum
                    Same as the Wharf Cooler, using old rum for the port.          | unstated old rum
                    Of sage, balm, and rue take each two ounces.                   | 2 oz sage
                    Take of rhubarb sliced five ounces, of saffron a drachm.       | 5 oz rhubarb
                    Shake well and strain, then fill from the siphon.              | fill siphon
                    Half fill clean bottles with sloes.                            | 1/2 fill sloes
                    Fill a wide-necked flask two-thirds with plums.                | 2/3 fill plums
                    """)
    void readsAmountsWhereverTheyStand(String words, String first) {
        ReadingLine line = read(words).lines().get(0);
        String number = line.amount().quantity().map(q -> q + " ").orElse("");
        assertEquals(first, number + line.measure() + " " + line.ingredientName());
    }

    @Test
    void anotherHasTheMeasureBefore() {
        ReadingLine line = read("To a gill of sherry put another of rum.").lines().get(1);
        assertEquals("gill", line.measure());
        assertEquals("rum", line.ingredientName());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    Peel six lemons, and squeeze the same lemons into a jug.       | 1
                    Boil a gallon of water; cool, and add a pint of the water.     | 1
                    Slice four oranges, and drop half the oranges in.              | 1
                    Half a gill of rum; ice is not used.                           | 1
                    Take the rind of six lemons and the juice of the lemons.       | 2
                    """)
    void whatIsNamedAgainIsNoNewLine(String words, int lines) {
        assertEquals(lines, read(words).lines().size());
    }

    @Test
    void noDoubtIsRaisedForWhatTheBookDoesNotPrint() {
        assertEquals(List.of(), read("One jigger rum. Ice. Nutmeg on top.").doubts());
        assertEquals(List.of(), read("One jigger rum. Serve in a 5-oz. glass. Serves 8.").doubts());
        assertEquals(1, read("One jigger rum. Draw off seven pints of it.").doubts().size());
    }

    @Test
    void juiceAndRindOfOneFruitAreOneLine() {
        List<ReadingLine> lines = read("Put in the juice and rind of two lemons.").lines();
        assertEquals(1, lines.size());
        assertEquals("juice-of", lines.get(0).measure());
        assertEquals(List.of("rind"), lines.get(0).ingredient().orElseThrow().preparations());
    }

    @Test
    void sugarThatIsWettedIsNoRinsedGlass() {
        String sugar = "Put in a lump of sugar; wet it with two dashes of bitters.";
        assertEquals(LineKind.MEASURED, read(sugar).lines().get(1).kind());
        String glass = "Wet the inside of the tumbler with bitters.";
        assertEquals(LineKind.RINSE, read(glass).lines().get(0).kind());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    Wash two handfuls of balm in three waters.                     | 1
                    Boil six pounds of honey till it will bear an egg.             | 1
                    Simmer a quart of milk to the consistency of cream.            | 1
                    Put two sprigs of mint in; draw the sprigs of mint to the top. | 1
                    Spread a spoonful of yeast upon a toast.                       | 1
                    """)
    void whatIsNoIngredientIsNoLine(String words, int lines) {
        assertEquals(lines, read(words).lines().size());
    }

    @Test
    void partsAndJuicesGoOn() {
        List<ReadingLine> parts = read("Shake three parts of gin to one of rum.").lines();
        assertEquals("part", parts.get(1).measure());
        List<ReadingLine> juices = read("Add the juice of five lemons and of two oranges.").lines();
        assertEquals("juice-of", juices.get(1).measure());
        assertEquals("oranges", juices.get(1).ingredientName());
        List<ReadingLine> fruit =
                read("Pound the rinds of eight lemons with sugar; add the juice of nine.").lines();
        assertEquals("lemons", fruit.get(fruit.size() - 1).ingredientName());
    }

    @Test
    void allThatIsForShowDresses() {
        assertEquals(
                List.of("orange", "lemon", "pineapple"),
                garnish("Slice in an orange, a lemon, and half a pineapple for show."));
        assertEquals(List.of("nutmeg"), garnish("Stir a gill of rum, and dust nutmeg over."));
        assertEquals(
                List.of("chocolate"),
                garnish("Strain a gill of rum into a glass with grated chocolate on the top."));
    }
}
