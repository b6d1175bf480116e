package org.stillroom.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.Figure;
import org.stillroom.inquiry.WordAnswers;
import org.stillroom.measures.MeasureTable;
import org.stillroom.measures.WordAccount;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The picture of competing authorities and the table behind it say the same. */
class MeasureChartTests {

    private static final MeasureTable TABLE = MeasureTable.shipped();

    private static WordAccount account(String word) {
        return WordAnswers.account(
                TABLE, Arguments.of("word", word, "place", "GB", "date", "1862", "trade", "bar"));
    }

    private static Drawing draw(WordAccount account, Look look) {
        return Figures.draw(new Figure.MeasureFigure(account), look);
    }

    private static List<String> texts(Drawing drawing) throws Exception {
        Document svg =
                DocumentBuilderFactory.newDefaultNSInstance()
                        .newDocumentBuilder()
                        .parse(
                                new InputSource(
                                        new StringReader(
                                                drawing.svg()
                                                        .replaceFirst("<!DOCTYPE[^>]*>", ""))));
        NodeList nodes = svg.getElementsByTagName("text");
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            texts.add(nodes.item(i).getTextContent().strip());
        }
        return texts;
    }

    @ParameterizedTest
    @ValueSource(strings = {"wineglass", "dash", "drop", "bottle", "pint", "lump of sugar", "cup"})
    void everyAmountOfTheTableHasItsNumberInThePicture(String word) throws Exception {
        WordAccount account = account(word);
        Block.Table table = WordAnswers.table(account);
        Drawing drawing = draw(account, Look.LIGHT);
        List<String> texts = texts(drawing);
        for (List<String> row : table.rows()) {
            boolean drawn = !row.get(5).equals("–");
            assertEquals(
                    drawn, drawing.description().contains(" " + row.get(0) + ": "), row::toString);
            assertTrue(!drawn || texts.contains(row.get(0)), row + " in " + texts);
        }
        assertEquals(table.rows().size(), table.whys().size());
    }

    @Test
    void placesAreToldByNameAndTheBandByWords() throws Exception {
        List<String> texts = texts(draw(account("wineglass"), Look.LIGHT));
        assertTrue(texts.contains("United Kingdom"), texts::toString);
        assertTrue(texts.contains("United States"), texts::toString);
        assertTrue(texts.stream().anyMatch(t -> t.contains("the band")), texts::toString);
    }

    @Test
    void theSameAccountGivesTheSameBytesInAnyLocaleAndOtherColoursInTheDark() {
        Locale before = Locale.getDefault();
        String english = draw(account("wineglass"), Look.LIGHT).svg();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals(english, draw(account("wineglass"), Look.LIGHT).svg());
            assertNotEquals(english, draw(account("wineglass"), Look.DARK).svg());
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void aWordWithoutAmountsIsDrawnEmpty() {
        Drawing drawing = draw(account("fill"), Look.DARK);
        assertTrue(drawing.svg().contains("no amount"), drawing.description());
        assertTrue(Figures.toPng(drawing, 1).length > 1000);
    }
}
