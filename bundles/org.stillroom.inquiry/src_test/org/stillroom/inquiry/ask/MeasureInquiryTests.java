package org.stillroom.inquiry.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.StudyDesk;
import org.stillroom.model.progress.Progress;

class MeasureInquiryTests {

    @TempDir Path folder;

    private Answer ask(String... words) {
        return new MeasureInquiry()
                .answer(new StudyDesk(folder), Arguments.of(words), Progress.SILENT);
    }

    private static String text(Answer answer) {
        return answer.blocks().stream().map(Block::toString).collect(Collectors.joining("\n"));
    }

    /** Traps of status X: what is known to be wrong is a warning beside the answer, no number. */
    @Test
    void trapsAreWarnings() {
        Answer teaspoon =
                ask("phrase", "1 teaspoon", "place", "FR", "date", "1936", "trade", "bar");
        assertTrue(teaspoon.json().get("warnings").size() > 0, text(teaspoon));
        assertTrue(teaspoon.json().at("/ml/likely").asDouble() < 10);
        Answer proof = ask("phrase", "proof spirit", "place", "GB", "date", "1890");
        assertTrue(proof.json().get("warnings").size() > 0, text(proof));
        assertTrue(text(proof).contains("Beware: "), text(proof));
        Answer syrup = ask("phrase", "85 % syrup", "place", "US", "date", "1922");
        assertTrue(syrup.json().get("warnings").size() > 0, text(syrup));
        assertEquals(1, syrup.json().get("syrups").size(), "by mass it would not stay dissolved");
        assertEquals(64.7, syrup.json().at("/syrups/0/brix").asDouble(), 0.1, "USP29, by E30");
    }

    @Test
    void severalPlacesAndDatesStandSideBySide() {
        Answer answer = ask("phrase", "a gill", "place", "London; New York", "date", "1810; 1890");
        JsonNode beside = answer.json().get("beside");
        assertEquals(4, beside.size());
        assertEquals(142.065, beside.at("/1/ml/likely").asDouble(), 0.01);
        assertEquals(118.294, beside.at("/3/ml/likely").asDouble(), 0.01);
        assertTrue(beside.at("/1/authorities/0/status").asText().length() > 3);
        assertTrue(text(answer).contains("Who says what: New York"), text(answer));
    }

    @Test
    void britishPintOf1826ShowsBothAnswers() {
        String text = text(ask("phrase", "1 pint", "place", "GB", "date", "1826"));
        assertTrue(text.contains("Amounts that compete"), text);
        assertTrue(text.contains("473.18") && text.contains("568.26"), text);
    }

    @Test
    void aMeasureBeforeItsTimeIsReported() {
        JsonNode early =
                ask("phrase", "5 cl", "place", "GB", "date", "1750").json().get("anachronisms");
        assertTrue(early.size() > 0, "the centilitre is of 1795");
        assertEquals(
                0,
                ask("phrase", "1 pint", "place", "GB", "date", "1862")
                        .json()
                        .get("anachronisms")
                        .size());
    }

    @Test
    void aSourceOfTheLibraryAnswersByItsOwnTable() {
        try (StudyDesk desk = new StudyDesk(folder)) {
            desk.lay(Path.of("../../corpus-example").toAbsolutePath().normalize());
            Answer answer =
                    new MeasureInquiry()
                            .answer(
                                    desk,
                                    Arguments.of(
                                            "phrase",
                                            "2 wineglasses",
                                            "source",
                                            "1838-pell-saltreath-housekeeper.md"),
                                    Progress.SILENT);
            assertEquals(142.065, answer.json().at("/ml/likely").asDouble(), 0.01);
            assertTrue(text(answer).contains("the book's own table"), text(answer));
            assertTrue(text(answer).contains("line 42"), text(answer));
        }
    }

    /** ISO 80000-1: a definition of eleven digits is no reason to print them. */
    @Test
    void legalValuesAreWrittenToFiveDigits() {
        String text = text(ask("phrase", "1 gill", "place", "US", "date", "1895"));
        assertTrue(text.contains("118.29"), text);
        assertTrue(!text.contains("118.294"), text);
    }

    @Test
    void anachronismsOfTheExampleAreFound() {
        try (StudyDesk desk = new StudyDesk(folder)) {
            desk.lay(Path.of("../../corpus-example").toAbsolutePath().normalize());
            JsonNode json =
                    new AnachronismsInquiry().answer(desk, Arguments.of(), Progress.SILENT).json();
            json.get("anachronisms")
                    .forEach(a -> assertTrue(a.get("first").asInt() > 1700, a.toString()));
        }
    }

    @Test
    void anUnknownPlaceIsReportedAndNotPassedOver() {
        Answer known = ask("phrase", "a wineglass", "place", "London");
        assertEquals(List.of(), known.problems());
        Answer strange = ask("phrase", "a wineglass", "place", "Atlantis");
        assertEquals(1, strange.problems().size());
        assertTrue(strange.problems().get(0).reason().contains("“Atlantis”"));
        assertTrue(strange.problems().get(0).remedy().contains("knowledge/places.csv"));
    }
}
