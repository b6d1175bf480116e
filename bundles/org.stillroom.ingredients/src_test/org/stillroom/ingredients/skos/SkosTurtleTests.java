package org.stillroom.ingredients.skos;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.stillroom.ingredients.KnowledgeFile;
import org.stillroom.ingredients.Thesaurus;

class SkosTurtleTests {

    private final String turtle = SkosTurtle.write(Thesaurus.shipped());

    @Test
    void everySenseIsAConcept() {
        long concepts = turtle.lines().filter(l -> l.endsWith("a skos:Concept ;")).count();
        assertEquals(Thesaurus.shipped().senses().size(), concepts);
    }

    @Test
    void whatIsReferredToExists() {
        Matcher broader =
                Pattern.compile("skos:(?:broader|closeMatch) <urn:stillroom:ingredient:([^>]+)>")
                        .matcher(turtle);
        while (broader.find()) {
            assertTrue(Thesaurus.shipped().sense(broader.group(1)).isPresent());
        }
    }

    /** SKOS Reference S13: preferred, alternative and hidden labels have none in common. */
    @Test
    void noLabelIsOfTwoSorts() {
        for (String concept : turtle.split("\n\n")) {
            Set<String> seen = new HashSet<>();
            Matcher label =
                    Pattern.compile("skos:(?:pref|alt|hidden)Label (\".*\"@\\S+)").matcher(concept);
            while (label.find()) {
                assertTrue(seen.add(label.group(1)), label.group(1));
            }
        }
    }

    /** RDF 1.1 Turtle, production 22: quotes, backslashes and line feeds must be escaped. */
    @Test
    void awkwardWordsAreEscaped() {
        Thesaurus odd =
                Thesaurus.shipped()
                        .with(
                                List.of(
                                        new KnowledgeFile(
                                                "ingredients.csv",
                                                "id,label,role,source\n"
                                                        + "odd,\"a \"\"back\\slash\"\"\",other,me\n")))
                        .thesaurus();
        assertTrue(SkosTurtle.write(odd).contains("\"a \\\"back\\\\slash\\\"\"@en"));
    }

    @Test
    void equalThesauriGiveEqualText() {
        assertEquals(turtle, SkosTurtle.write(Thesaurus.shipped()));
        assertFalse(turtle.contains("\r"));
    }
}
