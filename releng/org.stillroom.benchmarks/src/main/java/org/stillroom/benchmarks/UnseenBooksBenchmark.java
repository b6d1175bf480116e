package org.stillroom.benchmarks;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import org.stillroom.library.read.SourceReaders;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;
import org.stillroom.model.source.Source;
import org.stillroom.model.source.Trade;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.Folding;
import org.stillroom.model.text.SourceText;
import org.stillroom.reading.Reader;

/**
 * Reads whole books that nobody looked at while tuning, and prints totals for each book alone.
 *
 * <p>A recipe is found where one starts on its line; its title is right where letters and figures
 * agree; its ingredients are those of its own words. Argument: the folder of books, each a text with
 * a table of its stretches ({@code .tsv}) and the facts of its recipes ({@code .jsonl}), listed in
 * {@code books.tsv}.
 */
public final class UnseenBooksBenchmark {

    private final Reader reader = Reader.standard();
    private final ObjectMapper json = new ObjectMapper();

    private UnseenBooksBenchmark() {}

    /** Counts of one kind. */
    private static final class Tally {
        int read;
        int truth;
        int right;

        void add(int reads, int truths, int rights) {
            read += reads;
            truth += truths;
            right += rights;
        }

        @Override
        public String toString() {
            double f1 = read + truth == 0 ? 1 : 2.0 * right / (read + truth);
            return String.format(
                    Locale.ROOT,
                    "right %4d of %4d, read %4d  precision %.3f  recall %.3f  F1 %.3f",
                    right,
                    truth,
                    read,
                    right / (double) Math.max(1, read),
                    right / (double) Math.max(1, truth),
                    f1);
        }
    }

    /** Runs the benchmark. */
    public static void main(String[] args) throws IOException {
        Locale.setDefault(Locale.ROOT);
        Path folder = Truth.file(args, "releng/truth/reading/sealed-books");
        List<String> books =
                Files.readAllLines(folder.resolve("books.tsv"), StandardCharsets.UTF_8);
        TreeMap<String, Tally> all = new TreeMap<>();
        UnseenBooksBenchmark benchmark = new UnseenBooksBenchmark();
        for (String row : books.subList(1, books.size())) {
            TreeMap<String, Tally> own = new TreeMap<>();
            String[] book = row.split("\t", -1);
            benchmark.judge(folder, book, own);
            print(book[0], own);
            own.forEach(
                    (what, t) ->
                            all.computeIfAbsent(book[4] + " books, " + what, k -> new Tally())
                                    .add(t.read, t.truth, t.right));
        }
        print("All", all);
    }

    private static void print(String name, TreeMap<String, Tally> tallies) {
        System.out.println(name);
        tallies.forEach((what, t) -> System.out.printf("  %-32s %s%n", what, t));
    }

    private void judge(Path folder, String[] book, TreeMap<String, Tally> tallies)
            throws IOException {
        Source source = read(folder.resolve(book[0]), book);
        TreeMap<Integer, Reading> starts = new TreeMap<>();
        List<Assertion> none = List.of();
        int found = 0;
        for (Reading reading : reader.read(source, none, Progress.SILENT).readings()) {
            starts.putIfAbsent(line(source.text(), reading.witness()), reading);
            found++;
        }
        boundaries(rows(folder.resolve(book[0].replace(".txt", ".tsv"))), starts, found, tallies);
        Tally ingredients = tallies.computeIfAbsent("ingredients", k -> new Tally());
        for (String row : rows(folder.resolve(book[0].replace(".txt", ".jsonl")))) {
            JsonNode recipe = json.readTree(row);
            List<TruthLine> lines =
                    TruthLine.ofProse(recipe).stream().filter(l -> !l.isAlternative()).toList();
            ingredients.add(0, lines.size(), 0);
            Optional.ofNullable(starts.get(recipe.get("first").asInt()))
                    .map(r -> SaidLine.of(r).stream().map(SaidLine::line).toList())
                    .ifPresent(said -> ingredients.add(said.size(), 0, paired(said, lines)));
        }
    }

    private static void boundaries(
            List<String> stretches,
            TreeMap<Integer, Reading> starts,
            int found,
            TreeMap<String, Tally> tallies) {
        Tally boundaries = tallies.computeIfAbsent("boundaries", k -> new Tally());
        Tally titles = tallies.computeIfAbsent("titles, of those found", k -> new Tally());
        boundaries.add(found, 0, 0);
        TreeMap<String, Integer> where = astray(stretches, starts);
        if (!where.isEmpty()) {
            System.out.println("read as recipes, starting in: " + where);
        }
        for (String row : stretches) {
            String[] cells = row.split("\t", -1);
            if (!cells[2].equals("recipe")) {
                continue;
            }
            Optional<Reading> there = Optional.ofNullable(starts.get(Integer.parseInt(cells[0])));
            boundaries.add(0, 1, there.isPresent() ? 1 : 0);
            there.ifPresent(r -> title(cells[3], r.witness(), titles));
        }
    }

    /** Counts what was read as a recipe and starts elsewhere, by the kind of stretch it starts in. */
    private static TreeMap<String, Integer> astray(
            List<String> stretches, TreeMap<Integer, Reading> starts) {
        TreeMap<String, Integer> where = new TreeMap<>();
        for (int line : starts.keySet()) {
            String kind = "nothing named";
            for (String row : stretches) {
                String[] cells = row.split("\t", -1);
                boolean inside =
                        Integer.parseInt(cells[0]) <= line && line <= Integer.parseInt(cells[1]);
                boolean here = Integer.parseInt(cells[0]) == line;
                kind = inside ? cells[2] + (here ? "" : ", further down") : kind;
            }
            if (!kind.equals("recipe")) {
                where.merge(kind, 1, Integer::sum);
            }
        }
        return where;
    }

    private static void title(String title, Witness read, Tally tally) {
        if (!title.isBlank()) {
            tally.add(1, 1, plain(title).equals(plain(read.title())) ? 1 : 0);
        }
    }

    private static int paired(List<TruthLine> said, List<TruthLine> lines) {
        boolean[] usedSaid = new boolean[said.size()];
        boolean[] usedTruth = new boolean[lines.size()];
        int pairs = 0;
        for (LinePairs.Pair pair : LinePairs.of(said, lines)) {
            if (!usedSaid[pair.read()] && !usedTruth[pair.truth()]) {
                usedSaid[pair.read()] = true;
                usedTruth[pair.truth()] = true;
                pairs++;
            }
        }
        return pairs;
    }

    private static String plain(String words) {
        return Folding.foldWord(words).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }

    private static int line(SourceText text, Witness w) {
        boolean titled = !w.titleSpan().isEmpty() && w.span().contains(w.titleSpan());
        return text.lineAt(titled ? w.titleSpan().start() : w.span().start());
    }

    private static List<String> rows(Path file) throws IOException {
        return Files.readAllLines(file, StandardCharsets.UTF_8).stream()
                .filter(row -> !row.isBlank() && !row.startsWith("first\t"))
                .toList();
    }

    private static Source read(Path file, String[] book) {
        Source plain =
                SourceReaders.shipped()
                        .read(book[0], file, Circumstances.UNKNOWN)
                        .source()
                        .orElseThrow();
        Bibliography known =
                new Bibliography(
                        book[5],
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(Place.of(book[2])),
                        UncertainDate.parse(book[1]),
                        Optional.empty(),
                        Optional.empty(),
                        Trade.of(book[3]),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty());
        return new Source(book[0], known, plain.text(), plain.marks(), "");
    }
}
