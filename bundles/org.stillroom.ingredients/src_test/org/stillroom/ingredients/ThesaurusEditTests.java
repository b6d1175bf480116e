package org.stillroom.ingredients;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.stillroom.ingredients.ThesaurusEdit.AddLabel;
import org.stillroom.ingredients.ThesaurusEdit.AddSense;
import org.stillroom.ingredients.ThesaurusEdit.Merge;
import org.stillroom.ingredients.ThesaurusEdit.RemoveLabel;
import org.stillroom.ingredients.ThesaurusEdit.Split;
import org.stillroom.ingredients.knowledge.Knowledge;
import org.stillroom.ingredients.knowledge.LabelRow;
import org.stillroom.ingredients.knowledge.SenseRow;
import org.stillroom.model.source.Circumstances;

class ThesaurusEditTests {

    private final Thesaurus shipped = Thesaurus.shipped();

    @Test
    void mergingGivesTheNamesToTheOther() {
        Thesaurus merged = shipped.apply(List.of(new Merge("plymouth-gin", "dry-gin"))).thesaurus();
        assertEquals("dry-gin", merged.sense("plymouth-gin").orElseThrow().id());
        assertEquals(
                "dry-gin", merged.find("Plymouth gin", Circumstances.UNKNOWN).get(0).sense().id());
        assertEquals("dry gin", merged.labels("plymouth-gin").get(0).text());
    }

    @Test
    void splittingTakesTheNamesGiven() {
        Thesaurus split =
                shipped.apply(
                                List.of(
                                        new Split(
                                                "tea",
                                                "tea-green",
                                                "green tea",
                                                List.of("Hyson", "green tea"))))
                        .thesaurus();
        assertEquals("tea-green", split.find("hyson", Circumstances.UNKNOWN).get(0).sense().id());
        assertEquals("tea", split.find("black tea", Circumstances.UNKNOWN).get(0).sense().id());
        assertEquals(List.of("tea"), split.sense("tea-green").orElseThrow().close());
    }

    @Test
    void aDecisionSurvivesOurUpdates() {
        List<ThesaurusEdit> decisions =
                List.of(
                        new AddLabel("curacao", "dockside orange", Label.Kind.ALTERNATIVE, "en"),
                        new Merge("white-rum", "rum"));
        Thesaurus updated =
                shipped.with(
                                List.of(
                                        new KnowledgeFile(
                                                "ingredients.csv",
                                                "id,label,role,source\n"
                                                        + "curacao,curaçao,liqueur,a newer row\n")))
                        .thesaurus();
        Thesaurus decided = updated.apply(decisions).thesaurus();
        assertEquals(
                "curacao",
                decided.find("Dockside Orange", Circumstances.UNKNOWN).get(0).sense().id());
        assertEquals("rum", decided.sense("white-rum").orElseThrow().id());
    }

    @Test
    void whatIsGoneIsReportedAndPassedOver() {
        Thesaurus.Loaded loaded =
                shipped.apply(
                        List.of(
                                new Merge("no-such-sense", "rum"),
                                new AddSense(
                                        "rum", "rum", IngredientKind.BASE_SPIRIT, List.of(), "")));
        assertEquals(2, loaded.problems().size());
        assertEquals(shipped.senses().keySet(), loaded.thesaurus().senses().keySet());
    }

    @Test
    void aNameThatIsWrongCanBeTakenAwayAndComesBack() {
        Thesaurus with =
                shipped.apply(
                                List.of(
                                        new AddLabel(
                                                "curacao",
                                                "Dockside Orange",
                                                Label.Kind.ALTERNATIVE,
                                                "en")))
                        .thesaurus();
        Thesaurus.Loaded without =
                with.apply(List.of(new RemoveLabel("curacao", "dockside orange")));
        assertTrue(without.problems().isEmpty(), without.problems().toString());
        assertEquals(shipped.labels("curacao"), without.thesaurus().labels("curacao"));
        Thesaurus.Loaded refused =
                shipped.apply(
                        List.of(
                                new RemoveLabel(
                                        "curacao", shipped.sense("curacao").orElseThrow().label()),
                                new RemoveLabel("curacao", "no such name"),
                                new RemoveLabel("no-such-sense", "x")));
        assertEquals(3, refused.problems().size());
        assertTrue(
                refused.problems().get(2).words().contains("no-such-sense"),
                refused.problems().toString());
        assertEquals(shipped.labels("curacao"), refused.thesaurus().labels("curacao"));
    }

