package org.stillroom.inquiry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.drift.Drift;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.ask.DriftInquiry;
import org.stillroom.inquiry.ask.ReadInquiry;
import org.stillroom.inquiry.ask.VersionsInquiry;
import org.stillroom.lineage.Drink;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.spec.Version;

/** Every amount leads back to the words on the page and to who said what they held. */
class AmountReasonsTests {

    private static final String BOOK =
            """
            ---
            title: Keel and Anchor
            text-date: 1862
            place: London, GB
            trade: bar
            ---
            # Keel Punch

            2 wineglasses of rum
            1 wineglass of lemon juice
            1 tablespoonful of sugar

            # Shared Keel

            ⅔ gin
            ⅓ lemon juice
            1 dash of bitters
            """;

    @TempDir Path folder;

    private StudyDesk desk() throws IOException {
        Path sources = Files.createDirectories(folder.resolve("library/sources"));
        Files.writeString(sources.resolve("keel.md"), BOOK);
        StudyDesk desk = new StudyDesk(folder.resolve("caches"));
        desk.lay(folder.resolve("library"));
        return desk;
    }

    private static List<Explanation> all(Explanation root) {
        List<Explanation> all = new ArrayList<>(List.of(root));
        root.because().forEach(b -> all.addAll(all(b)));
        return all;
    }

    @Test
    void theWholeLeadsToTheWordsAndToPublishedStatements() throws IOException {
        try (StudyDesk desk = desk()) {
            Study study = desk.study(Progress.SILENT);
            Explanation why =
                    new AmountReasons(study.knowledge().thesaurus()).whole(study.versions().get(0));
            List<Explanation> all = all(why);
            assertTrue(why.statement().startsWith("Keel Punch"), why.statement());
            assertTrue(why.statement().contains("before ice"), why.statement());
            assertTrue(
                    all.stream().anyMatch(e -> e.statement().contains("“2 wineglasses of rum”")),
                    why::toText);
            assertTrue(
                    all.stream()
                            .flatMap(e -> e.source().stream())
                            .anyMatch(c -> c.status() == Citation.Status.PRIMARY),
                    why::toText);
            assertTrue(
                    all.stream().anyMatch(e -> e.statement().startsWith("Strength ≈")),
                    why::toText);
            assertTrue(
                    all.stream()
                            .map(Explanation::statement)
                            .anyMatch(
                                    s ->
                                            s.contains("95 of 100 draws")
                                                    && s.contains("from one unknown: wineglass")),
                    why::toText);
            assertEquals(
                    why,
                    new AmountReasons(study.knowledge().thesaurus()).whole(study.versions().get(0)),
                    "drawn again, the draws are the same");
        }
    }

    @Test
    void sharesOfAWholeOfUnknownSizeGiveNoMillilitresOfTheWhole() throws IOException {
        try (StudyDesk desk = desk()) {
            Version shared = desk.study(Progress.SILENT).versions().get(1);
            assertTrue(shared.spec().volume().isEmpty(), "a dash alone is not the whole");
            assertEquals("no amount is known", Amounts.whole(shared.spec()));
        }
    }

    @Test
    void everyRowWithAnAmountHasItsReason() throws IOException {
        try (StudyDesk desk = desk()) {
            Answer versions =
                    new VersionsInquiry()
                            .answer(desk, Arguments.of("drink", "Keel Punch"), Progress.SILENT);
            Answer drift =
                    new DriftInquiry()
                            .answer(desk, Arguments.of("drink", "Keel Punch"), Progress.SILENT);
            Answer read =
                    new ReadInquiry()
                            .answer(
                                    desk,
                                    Arguments.of(
                                            "file",
                                            folder.resolve("library/sources/keel.md").toString()),
                                    Progress.SILENT);
            for (Answer answer : List.of(versions, drift, read)) {
                Block.Table first =
                        answer.blocks().stream()
                                .filter(Block.Table.class::isInstance)
                                .map(Block.Table.class::cast)
                                .findFirst()
                                .orElseThrow();
                assertEquals(first.rows().size(), first.whys().size(), first.caption());
                assertFalse(first.why(0).orElseThrow().because().isEmpty(), first.caption());
                assertTrue(
                        AnswerReasons.json(answer).get("explanations").size()
                                >= first.rows().size(),
                        first.caption());
            }
        }
    }

    @Test
    void sharesNameTheLinesOfEachRole() throws IOException {
        try (StudyDesk desk = desk()) {
            Study study = desk.study(Progress.SILENT);
            Drink drink = study.findDrinks("Keel Punch", Progress.SILENT).get(0);
            Drift drift = study.drift(drink, Progress.SILENT);
            Drift.Point point = drift.points().get(0);
            Version version = study.version(point.version()).orElseThrow();
            Explanation why = AmountReasons.shares(version, drift, point);
            Explanation spirit =
                    why.because().stream()
                            .filter(e -> e.statement().startsWith("spirit"))
                            .findFirst()
                            .orElseThrow();
            assertEquals(1, spirit.because().size());
            assertTrue(spirit.because().get(0).statement().endsWith("rum"), spirit::toText);
        }
    }
}
