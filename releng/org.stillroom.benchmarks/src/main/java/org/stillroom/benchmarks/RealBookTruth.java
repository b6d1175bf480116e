package org.stillroom.benchmarks;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a careful reader found in one published book: labelled recipes and where every recipe starts.
 *
 * @param book the name of its text file, without the ending
 * @param recipes the labelled recipes, in the order of print
 * @param starts the lines at which one recipe may start, for every recipe of the book
 * @param open lines at which a reader may see a recipe or not
 */
record RealBookTruth(String book, List<Recipe> recipes, List<Lines> starts, List<Lines> open) {

    /** Lines of the text file, from 1, both ends included. */
    record Lines(int from, int to) {

        boolean has(int line) {
            return from <= line && line <= to;
        }

        @Override
        public String toString() {
            return from == to ? "line " + from : "lines " + from + "–" + to;
        }
    }

    /**
     * One labelled recipe.
     *
     * @param facts its row of the truth: title, vessel, ice, garnish, steps and so on
     * @param place where it stands
     * @param lines its ingredients, alternatives left out
     */
    record Recipe(JsonNode facts, Lines place, List<TruthLine> lines) {

        static Recipe of(JsonNode row) {
            return new Recipe(
                    row,
                    new Lines(row.get("start").asInt(), row.get("end").asInt()),
                    TruthLine.of(row).stream().filter(l -> !l.isAlternative()).toList());
        }

        /** Returns a field as folded text, or an empty string. */
        String text(String field) {
            return TruthLine.text(facts, field);
        }

        List<String> list(String field) {
            List<String> values = new ArrayList<>();
            facts.get(field).forEach(v -> values.add(v.asText()));
            return values;
        }
    }

    /** Reads the truth of all books from a folder. */
    static List<RealBookTruth> read(Path folder) throws IOException {
        ObjectMapper json = new ObjectMapper();
        Map<String, List<Recipe>> recipes = new TreeMap<>();
        for (String row : rows(folder.resolve("real-books.jsonl"))) {
            JsonNode node = json.readTree(row);
            recipes.computeIfAbsent(node.get("book").asText(), b -> new ArrayList<>())
                    .add(Recipe.of(node));
        }
        List<String> index = rows(folder.resolve("real-books-index.tsv"));
        List<RealBookTruth> books = new ArrayList<>();
        recipes.forEach(
                (book, found) ->
                        books.add(
                                new RealBookTruth(
                                        book,
                                        found,
                                        lines(index, book, "recipe"),
                                        lines(index, book, "open"))));
        return books;
    }

    private static List<String> rows(Path file) throws IOException {
        return Files.readAllLines(file, StandardCharsets.UTF_8);
    }

    private static List<Lines> lines(List<String> index, String book, String kind) {
        return index.stream()
                .map(row -> row.split("\t", -1))
                .filter(c -> c[0].equals(book) && c[1].equals(kind))
                .map(c -> new Lines(Integer.parseInt(c[2]), Integer.parseInt(c[3])))
                .toList();
    }

    /** Returns the lines at which the recipe that starts at a line may start. */
    Optional<Lines> startOf(int line) {
        return starts.stream().filter(s -> s.has(line)).findFirst();
    }

    boolean isOpen(int line) {
        return open.stream().anyMatch(o -> o.has(line));
    }
}
