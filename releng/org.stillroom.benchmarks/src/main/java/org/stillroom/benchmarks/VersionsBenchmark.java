package org.stillroom.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.stillroom.inquiry.Study;
import org.stillroom.inquiry.StudyDesk;
import org.stillroom.lineage.Candidate;
import org.stillroom.lineage.Descent;
import org.stillroom.lineage.Drink;
import org.stillroom.lineage.score.ClusterScores;
import org.stillroom.model.progress.Progress;

/**
 * Groups and traces the example library and prints figures against its truth.
 *
 * <p>{@code VersionsBenchmark [-v]}: with {@code -v} every difference is listed.
 */
public final class VersionsBenchmark {

    private final Map<String, String> drinkOf = new TreeMap<>();
    private final Map<String, String[]> parentOf = new HashMap<>();
    private final boolean verbose;

    private VersionsBenchmark(boolean verbose) {
        this.verbose = verbose;
    }

    /** Runs the benchmark. */
    public static void main(String[] words) throws IOException {
        Path root = Path.of(System.getProperty("stillroom.root", ""));
        Path truth = root.resolve("releng/truth/example");
        Path example = Path.of(System.getProperty("stillroom.example", root + "/corpus-example"));
        VersionsBenchmark benchmark =
                new VersionsBenchmark(words.length > 0 && words[0].equals("-v"));
        benchmark.read(truth);
        Path caches = Files.createTempDirectory("stillroom-caches");
        try (StudyDesk desk = new StudyDesk(caches)) {
            desk.lay(example);
            Study study = desk.study(Progress.SILENT);
            benchmark.groups(study);
            benchmark.parents(study);
        }
    }

    private void read(Path truth) throws IOException {
        for (String[] row : rows(truth.resolve("recipes.tsv"))) {
            if (row[5].equals("1")) {
                drinkOf.put(row[0] + "#" + row[1], row[4]);
            }
        }
        for (String[] row : rows(truth.resolve("parents.tsv"))) {
            parentOf.put(row[0] + "#" + row[1], row);
        }
    }

    private static List<String[]> rows(Path file) throws IOException {
        List<String[]> rows = new ArrayList<>();
        List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
        for (String line : lines.subList(1, lines.size())) {
            rows.add(line.split("\t", -1));
        }
        return rows;
    }

    private void groups(Study study) {
        Map<String, String> found = new HashMap<>();
        for (Drink drink : study.drinks(Progress.SILENT).drinks()) {
            drink.versions().forEach(v -> found.put(v.id(), drink.id()));
        }
        List<String> truth = new ArrayList<>();
        List<String> got = new ArrayList<>();
        Map<String, Map<String, List<String>>> spread = new TreeMap<>();
        drinkOf.forEach(
                (id, drink) -> {
                    String group = found.get(id);
                    if (group != null && !drink.isEmpty()) {
                        truth.add(drink);
                        got.add(group);
                        spread.computeIfAbsent(drink, d -> new TreeMap<>())
                                .computeIfAbsent(group, g -> new ArrayList<>())
                                .add(id);
                    }
                });
        ClusterScores scores = ClusterScores.of(truth, got);
        System.out.printf(Locale.ROOT, "%d of %d versions found%n", truth.size(), drinkOf.size());
        System.out.println("drinks: " + scores);
        System.out.printf(
                Locale.ROOT,
                "drinks: B³ F1 %.3f, pairs F1 %.3f%n",
                scores.bCubedF1(),
                scores.pairF1());
        if (verbose) {
            spread.forEach(
                    (drink, groups) -> {
                        if (groups.size() > 1) {
                            System.out.println("  split: " + drink + " " + groups.values());
                        }
                    });
            Map<String, Map<String, Integer>> mixed = new TreeMap<>();
            for (int i = 0; i < truth.size(); i++) {
                mixed.computeIfAbsent(got.get(i), g -> new TreeMap<>())
                        .merge(truth.get(i), 1, Integer::sum);
            }
            mixed.forEach(
                    (group, drinks) -> {
                        if (drinks.size() > 1) {
                            System.out.println("  mixed: " + group + " " + drinks);
                        }
                    });
        }
    }

    private void parents(Study study) {
        int children = 0;
        int first = 0;
        int third = 0;
        int named = 0;
        int tied = 0;
        int reprints = 0;
        int reprintsFound = 0;
        int reprintsSaid = 0;
        int independent = 0;
        int independentSaid = 0;
        for (Drink drink : study.drinks(Progress.SILENT).drinks()) {
            for (Descent d : study.lineage(drink, Progress.SILENT).descents()) {
                String[] row = parentOf.get(d.version().id());
                if (row == null) {
                    continue;
                }
                boolean reprintSaid = d.standing() == Descent.Standing.REPRINT;
                reprintsSaid += reprintSaid ? 1 : 0;
                if (row[2].isEmpty() || row[2].equals(row[0])) {
                    if (row[4].equals("independent")) {
                        independent++;
                        boolean said =
                                d.parent().isEmpty() && d.standing() != Descent.Standing.TIED;
                        independentSaid += said ? 1 : 0;
                        if (!said && verbose) {
                            System.out.println(
                                    "  said to be taken: " + d.version().id() + " " + d.reason());
                        }
                    }
                    continue;
                }
                children++;
                String parent = row[2] + "#" + row[3];
                List<String> ranked =
                        d.candidates().stream().map(Candidate::parent).map(v -> v.id()).toList();
                boolean isFirst = !ranked.isEmpty() && ranked.get(0).equals(parent);
                first += isFirst ? 1 : 0;
                third += ranked.stream().limit(3).anyMatch(parent::equals) ? 1 : 0;
                named += d.parent().filter(p -> p.id().equals(parent)).isPresent() ? 1 : 0;
                tied += d.standing() == Descent.Standing.TIED ? 1 : 0;
                if (row[4].equals("reprint")) {
                    reprints++;
                    reprintsFound += reprintSaid && isFirst ? 1 : 0;
                }
                if (verbose && d.parent().filter(p -> p.id().equals(parent)).isEmpty()) {
                    System.out.println(
                            "  "
                                    + row[4]
                                    + ": "
                                    + d.version().id()
                                    + " from "
                                    + parent
                                    + "; said "
                                    + d.standing()
                                    + " "
                                    + d.reason()
                                    + " "
                                    + d.candidates().stream()
                                            .limit(2)
                                            .map(Candidate::reasons)
                                            .toList());
                }
            }
        }
        System.out.printf(
                Locale.ROOT,
                "parents: of %d versions taken from another source the right one is first for %d "
                        + "(%.3f), among three for %d (%.3f), named as the parent for %d; tied %d%n",
                children,
                first,
                (double) first / Math.max(1, children),
                third,
                (double) third / Math.max(1, children),
                named,
                tied);
        System.out.printf(
                Locale.ROOT,
                "reprints: %d of %d found, %d said; independent: %d of %d said to be%n",
                reprintsFound,
                reprints,
                reprintsSaid,
                independentSaid,
                independent);
    }
}
