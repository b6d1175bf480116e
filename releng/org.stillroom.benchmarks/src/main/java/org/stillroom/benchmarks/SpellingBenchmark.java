package org.stillroom.benchmarks;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.stillroom.ingredients.Candidate;
import org.stillroom.ingredients.Label;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;
import org.stillroom.model.text.Folding;

/**
 * Resolves the period spellings of the reading truth and prints how many are right first and within three.
 *
 * <p>Arguments: the file of spellings, by default the project’s; {@code --mistakes} shows the
 * mistakes of half A. An answer is right where the sense, or one that it is a kind of, bears the
 * name that the truth prefers: “old Tom gin” is right for “gin”, the reverse is not.
 */
public final class SpellingBenchmark {

    /** Time of the processor, so that what else the machine does is not measured. */
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

    private SpellingBenchmark() {}

    private record Row(
            String half, String spelling, Circumstances where, String truth, String note) {}

    private record Result(Row row, List<Candidate> found, int rank, double micros) {
        boolean within(int n) {
            return rank >= 1 && rank <= n;
        }
    }

    /** Runs the benchmark. */
    public static void main(String[] args) throws IOException {
        Locale.setDefault(Locale.ROOT);
        List<String> options = List.of(args);
        Path file = Truth.file(args, "releng/truth/reading/spellings.tsv");
        Thesaurus thesaurus = Thesaurus.shipped();
        Map<String, Set<String>> bearers = bearers(thesaurus);
        List<Row> rows = rows(file);
        warmUp(thesaurus, rows);
        List<Result> results = new ArrayList<>();
        for (Row row : rows) {
            results.add(resolve(thesaurus, row, bearers));
        }
        print("A", results);
        print("B", results);
        print("", results);
        if (options.contains("--mistakes")) {
            results.stream().filter(r -> !r.within(1)).forEach(SpellingBenchmark::show);
        }
        Set<String> missing = new HashSet<>();
        rows.forEach(
                r -> {
                    if (!bearers.containsKey(Folding.foldWord(r.truth()))) {
                        missing.add(r.truth());
                    }
                });
        System.out.println("names of the truth that no sense bears: " + missing.size());
        if (options.contains("--missing")) {
            missing.stream().sorted().forEach(m -> System.out.println("  " + m));
        }
    }

    private static void warmUp(Thesaurus thesaurus, List<Row> rows) {
        rows.stream().limit(200).forEach(r -> thesaurus.find("x" + r.spelling(), r.where()));
    }

    private static Result resolve(Thesaurus thesaurus, Row row, Map<String, Set<String>> bearers) {
        long begin = CLOCK.getCurrentThreadCpuTime();
        List<Candidate> found = thesaurus.find(row.spelling(), row.where());
        double micros = (CLOCK.getCurrentThreadCpuTime() - begin) / 1000.0;
        Set<String> right = bearers.getOrDefault(Folding.foldWord(row.truth()), Set.of());
        int rank = 0;
        for (int i = 0; i < found.size() && rank == 0; i++) {
            Set<String> kinds = thesaurus.withBroader(found.get(i).sense().id());
            if (kinds.stream().anyMatch(right::contains)) {
                rank = i + 1;
            }
        }
        return new Result(row, found, rank, micros);
    }

    /** Senses by the folded names that they bear; misspellings count where no sense has the name. */
    private static Map<String, Set<String>> bearers(Thesaurus thesaurus) {
        Map<String, Set<String>> bearers = new TreeMap<>();
        Map<String, Set<String>> hidden = new TreeMap<>();
        for (String id : thesaurus.senses().keySet()) {
            for (Label label : thesaurus.labels(id)) {
                boolean shown = label.kind() != Label.Kind.HIDDEN;
                (shown ? bearers : hidden)
                        .computeIfAbsent(Folding.foldWord(label.text()), k -> new HashSet<>())
                        .add(id);
            }
        }
        hidden.forEach(bearers::putIfAbsent);
        return bearers;
    }

    private static List<Row> rows(Path file) throws IOException {
        List<Row> rows = new ArrayList<>();
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
            String[] cells = line.split("\t", -1);
            if (cells.length < 5 || cells[0].equals("half")) {
                continue;
            }
            Circumstances where =
                    new Circumstances(
                            cells[3].isBlank() ? Optional.empty() : Optional.of(Place.of(cells[3])),
                            UncertainDate.parse(cells[2]),
                            Optional.empty(),
                            Optional.empty());
            rows.add(
                    new Row(cells[0], cells[1], where, cells[4], cells.length > 5 ? cells[5] : ""));
        }
        return rows;
    }

    private static void print(String half, List<Result> results) {
        List<Result> of =
                results.stream()
                        .filter(r -> half.isEmpty() || r.row().half().equals(half))
                        .toList();
        String name = half.isEmpty() ? "both halves" : "half " + half;
        Figures.printShare(name + ": right first", count(of, 1), of.size());
        Figures.printShare(name + ": within three", count(of, 3), of.size());
        double[] micros = of.stream().mapToDouble(Result::micros).toArray();
        Figures.print(name + ": median time", Figures.percentile(micros, 0.5), "µs");
        Figures.print(name + ": 99 % of times below", Figures.percentile(micros, 0.99), "µs");
        Map<String, int[]> byNote = new TreeMap<>();
        of.forEach(
                r -> {
                    int[] n = byNote.computeIfAbsent(r.row().note(), k -> new int[2]);
                    n[0] += r.within(1) ? 1 : 0;
                    n[1]++;
                });
        byNote.forEach((note, n) -> Figures.printShare("  " + note, n[0], n[1]));
    }

    private static long count(List<Result> results, int within) {
        return results.stream().filter(r -> r.within(within)).count();
    }

    private static void show(Result result) {
        StringBuilder line = new StringBuilder();
        line.append(result.row().spelling()).append(" → ").append(result.row().truth());
        line.append(" (rank ").append(result.rank()).append("): ");
        result.found().stream()
                .limit(3)
                .forEach(
                        c ->
                                line.append(
                                        String.format(
                                                Locale.ROOT,
                                                "%s %.3f; ",
                                                c.sense().id(),
                                                c.score())));
        System.out.println(line);
    }
}
