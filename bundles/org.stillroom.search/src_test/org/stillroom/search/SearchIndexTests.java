package org.stillroom.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.model.date.Certainty;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.number.Rational;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.Confidence;
import org.stillroom.model.reading.Ingredient;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Place;
import org.stillroom.model.source.Source;
import org.stillroom.model.source.Trade;
import org.stillroom.model.source.Witness;
import org.stillroom.model.spec.Concept;
import org.stillroom.model.spec.Role;
import org.stillroom.model.spec.Spec;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

class SearchIndexTests {

    @TempDir Path caches;

    private final Map<String, List<Version>> sources = new TreeMap<>();
    private final Map<String, String> digests = new TreeMap<>();

    /** Adds a source of one recipe; its first word is the ingredient of its only line. */
    private Version add(String id, String date, String title, String body, String ingredient) {
        String words = title + "\n" + body;
        Bibliography b =
                new Bibliography(
                        "Book " + id,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(Place.of("Saltreath, GB")),
                        UncertainDate.parse(date),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(Trade.BAR),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty());
        Source source = new Source(id, b, SourceText.of(words), List.of(), id);
        Span all = source.text().span();
        Span head = new Span(0, title.length());
        Witness witness =
                new Witness(id, 1, Optional.empty(), title, head, all, all, Optional.empty());
        ReadingLine line =
                new ReadingLine(
                        "",
                        all,
                        LineKind.MEASURED,
                        Amount.of(Rational.ONE),
                        "wineglass",
                        Optional.empty(),
                        Optional.of(new Ingredient(ingredient, all, List.of(), List.of())),
                        Optional.empty(),
                        Confidence.of(1),
                        List.of());
        Reading reading =
                new Reading(
                        witness,
                        Reading.Genre.RECIPE,
                        List.of(line),
                        List.of(),
                        List.of(),
                        List.of(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        Confidence.of(1));
        SpecLine specLine =
                new SpecLine(
                        line,
                        new Concept(ingredient, ingredient, ingredient, Role.SPIRIT, true),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        Explanation.of(""));
        Spec spec =
                new Spec(
                        reading,
                        List.of(specLine),
                        "",
                        "",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of());
        Version version = new Version(source, spec);
        sources.put(id, List.of(version));
        digests.put(id, words);
        return version;
    }

    private int update(SearchIndex index) {
        return index.update(sources, digests, Progress.SILENT);
    }

    private static List<String> found(SearchIndex index, String query) {
        return index.search(query, 10).hits().stream().map(SearchHit::version).sorted().toList();
    }

    @Test
    void periodSpellingsFindOneAnother() {
        add("a", "1794", "PUNCH", "Take a wine-glaſs of Curaçoa and two lemons' juice.", "rum");
        add("b", "1862", "Punch", "One wineglass of curacao; juice of two lem-\nons", "rum");
        add("c", "1862", "Flip", "One wine glass of brandy.", "brandy");
        try (SearchIndex index = SearchIndex.open(caches)) {
            assertEquals(3, update(index));
            assertEquals(List.of("a#1", "b#1"), found(index, "curaçao"));
            assertEquals(List.of("a#1", "b#1"), found(index, "wineglass curacoa"));
            assertEquals(List.of("a#1", "b#1", "c#1"), found(index, "wine-glass"));
            assertEquals(List.of("a#1"), found(index, "lemon date:1790/1800"));
        }
    }

    @Test
    void hitsAreMarkedOnThePrintedWords() {
        Version a = add("a", "1794", "Bowl 𝔄", "A wine-glaſs of 𝔅 Curaçoa.", "rum");
        try (SearchIndex index = SearchIndex.open(caches)) {
            update(index);
            SearchHit hit = index.search("curacao", 10).hits().get(0);
            assertEquals("Curaçoa", a.source().text().slice(hit.marks().get(0)));
            SearchHit glass = index.search("wineglass", 10).hits().get(0);
            assertEquals("wine-glaſs", a.source().text().slice(glass.marks().get(0)));
        }
    }

    @Test
    void wordsAndStructureGoTogether() {
        add("a", "1862", "One", "Shake it well.", "gin");
        add("b", "1862", "Two", "Shake it well.", "brandy");
        add("c", "1895", "Three", "Stir it well.", "gin");
        try (SearchIndex index = SearchIndex.open(caches)) {
            update(index);
            assertEquals(List.of("a#1"), found(index, "shake ingredient:gin"));
            assertEquals(List.of("b#1"), found(index, "well -ingredient:gin"));
            assertEquals(List.of("a#1", "b#1"), found(index, "date:186X"));
            assertEquals(List.of("a#1", "c#1"), found(index, "title:one or title:three"));
            assertEquals(List.of("a#1", "b#1"), found(index, "\"shake it\""));
            SearchResult all = index.search("", 10);
            assertEquals(3, all.total());
            Facet ingredient = all.facets().get(0);
            assertEquals(new Facet.Count("gin", 2), ingredient.counts().get(0));
        }
    }

    @Test
    void anUncertainDateMakesAHitPossible() {
        add("a", "1862", "One", "Words.", "gin");
        add("b", "1855/1870", "Two", "Words.", "gin");
        add("c", "1880", "Three", "Words.", "gin");
        try (SearchIndex index = SearchIndex.open(caches)) {
            update(index);
            SearchResult result = index.search("date:186X", 10);
            assertEquals(2, result.total());
            for (SearchHit hit : result.hits()) {
                Certainty expected =
                        hit.version().equals("a#1") ? Certainty.CERTAIN : Certainty.POSSIBLE;
                assertEquals(expected, hit.certainty(), hit.version());
            }
        }
    }

    @Test
    void anUnchangedLibraryIndexesNothing() {
        add("a", "1862", "One", "Words.", "gin");
        add("b", "1862", "Two", "Words.", "gin");
        try (SearchIndex index = SearchIndex.open(caches)) {
            assertEquals(2, update(index));
        }
        try (SearchIndex index = SearchIndex.open(caches)) {
            assertEquals(0, update(index));
            add("b", "1862", "Two", "Other words.", "gin");
            assertEquals(1, update(index));
            sources.remove("a");
            digests.remove("a");
            assertEquals(0, update(index));
            assertEquals(List.of("b#1"), found(index, "words"));
        }
    }

    @Test
    void aDamagedOrForeignIndexIsMadeAnew() throws IOException {
        add("a", "1862", "One", "Words.", "gin");
        try (SearchIndex index = SearchIndex.open(caches)) {
            update(index);
        }
        Files.writeString(caches.resolve("index.stamp"), "of an older version");
        try (SearchIndex index = SearchIndex.open(caches)) {
            assertEquals(1, update(index));
        }
        Files.writeString(caches.resolve("index.inconsistent"), "");
        try (SearchIndex index = SearchIndex.open(caches)) {
            assertEquals(1, update(index));
        }
        List<Path> files = new ArrayList<>();
        try (var list = Files.list(caches.resolve("index"))) {
            list.filter(f -> f.getFileName().toString().startsWith("segments")).forEach(files::add);
        }
        for (Path file : files) {
            Files.write(file, new byte[] {1, 2, 3});
        }
        try (SearchIndex index = SearchIndex.open(caches)) {
            assertEquals(1, update(index));
            assertEquals(List.of("a#1"), found(index, "words"));
        }
    }

    @Test
    void whereTheDiskCannotBeWrittenTheIndexIsKeptInMemory() throws IOException {
        Path file = caches.resolve("a-file");
        Files.writeString(file, "");
        add("a", "1862", "One", "Words.", "gin");
        try (SearchIndex index = SearchIndex.open(file)) {
            assertEquals(1, update(index));
            assertEquals(List.of("a#1"), found(index, "words"));
            assertEquals(1, index.problems().size());
        }
    }

    @Test
    void aWrongFieldNamesTheNearest() {
        try (SearchIndex index = SearchIndex.open(caches)) {
            add("a", "1862", "One", "Words.", "gin");
            update(index);
            SearchException e =
                    assertThrows(SearchException.class, () -> index.search("ingrediant:gin", 10));
            assertTrue(e.remedy().contains("ingredient:"));
            assertThrows(SearchException.class, () -> index.search("date:soon", 10));
        }
    }
}
