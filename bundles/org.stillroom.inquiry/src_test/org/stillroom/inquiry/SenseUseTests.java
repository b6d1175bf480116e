package org.stillroom.inquiry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.ingredients.IngredientKind;
import org.stillroom.ingredients.ThesaurusEdit;
import org.stillroom.model.progress.Progress;

/** Which lines a change of the senses touches is told before it is made. */
class SenseUseTests {

    @TempDir Path folder;

    @Test
    void countsLinesAndRecipes() throws IOException {
        Path sources = Files.createDirectories(folder.resolve("library/sources"));
        Files.writeString(
                sources.resolve("quay.md"),
                "# Anchor Sling\n\nOne wineglass of gin.\n\nTwo dashes of zorb-wort.\n\n"
                        + "# Capstan Sling\n\nTwo wineglasses of gin and a dash of zorb wort.\n");
        try (StudyDesk desk = new StudyDesk(folder.resolve("caches"))) {
            desk.lay(folder.resolve("library"));
            Study study = desk.study(Progress.SILENT);
            SenseUse use =
                    SenseUse.of(
                            study,
                            new ThesaurusEdit.AddSense(
                                    "zorb-wort",
                                    "zorb wort",
                                    IngredientKind.BITTER,
                                    List.of(),
                                    ""));
            assertEquals(2, use.lines(), use::words);
            assertEquals(2, use.recipes(), use::words);
            assertEquals(
                    "No line of this library speaks of it.", SenseUse.of(study, "tar").words());
        }
    }
}
