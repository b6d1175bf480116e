package org.stillroom.inquiry.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.InquiryException;
import org.stillroom.inquiry.StudyDesk;
import org.stillroom.model.progress.Progress;

class ThesaurusInquiryTests {

    @TempDir Path folder;

    private com.fasterxml.jackson.databind.JsonNode ask(String... words) {
        return new ThesaurusInquiry()
                .answer(new StudyDesk(folder), Arguments.of(words), Progress.SILENT)
                .json();
    }

    @Test
    void gumSyrupOf1895HasNoGum() {
        var json = ask("name", "gum syrup", "date", "1895", "place", "US");
        assertEquals("gum-syrup-plain", json.at("/sense/id").asText());
        assertTrue(json.at("/candidates").size() > 1, "the other sense is kept");
        assertTrue(json.at("/sense/figures/sugar/likely").asDouble() > 500);
    }

    @Test
    void aSenseIsShownByItsIdWithAllergensAndCautions() {
        var json = ask("name", "orgeat");
        assertTrue(json.at("/sense/contains").toString().contains("nuts"), json.toString());
        assertTrue(ask("name", "calamus").at("/sense/cautions").size() > 0);
    }

    @Test
    void allSensesAreListedAndExported() throws IOException {
        Path file = folder.resolve("out.ttl");
        var json = ask("skos", file.toString());
        assertTrue(json.get("senses").size() >= 600);
        assertTrue(Files.readString(file).contains("a skos:ConceptScheme"));
        assertThrows(
                InquiryException.class,
                () -> ask("skos", folder.resolve("no/such/folder.ttl").toString()));
    }

    @Test
    void anUnknownNameIsRefusedWithARemedy() {
        assertThrows(InquiryException.class, () -> ask("name", "xqzzt"));
    }

    @Test
    void theUsersOwnSkosFileIsReadFromTheLibrary() throws IOException {
        Files.createDirectories(folder.resolve("library/sources"));
        Files.createDirectories(folder.resolve("library/knowledge"));
        Files.writeString(
                folder.resolve("library/knowledge/quay.ttl"),
                "@prefix skos: <http://www.w3.org/2004/02/skos/core#> .\n"
                        + "<urn:quay:zorbwort> a skos:Concept ; skos:prefLabel \"zorbwort\"@en ;\n"
                        + "  skos:broader <urn:stillroom:ingredient:bitters> .\n");
        Files.writeString(folder.resolve("library/knowledge/bad.ttl"), "not Turtle at all\n");
        try (StudyDesk desk = new StudyDesk(folder)) {
            desk.lay(folder.resolve("library"));
            var answer =
                    new ThesaurusInquiry()
                            .answer(desk, Arguments.of("name", "zorbwort"), Progress.SILENT);
            assertEquals("zorbwort", answer.json().at("/sense/id").asText());
            assertTrue(
                    answer.problems().stream()
                            .anyMatch(
                                    p ->
                                            p.file().equals("knowledge/bad.ttl")
                                                    && p.line().orElse(0) == 1),
                    answer.problems().toString());
        }
    }
}
