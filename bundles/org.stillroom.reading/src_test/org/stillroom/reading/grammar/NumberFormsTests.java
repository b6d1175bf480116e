package org.stillroom.reading.grammar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.source.Circumstances;

/**
 * Numbers in every written form.
 *
 * <p>The values of the fraction characters are those that the Unicode Character Database, version
 * 16, gives in its field Numeric_Value.
 */
final class NumberFormsTests {

    private static final RecipeReader READER = RecipeReader.standard();

    private static ReadingLine first(String words) {
        return READER.readLine(words, Circumstances.UNKNOWN).get(0);
    }

    @ParameterizedTest
    @CsvSource({
        "¼,1/4", "½,1/2", "¾,3/4", "⅐,1/7", "⅑,1/9", "⅒,1/10", "⅓,1/3", "⅔,2/3", "⅕,1/5", "⅖,2/5",
        "⅗,3/5", "⅘,4/5", "⅙,1/6", "⅚,5/6", "⅛,1/8", "⅜,3/8", "⅝,5/8", "⅞,7/8"
    })
    void everyFractionCharacterKeepsItsValue(String character, String value) {
        Rational fraction = Rational.parse(value).orElseThrow();
        assertEquals(fraction, first(character + " pint of rum").amount().quantity().orElseThrow());
        assertEquals(
                fraction.plus(Rational.ONE),
                first("1" + character + " pints of rum").amount().quantity().orElseThrow());
    }

    @Test
    void oneAndAHalfIsNeverElevenHalves() {
        for (String form :
                List.of(
                        "1½",
                        "1 ½",
                        "1 1/2",
                        "1 1⁄2",
                        "1 1-2",
                        "one and a half",
                        "1 and ½",
                        "one and one-half")) {
            assertEquals(
                    Rational.of(3, 2),
                    first(form + " jiggers of gin").amount().quantity().orElseThrow(),
                    form);
        }
    }

    @Test
    void aHyphenBetweenFiguresKeepsTheOtherReading() {
        ReadingLine line = first("1 1-2 jiggers gin");
        assertFalse(line.alternatives().isEmpty());
        assertFalse(line.confidence().reasons().isEmpty());
        assertTrue(
                line.confidence().probability()
                        < first("1½ jiggers gin").confidence().probability());
    }

    @Test
    void amountsThatAreNoNumbersKeepTheirKind() {
        assertEquals(Amount.Kind.SHARE, first("⅓ gin").amount().kind());
        assertEquals(Amount.Kind.EQUAL_PARTS, first("equal parts gin and rum").amount().kind());
        assertEquals(Amount.Kind.FILL, first("fill up with soda").amount().kind());
        assertEquals(Amount.Kind.TO_TASTE, first("sugar to taste").amount().kind());
        assertEquals(Amount.Kind.A_LITTLE, first("a little sugar").amount().kind());
        assertEquals(Amount.Kind.ENOUGH, first("enough sugar to sweeten").amount().kind());
        assertEquals(Amount.Kind.FLOAT, first("float rum on top").amount().kind());
    }

    @Test
    void aNumberIsNotFoldedByCompatibility() {
        assertEquals("1½ pints of rum", first("1½ pints of rum").text());
    }
}
