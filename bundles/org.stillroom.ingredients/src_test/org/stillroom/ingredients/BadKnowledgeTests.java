package org.stillroom.ingredients;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Circumstances;

class BadKnowledgeTests {

    private static final String SENSES = "id,label,role,broader,from,to,places,source\n";
    private static final String LABELS = "sense,label,kind,language,source\n";
    private static final String FIGURES = "sense,quantity,low,likely,high,source\n";

    private static Thesaurus.Loaded load(String text) {
        return Thesaurus.shipped()
                .with(List.of(new KnowledgeFile("knowledge/ingredients.csv", text)));
    }

    @Test
    void aUsersRowsAreAdded() {
        Thesaurus.Loaded loaded =
                Thesaurus.shipped()
                        .with(
                                List.of(
                                        new KnowledgeFile(
                                                "ingredients.csv",
                                                SENSES
                                                        + "sea-purslane-gin,sea purslane gin,"
                                                        + "liqueur,liqueur,1820,,GB,our archive\n"),
                                        new KnowledgeFile(
                                                "ingredients-names.csv",
                                                LABELS
                                                        + "sea-purslane-gin,harbour gin,alternative,"
                                                        + "en,our archive\n"),
                                        new KnowledgeFile(
                                                "ingredients-figures.csv",
                                                FIGURES
                                                        + "sea-purslane-gin,strength,28,30,34,"
                                                        + "our archive\n")));
        assertEquals(List.of(), loaded.problems());
        Sense sense = loaded.thesaurus().find("Harbour Gin", Circumstances.UNKNOWN).get(0).sense();
        assertEquals("sea-purslane-gin", sense.id());
        assertEquals(30, sense.properties().strength().orElseThrow().value().likely());
        assertEquals(Citation.Status.USER, sense.source().status());
    }

    @Test
    void aUsersRowOverrulesOurs() {
        Thesaurus theirs = load(FIGURES + "curacao,strength,30,31,32,own bottle\n").thesaurus();
        Properties.Figure figure =
                theirs.sense("curacao").orElseThrow().properties().strength().orElseThrow();
        assertEquals(31, figure.value().likely());
        assertEquals("own bottle", figure.source().work());
        assertEquals(Citation.Status.USER, figure.source().status());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    good-one,good one,swete,,,,,me|no role|sweet
                    Good One,good one,sweet,,,,,me|small letters|good-one
                    good-one,,sweet,,,,,me|label is empty|needs
                    good-one,good one,sweet,,,,,|no source|from memory
                    good-one,good one,sweet,,1900,1800,,me|upside down|1800
                    good-one,good one,sweet,,soon,,,me|no date|1862
                    good-one,good one,sweet,,,,Britain,me|two capital letters|GB
                    good-one,good one,sweet,sugr,,,,me|no sense with this id|sugar
                    good-one,good one,sweet,good-one,,,,me|broader than itself|empty
                    "good-one,good one,sweet,,,,,me|quotation marks|double quote
                    """)
    void aBadSenseIsReportedAndTheRestLoads(String row, String reason, String remedy) {
        Thesaurus.Loaded loaded = load(SENSES + row + "\nkelp-syrup,kelp syrup,sweet,,,,,me\n");
        Problem problem = loaded.problems().get(0);
        assertEquals("knowledge/ingredients.csv", problem.file());
        assertEquals(2, problem.line().orElseThrow());
        assertTrue(problem.reason().contains(reason), problem.toText());
        assertTrue(problem.remedy().contains(remedy), problem.toText());
        assertTrue(loaded.thesaurus().sense("kelp-syrup").isPresent());
    }

    @Test
    void aDuplicateSenseNamesTheFirst() {
        Problem problem =
                load(SENSES + "kelp,kelp,herb,,,,,me\nkelp,kelp again,herb,,,,,me\n")
                        .problems()
                        .get(0);
        assertEquals(3, problem.line().orElseThrow());
        assertTrue(problem.reason().contains("line 2"), problem.toText());
        assertTrue(problem.remedy().contains("kelp-2"), problem.toText());
    }

    @Test
    void aCircleOfTwoIsBroken() {
        Thesaurus.Loaded loaded =
                load(SENSES + "kelp,kelp,herb,dulse,,,,me\ndulse,dulse,herb,kelp,,,,me\n");
        assertEquals(1, loaded.problems().size(), loaded.problems()::toString);
        assertTrue(loaded.problems().get(0).reason().contains("broader than itself"));
        assertTrue(loaded.thesaurus().sense("dulse").isPresent());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    curacao,strenght,30,36,40,me|no quantity|strength
                    curacao,strength,40,36,30,me|upside down|30.0, 36.0, 40.0
                    curacao,sugar,-5,10,20,me|below 0|0 or more
                    curacao,strength,90,100,114,me|above 100|proof
                    curacao,strength,,strong,,me|no number|digits
                    curacoa,strength,30,36,40,me|no sense with this id|curacao
                    curacao,strength,30,36,40,|no source|from memory
                    """)
    void aBadFigureIsReported(String row, String reason, String remedy) {
        Thesaurus.Loaded loaded = load(FIGURES + row + "\n");
        assertEquals(1, loaded.problems().size());
        Problem problem = loaded.problems().get(0);
        assertEquals(2, problem.line().orElseThrow());
        assertTrue(problem.reason().contains(reason), problem.toText());
        assertTrue(problem.remedy().contains(remedy), problem.toText());
    }

    @Test
    void aTableOfSomethingElseIsLeftOut() {
        Problem problem = load("colour,taste\nred,sweet\n").problems().get(0);
        assertTrue(problem.reason().contains("no table of ingredients"));
    }

    @Test
    void emptyAndBinaryFilesAreNoTrouble() {
        assertEquals(List.of(), load("").problems());
        assertFalse(load("\u0000\u0001,\u0002\n\u0003\n").thesaurus().senses().isEmpty());
    }
}
