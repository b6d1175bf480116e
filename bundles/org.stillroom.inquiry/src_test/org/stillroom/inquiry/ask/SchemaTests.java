package org.stillroom.inquiry.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.StudyDesk;
import org.stillroom.model.progress.Progress;

/** The stable answers against their schemas, by a validator of JSON Schema 2020-12. */
class SchemaTests {

    @TempDir Path folder;

    private static Schema schema(String name) throws IOException {
        try (InputStream in =
                SchemaTests.class.getResourceAsStream("/org/stillroom/inquiry/schema/" + name)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(text, InputFormat.JSON);
        }
    }

    @Test
    void readFitsItsSchema() throws IOException {
        Path file = folder.resolve("book.txt");
        Files.writeString(
                file,
                "PUNCH.\n\nTake 1 1-2 wineglasses of rum or brandy, the juice of half a lemon, ⅓ "
                        + "pint water, sugar to taste; fill with ice.\n\nTHE SAME, HOT.\n\nMade like "
                        + "the foregoing, but with hot water and a wineglass of gin for six.\n");
        String json =
                new ReadInquiry()
                        .answer(
                                new StudyDesk(folder),
                                Arguments.of("file", file.toString()),
                                Progress.SILENT)
                        .json()
                        .toString();
        assertEquals(List.of(), schema("read.schema.json").validate(json, InputFormat.JSON));
    }

    @Test
    void measureFitsItsSchema() throws IOException {
        for (String phrase : List.of("2 wineglasses", "3 dashes", "1 lb", "70 proof", "30 °Bé")) {
            String json =
                    new MeasureInquiry()
                            .answer(
                                    new StudyDesk(folder),
                                    Arguments.of("phrase", phrase, "date", "1862", "place", "GB"),
                                    Progress.SILENT)
                            .json()
                            .toString();
            assertEquals(
                    List.of(),
                    schema("measure.schema.json").validate(json, InputFormat.JSON),
                    phrase);
        }
    }
}