    @Test
    void editsGoThroughTheJournal() {
        List<ThesaurusEdit> edits =
                List.of(
                        new AddSense(
                                "kelp", "kelp", IngredientKind.HERB, List.of("herb"), "a weed"),
                        new AddLabel("kelp", "dulse", Label.Kind.HIDDEN, "ga"),
                        new RemoveLabel("kelp", "dulse"),
                        new Merge("a", "b"),
                        new Split("tea", "tea-2", "other tea", List.of("x", "y")));
        edits.forEach(e -> assertEquals(e, ThesaurusEdit.fromValues(e.toValues()).orElseThrow()));
        assertTrue(ThesaurusEdit.fromValues(new TreeMap<>(Map.of("edit", "burn"))).isEmpty());
        assertTrue(ThesaurusEdit.fromValues(new TreeMap<>(Map.of("edit", "merge"))).isEmpty());
    }

    /** A thousand random sequences of merges and splits lose no name and make no circle. */
    @Test
    void noNameIsEverLost() {
        Knowledge begin = some(ShippedData.read().knowledge(), 150);
        List<String> names = names(begin);
        for (int seed = 0; seed < 1000; seed++) {
            Random random = new Random(seed);
            Knowledge rows = begin;
            int steps = 1 + random.nextInt(12);
            for (int i = 0; i < steps; i++) {
                rows = new Editing(rows, new ArrayList<>()).apply(random(rows, random, seed, i));
            }
            List<String> left = names(rows);
            left.removeIf(n -> n.startsWith("\u0000"));
            int at = seed;
            assertEquals(names, left, () -> "seed " + at);
            assertTrue(hasNoCircle(rows), () -> "seed " + at);
        }
    }

    /** The first senses with their names: enough to be merged, and quick. */
    private static Knowledge some(Knowledge all, int senses) {
        TreeMap<String, SenseRow> first = new TreeMap<>();
        all.senses().entrySet().stream()
                .limit(senses)
                .forEach(e -> first.put(e.getKey(), e.getValue()));
        List<LabelRow> labels =
                all.labels().stream().filter(l -> first.containsKey(l.sense())).toList();
        return new Knowledge(
                first, labels, List.of(), List.of(), List.of(), List.of(), new TreeMap<>());
    }

    private static ThesaurusEdit random(Knowledge rows, Random random, int seed, int step) {
        List<String> ids = List.copyOf(rows.senses().keySet());
        String one = ids.get(random.nextInt(ids.size()));
        String other = ids.get(random.nextInt(ids.size()));
        if (random.nextBoolean()) {
            return new Merge(one, other);
        }
        List<String> moving =
                rows.labels().stream()
                        .filter(l -> rows.current(l.sense()).equals(one))
                        .filter(l -> random.nextBoolean())
                        .map(l -> l.label().text())
                        .toList();
        return new Split(one, "split-" + seed + '-' + step, "\u0000" + seed + step, moving);
    }

    /** The texts of all names whose sense still exists, in order. */
    private static List<String> names(Knowledge rows) {
        List<String> names = new ArrayList<>();
        for (LabelRow row : rows.labels()) {
            if (rows.senses().containsKey(rows.current(row.sense()))) {
                names.add(row.label().text());
            }
        }
        names.sort(null);
        return names;
    }

    private static boolean hasNoCircle(Knowledge rows) {
        for (String id : rows.senses().keySet()) {
            List<String> open = new ArrayList<>(rows.senses().get(id).broader());
            List<String> seen = new ArrayList<>();
            while (!open.isEmpty()) {
                String next = open.removeLast();
                if (next.equals(id)) {
                    return false;
                }
                if (rows.senses().containsKey(next) && !seen.contains(next)) {
                    seen.add(next);
                    open.addAll(rows.senses().get(next).broader());
                }
            }
        }
        return true;
    }

    /** Taking a decision back is replaying the others: nothing of it remains. */
    @Test
    void undoIsReplayWithoutIt() {
        List<ThesaurusEdit> all =
                List.of(
                        new Merge("cognac", "brandy"),
                        new Split("rum", "rum-2", "other rum", List.of("old rum")),
                        new Merge("armagnac", "brandy"));
        Thesaurus without = shipped.apply(List.of(all.get(0), all.get(2))).thesaurus();
        Thesaurus straight =
                shipped.apply(List.of(all.get(0)))
                        .thesaurus()
                        .apply(List.of(all.get(2)))
                        .thesaurus();
        assertEquals(straight.senses(), without.senses());
        assertEquals(straight.labels("brandy"), without.labels("brandy"));
        assertEquals(shipped.labels("rum"), without.labels("rum"));
    }
}
