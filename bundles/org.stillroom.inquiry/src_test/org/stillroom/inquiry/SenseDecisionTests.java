package org.stillroom.inquiry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.ingredients.IngredientKind;
import org.stillroom.ingredients.Label;
import org.stillroom.ingredients.ThesaurusEdit;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.spec.Concept;

/** Decisions about senses: made at the desk, replayed over what is known, taken back again. */
class SenseDecisionTests {

    @TempDir Path folder;
    private StudyDesk desk;

    @BeforeEach
    void lay() throws IOException {
        Files.createDirectories(folder.resolve("library/sources"));
        Files.writeString(
                folder.resolve("library/sources/quay.md"),
                "---\ntitle: Quay\ntext-date: 1862\nplace: London\n---\n"
                        + "# Anchor Sling\n\nOne wineglass of gin.\n\nTwo dashes of zorbwort.\n");
        desk = new StudyDesk(folder.resolve("caches"));
        desk.lay(folder.resolve("library"));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private Concept second() {
        return desk.study(Progress.SILENT).versions().get(0).spec().lines().get(1).ingredient();
    }

    private void decide(ThesaurusEdit edit) {
        desk.decide(ThesaurusEdit.ASSERTION_KIND, "", Optional.empty(), edit.toValues());
    }

    @Test
    void aSenseThatIsAddedIsReadAtOnceAndUndoneAtOnce() {
        assertFalse(second().known());
        decide(
                new ThesaurusEdit.AddSense(
                        "zorbwort",
                        "zorbwort",
                        IngredientKind.BITTER,
                        java.util.List.of("bitters"),
                        "a weed of the quay"));
        assertEquals("zorbwort", second().id());
        desk.undo();
        assertFalse(second().known());
        desk.redo();
        assertEquals("zorbwort", second().id());
    }

    @Test
    void decisionsAreReadByTheNextProgramToo() {
        decide(new ThesaurusEdit.AddLabel("bitters", "zorbwort", Label.Kind.ALTERNATIVE, "en"));
        assertEquals("bitters", second().id());
        desk.close();
        desk.lay(folder.resolve("library"));
        assertTrue(
                desk.knowledge().thesaurus().labels("bitters").stream()
                        .anyMatch(l -> l.text().equals("zorbwort")));
        assertEquals("bitters", second().id());
    }

    @Test
    void aDecisionAboutASenseThatIsGoneIsReportedAndKept() {
        decide(new ThesaurusEdit.Merge("sense-of-an-older-release", "gin"));
        Study study = desk.study(Progress.SILENT);
        assertTrue(
                study.problems().stream()
                        .anyMatch(
                                p ->
                                        p.file().equals("research/journal.jsonl")
                                                && p.words().contains("sense-of-an-older-release")),
                study.problems().toString());
        assertEquals(1, desk.decisions().standing().size());
    }

    @Test
    void aDecisionThatSaysNothingIsReported() {
        desk.decide(
                ThesaurusEdit.ASSERTION_KIND, "", Optional.empty(), Map.of("edit", "set on fire"));
        assertTrue(
                desk.study(Progress.SILENT).problems().stream()
                        .anyMatch(p -> p.remedy().contains("remove-label")));
    }
}
