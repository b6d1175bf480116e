package org.stillroom.ingredients;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.stillroom.ingredients.knowledge.Knowledge;
import org.stillroom.ingredients.knowledge.KnowledgeReader;
import org.stillroom.ingredients.knowledge.Sources;
import org.stillroom.ingredients.knowledge.Tables;
import org.stillroom.ingredients.spelling.EditCost;
import org.stillroom.ingredients.spelling.Misprints;
import org.stillroom.ingredients.spelling.SpellingRules;
import org.stillroom.model.explain.Problem;

/**
 * The data files beside this package.
 *
 * @param knowledge their rows
 * @param sources works by key
 * @param spelling old spellings
 * @param general ids of senses too general to compare versions by
 * @param countries two-letter codes by name of country or town, in small letters
 */
record ShippedData(
        Knowledge knowledge,
        Sources sources,
        SpellingKnowledge spelling,
        Set<String> general,
        Map<String, String> countries) {

    private static final List<String> KNOWLEDGE =
            List.of(
                    "senses.csv",
                    "labels.csv",
                    "properties.csv",
                    "allergens.csv",
                    "hazards.csv",
                    "chronology.csv");

    static ShippedData read() {
        Sources sources = Sources.read(file("sources.csv"));
        List<Problem> problems = new ArrayList<>();
        Knowledge knowledge =
                KnowledgeReader.read(
                        KNOWLEDGE.stream().map(ShippedData::file).toList(),
                        sources,
                        Knowledge.NONE,
                        problems);
        if (!problems.isEmpty()) {
            throw new IllegalStateException(problems.get(0).toText());
        }
        return new ShippedData(knowledge, sources, readSpelling(), readGeneral(), readCountries());
    }

    private static SpellingKnowledge readSpelling() {
        EditCost.Builder costs = new EditCost.Builder();
        rows("confusions.csv")
                .forEach(
                        r ->
                                costs.slip(
                                        r.get("one"),
                                        r.get("other"),
                                        Double.parseDouble(r.get("cost"))));
        List<SpellingRules.Rule> rules =
                rows("spelling-rules.csv")
                        .map(r -> SpellingRules.Rule.of(r.get("pattern"), r.get("by")))
                        .toList();
        Set<String> praise = new HashSet<>();
        rows("praise.csv").forEach(r -> praise.add(r.get("word")));
        List<Misprints.Pair> pairs =
                rows("misprints.csv")
                        .map(r -> new Misprints.Pair(r.get("printed"), r.get("meant")))
                        .toList();
        Map<String, Set<String>> contractions = new HashMap<>();
        rows("contractions.csv")
                .forEach(
                        r ->
                                contractions
                                        .computeIfAbsent(r.get("short"), k -> new HashSet<>())
                                        .add(r.get("whole")));
        return new SpellingKnowledge(
                new SpellingRules(rules),
                costs.build(),
                new Misprints(pairs),
                contractions,
                praise);
    }

    private static Set<String> readGeneral() {
        Set<String> general = new HashSet<>();
        rows("general.csv").forEach(r -> general.add(r.get("sense")));
        return Set.copyOf(general);
    }

    private static Map<String, String> readCountries() {
        Map<String, String> countries = new HashMap<>();
        rows("countries.csv")
                .forEach(r -> countries.put(r.get("name").toLowerCase(Locale.ROOT), r.get("code")));
        return Map.copyOf(countries);
    }

    private static Stream<Map<String, String>> rows(String name) {
        return Tables.rows(file(name)).stream();
    }

    static KnowledgeFile file(String name) {
        try (InputStream in = ShippedData.class.getResourceAsStream("data/" + name)) {
            if (in == null) {
                throw new IllegalStateException("The data file " + name + " is missing.");
            }
            return new KnowledgeFile(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
