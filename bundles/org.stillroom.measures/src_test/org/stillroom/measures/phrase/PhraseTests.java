package org.stillroom.measures.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.measures.MeasureMeaning;
import org.stillroom.measures.MeasureTable;
import org.stillroom.measures.phrase.PhraseAnswer.Quantity;
import org.stillroom.measures.phrase.PhraseAnswer.Strength;
import org.stillroom.measures.phrase.PhraseAnswer.Syrup;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.number.Rational;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;
import org.stillroom.model.source.Trade;

class PhraseTests {

    private static final MeasureTable TABLE = MeasureTable.shipped();

    private final Phrases phrases = new Phrases(TABLE);

    private static Circumstances at(String place, String date, String trade) {
        return new Circumstances(
                Optional.ofNullable(place).map(Place::of),
                Optional.ofNullable(date).flatMap(UncertainDate::parse),
                Optional.ofNullable(trade).flatMap(Trade::of),
                Optional.of("en"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2 wineglasses|2||wineglass|",
                "2 lemons|2||whole|lemon",
                "un verre à vin|1||wineglass|",
                "deux cuillerées à café|2||teaspoon|",
                "un demi-litre|1/2||litre|",
                "ein halbes Weinglas|1/2||wineglass|",
                "zwei bis drei Esslöffel|2|3|tablespoon|",
                "media copa de vino|1/2||wineglass|",
                "tres gotas|3||drop|",
                "an orange|1||whole|orange",
                "1½ wine-glassfuls|1 1/2||wineglass|",
                "1 ½ wine glassfuls of gum|1 1/2||wineglass|gum",
                "1 1/2 wineglass|1 1/2||wineglass|",
                "1-1/2 oz. gin|1 1/2||oz|gin",
                "1⁄2 gill|1/2||gill|",
                "⅓ gill|1/3||gill|",
                "3 dashes|3||dash|",
                "a pony|1||pony|",
                "half a gill of gin|1/2||gill|gin",
                "a quarter of a pint|1/4||pint|",
                "three quarters of a pint|3/4||pint|",
                "one and a half gills|1 1/2||gill|",
                "half a dozen drops|6||drop|",
                "two or three dashes|2|3|dash|",
                "2-3 dashes|2|3|dash|",
                "4 to 6 drops|4|6|drop|",
                "tea-spoonful|1||teaspoon|",
                "TEASPOONFUL|1||teaspoon|",
                "2.5 cl|2 1/2||cl|",
                "2,5 cl|2 1/2||cl|",
                "juice of half a lemon|1/2||juice-of|lemon",
                "the juice of 2 lemons|2||juice-of|lemon",
                "two jills|2||gill|",
                "1 w.g.|1||wineglass|",
                "white of an egg|1||egg white|",
                "white of 1 egg|1||egg white|",
                "whites of two eggs|2||egg white|",
                "yolks of 2 or 3 eggs|2|3|egg yolk|",
                "rinds of eight lemons|8||peel|lemons",
                "yelk of half an egg|1/2||egg yolk|"
            })
    void takesPhrasesApart(String text, String quantity, String most, String word, String thing) {
        MeasurePhrase phrase = MeasurePhrase.parse(text.replace("the ", ""), TABLE.words());
        assertEquals(quantity, phrase.quantity().toString(), text);
        assertEquals(most, phrase.quantityMax().map(Rational::toString).orElse(null), text);
        assertEquals(word, phrase.word(), text);
        assertEquals(thing == null ? "" : thing, phrase.thing(), text);
    }

    @Test
    void theInquirysExample() {
        Quantity answer =
                assertInstanceOf(
                        Quantity.class,
                        phrases.answer("2 wineglasses", at("GB", "1862", "kitchen")));
        assertEquals(113.65, answer.amount().orElseThrow().likely(), 0.01);
        assertEquals(100, answer.amount().orElseThrow().low(), 0.1);
        assertEquals(142.07, answer.amount().orElseThrow().high(), 0.1);
        MeasureMeaning.Measured meaning = (MeasureMeaning.Measured) answer.meaning();
        assertTrue(meaning.authorities().size() > 10);
        assertEquals("imperial", meaning.systems().likeliest().id());
        assertTrue(
                answer.reason().startsWith("2 wineglasses: ≈ 110 ml")
                        || answer.reason().startsWith("2 wineglasses: ≈ 114 ml"),
                answer.reason());
    }

    @Test
    void aRangeOfNumbersIsAnUnknownOfItsOwn() {
        Quantity answer = (Quantity) phrases.answer("2 to 3 gills", at("US", "1862", "kitchen"));
        assertEquals(2 * 118.294, answer.amount().orElseThrow().low(), 0.01);
        assertEquals(3 * 118.294, answer.amount().orElseThrow().high(), 0.01);
    }

    @Test
    void placesAndDatesStandSideBySide() {
        List<PhraseAnswer> answers =
                phrases.compare(
                        "1 gill",
                        List.of(
                                at("US", "1862", "bar"), at("London", "1862", "bar"),
                                at("Manchester", "1862", "bar"), at("GB", "1810", "bar")));
        List<Long> amounts =
                answers.stream()
                        .map(a -> Math.round(((Quantity) a).amount().orElseThrow().likely()))
                        .toList();
        assertEquals(List.of(118L, 142L, 284L, 118L), amounts);
    }

    @Test
    void proofIsNeverSettledSilently() {
        for (String place : new String[] {"US", "GB", null}) {
            for (String text : List.of("proof", "80 proof", "100° proof", "proof spirit")) {
                Strength answer =
                        assertInstanceOf(
                                Strength.class, phrases.answer(text, at(place, "1895", "bar")));
                assertEquals(2, answer.readings().size(), text);
                assertTrue(answer.reason().contains("British proof"), answer.reason());
                assertTrue(answer.reason().contains("United States proof"), answer.reason());
            }
        }
        Strength bare = (Strength) phrases.answer("proof", Circumstances.UNKNOWN);
        assertEquals(2, bare.warnings().size());
        Syrup saturated = (Syrup) phrases.answer("66 °Bx", Circumstances.UNKNOWN);
        assertEquals(2, saturated.warnings().size());
        Strength british = (Strength) phrases.answer("proof", at("GB", "1895", "bar"));
        assertEquals(0.5715, british.readings().getFirst().strength(), 1e-9);
        Strength american = (Strength) phrases.answer("proof", at("US", "1895", "bar"));
        assertEquals(0.5, american.readings().getFirst().strength(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        "70 o.p.,97.2", "30 u.p.,40.0", "55.8 o.p.,89.0", "25 under proof,42.9",
        "1 in 6 under proof,47.6", "1 to 20 over proof,60.0", "40 %,40", "45 % vol,45",
        "70° Sikes,40.0", "10 over-proof,62.9"
    })
    void strengthsOfOneMeaning(String text, double percent) {
        Strength answer =
                assertInstanceOf(Strength.class, phrases.answer(text, Circumstances.UNKNOWN));
        assertEquals(percent, 100 * answer.readings().getFirst().strength(), 0.06, text);
    }

    @ParameterizedTest
    @CsvSource({"58° Gay-Lussac,58", "56.3 Tralles,56.3"})
    void theContinentalScalesHardlyDifferFromPerCentByVolume(String text, double percent) {
        Strength answer =
                assertInstanceOf(Strength.class, phrases.answer(text, Circumstances.UNKNOWN));
        assertEquals(percent, 100 * answer.readings().getFirst().strength(), 0.3, text);
    }

    @Test
    void baumeShowsItsConstantAndBothReadings() {
        Syrup old = (Syrup) phrases.answer("30 °Bé", at("GB", "1894", "kitchen"));
        assertEquals(1.263, old.readings().getFirst().gravity(), 0.001);
        assertTrue(old.readings().getFirst().scale().contains("144"));
        assertTrue(old.reason().contains("modulus 145"), old.reason());
        Syrup now = (Syrup) phrases.answer("32 degrees Baumé", Circumstances.UNKNOWN);
        assertEquals(1.2832, now.readings().getFirst().gravity(), 0.0001);
        Syrup brix = (Syrup) phrases.answer("50 °Bx", Circumstances.UNKNOWN);
        assertEquals(614.8, brix.readings().getFirst().gramsPerLitre(), 0.05);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"99 o.p.", "90 °Bé", "120 u.p.", "86 Brix", "foozle", "", "  ", "½", "a"})
    void whatCannotBeAnsweredIsSaid(String text) {
        PhraseAnswer answer = phrases.answer(text, Circumstances.UNKNOWN);
        assertFalse(answer.reason().isBlank(), text);
        if (answer instanceof Quantity q) {
            assertTrue(q.amount().isEmpty(), text);
        }
    }

    @Test
    void noPhraseThrows() {
        Random random = new Random(42);
        String[] bits = {
            "1",
            "½",
            "1/0",
            "0",
            "/",
            "⁄",
            "-",
            "–",
            " ",
            " of ",
            "a ",
            "half ",
            "wineglass",
            "dash",
            "°",
            "Bé",
            "proof",
            "o.p.",
            "%",
            "ſ",
            "\u0000",
            "\uD83C",
            "\uD83C\uDF78",
            "juice of ",
            "999999999",
            "99999999999999",
            "to ",
            "or ",
            "ℨ",
            "℥",
            "\n",
            "é",
            ".",
            ",",
            "(",
            "[",
            "*",
            "\\",
            "dozen ",
            "and a half",
            "quarter ",
            "large ",
            "１"
        };
        for (int n = 0; n < 6_000; n++) {
            StringBuilder text = new StringBuilder();
            int length = random.nextInt(9);
            for (int i = 0; i < length; i++) {
                text.append(bits[random.nextInt(bits.length)]);
            }
            PhraseAnswer answer;
            try {
                answer = phrases.answer(text.toString(), Circumstances.UNKNOWN);
            } catch (RuntimeException e) {
                throw new AssertionError("seed 42, phrase " + n + ": “" + text + "”", e);
            }
            assertFalse(answer.reason().isBlank(), "seed 42, phrase " + n + ": “" + text + "”");
        }
    }

    @Test
    void everySpellingLeadsToItsWord() {
        TABLE.words()
                .labels()
                .forEach(
                        (label, word) ->
                                assertEquals(
                                        word,
                                        TABLE.words().find(label).orElseThrow().word(),
                                        label));
    }

    /** Sugar in grams to the litre at saturation and below: NBS Circular 440, by its densities. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "600 g per litre|49.0",
                "600 g/l|49.0",
                "800 grammes to the litre|61.7",
                "2 to 1 syrup|66.7",
                "syrup 3:2|60.0",
                "1:1 simple syrup|50.0",
                "syrup of 2 lbs sugar to the imperial pint|61.5",
                "1 kg sugar to a litre of water|50.0",
            })
    void syrupsByGramsAndProportions(String text, double brix) {
        Syrup syrup = assertInstanceOf(Syrup.class, phrases.answer(text, Circumstances.UNKNOWN));
        assertEquals(brix, syrup.readings().get(0).brix(), 0.1, text);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "250 proof|200 degrees of United States proof",
                "22 degrees Cartier|is not known here",
                "120 Brix|saturated",
                "2000 g per litre|saturated",
                "1 to 0 syrup|saturated",
                "0 lemons|is no amount",
                "-3 eggs|less than nothing",
                "1/0 gill|no number",
                "9999 proof|No spirit",
            })
    void absurdPhrasesAreToldWhy(String text, String why) {
        PhraseAnswer answer = phrases.answer(text, at("US", "1895", "bar"));
        PhraseAnswer.None none = assertInstanceOf(PhraseAnswer.None.class, answer, text);
        assertTrue(none.reason().contains(why), none.reason());
        assertFalse(none.nearest().isEmpty(), text);
    }

    @Test
    void moreSugarThanStaysDissolvedIsWarnedOf() {
        Syrup syrup = (Syrup) phrases.answer("80 brix", Circumstances.UNKNOWN);
        assertTrue(
                syrup.warnings().stream().anyMatch(w -> w.contains("does not stay dissolved")),
                syrup.warnings().toString());
    }
}
