package org.stillroom.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.stillroom.ingredients.Candidate;
import org.stillroom.ingredients.Cautions;
import org.stillroom.ingredients.IngredientLexicon;
import org.stillroom.ingredients.Sense;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.spec.Caution;
import org.stillroom.model.text.Folding;

/**
 * Looks for hazards in the sentences of the hazard truth, alone and inside recipes of the example
 * library and of other books, and prints how many are flagged, and how many harmless ones are.
 *
 * <p>Arguments: a folder of books, which are no part of the project, whose recipes are looked through
 * too; {@code --mistakes} shows what went wrong.
 */
public final class HazardBenchmark {

    private static final Map<String, Caution.Level> LEVELS =
            Map.of(
                    "S", Caution.Level.STOP,
                    "R", Caution.Level.RESTRICTED,
                    "C", Caution.Level.CARE);

    private HazardBenchmark() {}

    private record Row(
            String id, String half, String term, String text, Optional<Caution.Level> level) {

        HazardBooks.Planted planted() {
            return new HazardBooks.Planted(id, text, level);
        }
    }

    private record Result(Row row, List<Caution> cautions) {

        Optional<Caution.Level> gravest() {
            return cautions.stream().map(Caution::level).min(Caution.Level::compareTo);
        }

        boolean flagged() {
            return !cautions.isEmpty();
        }

        boolean asGrave() {
            return gravest().equals(row.level());
        }

        boolean alarmed() {
            return gravest().filter(l -> l != Caution.Level.CARE).isPresent();
        }
    }

    /** Runs the benchmark. */
    public static void main(String[] args) throws IOException {
        Locale.setDefault(Locale.ROOT);
        List<String> options = List.of(args);
        Path root = Path.of(System.getProperty("stillroom.root", "."));
        Path file = root.resolve("releng/truth/reading/hazards.tsv");
        Thesaurus thesaurus = Thesaurus.shipped();
        List<Result> results = new ArrayList<>();
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
            String[] cells = line.split("\t", -1);
            if (!cells[0].equals("id")) {
                Row row =
                        new Row(
                                cells[0],
                                cells[1],
                                cells[2],
                                cells[3],
                                Optional.ofNullable(LEVELS.get(cells[4])));
                results.add(new Result(row, cautions(thesaurus, row.text())));
            }
        }
        print("half A", results.stream().filter(r -> r.row().half().equals("A")).toList());
        print("half B", results.stream().filter(r -> r.row().half().equals("B")).toList());
        print("both halves", results);
        if (options.contains("--mistakes")) {
            results.stream()
                    .filter(r -> r.row().level().isEmpty() ? r.alarmed() : !r.asGrave())
                    .forEach(HazardBenchmark::show);
        }
        books(results.stream().map(Result::row).toList(), root, options);
    }

    private static void books(List<Row> rows, Path root, List<String> options) throws IOException {
        boolean mistakes = options.contains("--mistakes");
        List<HazardBooks.Planted> sentences = rows.stream().map(Row::planted).toList();
        new HazardBooks("example", root.resolve("corpus-example"), mistakes).planted(sentences);
        List<String> terms =
                rows.stream().filter(r -> r.level().isPresent()).map(Row::term).toList();
        for (String option : options) {
            if (!option.startsWith("-")) {
                HazardBooks books = new HazardBooks("books", Path.of(option), mistakes);
                books.planted(sentences);
                books.standing(terms);
            }
        }
    }

    private static List<Caution> cautions(Thesaurus thesaurus, String text) {
        List<String> tokens =
                List.of(
                        Folding.fold(text)
                                .folded()
                                .replaceAll("(?<!\\bst)[,.;:()]", " , ")
                                .split(" +"));
        List<Sense> senses = new ArrayList<>();
        int at = 0;
        while (at < tokens.size()) {
            Optional<IngredientLexicon.Match> match = thesaurus.lexicon().match(tokens, at);
            if (match.isPresent()) {
                String words = String.join(" ", tokens.subList(at, at + match.get().tokens()));
                thesaurus.find(words, Circumstances.UNKNOWN).stream()
                        .limit(1)
                        .map(Candidate::sense)
                        .forEach(senses::add);
            }
            at += match.map(IngredientLexicon.Match::tokens).orElse(1);
        }
        List<Caution> all =
                new ArrayList<>(Cautions.of(senses, List.of(), Circumstances.UNKNOWN).all());
        all.addAll(Cautions.inWords(text, thesaurus));
        return all;
    }

    private static void print(String name, List<Result> results) {
        List<Result> hazards = results.stream().filter(r -> r.row().level().isPresent()).toList();
        List<Result> harmless = results.stream().filter(r -> r.row().level().isEmpty()).toList();
        Figures.printShare(
                name + ": hazards flagged",
                hazards.stream().filter(Result::flagged).count(),
                hazards.size());
        Figures.printShare(
                name + ": with the level of the table",
                hazards.stream().filter(Result::asGrave).count(),
                hazards.size());
        Figures.printShare(
                name + ": harmless raised to stop or limit",
                harmless.stream().filter(Result::alarmed).count(),
                harmless.size());
    }

    private static void show(Result result) {
        System.out.println(
                result.row().id()
                        + " "
                        + result.row().level().map(Enum::name).orElse("harmless")
                        + ": "
                        + result.row().text());
        result.cautions().forEach(c -> System.out.println("    " + c.level() + " " + c.subject()));
    }
}
