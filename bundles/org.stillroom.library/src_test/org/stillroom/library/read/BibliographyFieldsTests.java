package org.stillroom.library.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Circumstances;

/** A field of no known name is reported with the one that is meant. */
class BibliographyFieldsTests {

    @ParameterizedTest
    @CsvSource({"date,text-date", "tilte,title", "printing,printing-date", "autor,author"})
    void theNameThatIsMeantIsGiven(String name, String meant) {
        BibliographyFields fields =
                new BibliographyFields(
                        Map.of(name, new FrontMatter.Field("1862", "sources/quay.md", 4)));
        fields.toBibliography("quay", Circumstances.UNKNOWN);
        assertEquals(1, fields.problems().size());
        Problem problem = fields.problems().get(0);
        assertEquals(4, problem.line().orElseThrow());
        assertTrue(problem.remedy().contains("“" + meant + "”"), problem.remedy());
    }
}
