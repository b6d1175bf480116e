package org.stillroom.ingredients;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.ingredients.Properties.Figure;
import org.stillroom.ingredients.Properties.Quantity;
import org.stillroom.model.explain.Citation;

class PropertiesTests {

    private final Thesaurus thesaurus = Thesaurus.shipped();

    private Optional<Figure> figure(String sense, Quantity quantity) {
        return Optional.ofNullable(
                thesaurus.sense(sense).orElseThrow().properties().figures().get(quantity));
    }

    /**
     * Figures against what was published. Tolerance is half of the last printed digit, or what the
     * conversion of the printed figure leaves.
     */
    @ParameterizedTest
    @CsvSource({
        // Penniston et al. 2008: 1.44 g and 1.38 g of citric acid in a US fluid ounce
        "lemon-juice, ACID, 48.7, 0.05",
        "lime-juice, ACID, 46.7, 0.05",
        // USDA SR28: 30.5 g in a US fluid ounce; 238 g and 244 g in a US cup
        "lemon-juice, DENSITY, 1.031, 0.0005",
        "cream, DENSITY, 1.006, 0.0005",
        "milk, DENSITY, 1.031, 0.0005",
        // USDA SR28: 339 g honey, 315 g maple syrup in a US cup; sugars by SR abbreviated file
        "honey, DENSITY, 1.433, 0.0005",
        "honey, SUGAR, 1177, 1",
        "maple-syrup, DENSITY, 1.331, 0.0005",
        "maple-syrup, SUGAR, 896, 8",
        // Kappeler 1895: two pounds of sugar to a quart of boiling water, 600 to 615 g/L
        "gum-syrup-plain, SUGAR, 607.5, 8",
        // Britannica 1911: curaçao about 36 % sweet to 39 % dry; Mew and Ashton 1892: 349 g/L
        "curacao, STRENGTH, 37.5, 2",
        // Britannica 1911: anisette 27 %
        "anisette, STRENGTH, 27, 0.5",
        // Nicholson 1912: rectified spirit of the pharmacopoeia 88.8 %
        "neutral-spirit, STRENGTH, 90, 1.5",
        // 76/766/EEC: water 998.20 kg/m³ at 20 °C
        "water, DENSITY, 0.9982, 0.00005",
    })
    void figuresAgreeWithWhatWasPublished(
            String sense, Quantity quantity, double published, double within) {
        Figure figure = figure(sense, quantity).orElseThrow();
        assertEquals(published, figure.value().likely(), within);
    }

    @ParameterizedTest
    @CsvSource({
        // further published figures that must lie within the range shown
        "lemon-juice, ACID, 35.8", // Penniston: from concentrate
        "lemon-juice, ACID, 73.9", // another study, seen in a secondary text
        "curacao, SUGAR, 349", // Mew and Ashton 1892
        "curacao, STRENGTH, 25", // Mew and Ashton 1892: 56 under proof
        "absinthe, STRENGTH, 80", // Britannica 1911: close on 80 %
        "sugar-syrup, SUGAR, 850", // USP
        "sugar-syrup, SUGAR, 884", // two to one by weight
        "sugar-syrup, SUGAR, 615", // equal weights
        "gum-syrup-acacia, SUGAR, 800", // USP-NF acacia syrup
        "grenadine, SUGAR, 905", // USDA SR28, modern
        "powdered-sugar, DENSITY, 0.507", // USDA SR28 unsifted
        "powdered-sugar, DENSITY, 0.423", // USDA SR28 sifted
    })
    void otherPublishedFiguresLieWithinTheRange(String sense, Quantity quantity, double value) {
        Figure figure = figure(sense, quantity).orElseThrow();
        assertTrue(
                figure.value().low() <= value && value <= figure.value().high(),
                () -> figure.value().toString());
    }

    @Test
    void aNarrowerSenseTakesOverWithItsOwnUnknown() {
        Figure bourbon = figure("plum-spirit", Quantity.STRENGTH).orElseThrow();
        assertEquals("fruit-spirit", bourbon.of());
        Figure pear = figure("pear-spirit", Quantity.STRENGTH).orElseThrow();
        assertNotEquals(
                bourbon.value().origins().first().name(), pear.value().origins().first().name());
    }

    @Test
    void whatIsNotKnownIsNotGuessed() {
        assertTrue(figure("ambergris", Quantity.STRENGTH).isEmpty());
        assertEquals(
                Citation.Status.MEMORY,
                figure("maraschino", Quantity.STRENGTH).orElseThrow().source().status());
    }
}
