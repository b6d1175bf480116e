package org.stillroom.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.stillroom.inquiry.Study;
import org.stillroom.inquiry.StudyDesk;
import org.stillroom.model.number.Rational;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.spec.Version;

/**
 * Reads, indexes and searches a large generated library and prints times, heap and accuracy.
 *
 * <p>{@code LibraryBenchmark [RECIPES] [FOLDER]}: 50,000 recipes unless told; where ripgrep is
 * installed it searches the same folder for the same words beside it.
 */
public final class LibraryBenchmark {

    private static final int SEARCHES = 500;
    private static final String[] QUERIES = {
        "gin",
        "brandy curacao",
        "\"gum syrup\"",
        "ingredient:rum date:1850/1880",
        "measure:wineglass -ingredient:gin",
        "vermouth orgeat",
        "title:harbour",
        "ingredient:arrack ingredient:maraschino",
        "shake \"lime juice\" date:186X",
        "lantern"
    };

    private LibraryBenchmark() {}

    /** Runs the benchmark. */
    public static void main(String[] words) throws IOException, InterruptedException {
        int recipes = words.length > 0 ? Integer.parseInt(words[0]) : 50_000;
        boolean own = words.length < 2;
        Path folder = own ? Files.createTempDirectory("stillroom-benchmark") : Path.of(words[1]);
        try {
            LibraryGenerator.write(folder, recipes, 1);
            run(folder, recipes);
        } finally {
            if (own) {
                delete(folder);
            }
        }
    }

    private static void run(Path folder, int recipes) throws IOException, InterruptedException {
        try (StudyDesk desk = new StudyDesk(folder.resolve("caches"))) {
            desk.lay(folder);
            long start = System.nanoTime();
            Study study = desk.study(Progress.SILENT);
            print("read and resolved", study.versions().size() + " recipes", start);
            start = System.nanoTime();
            study.index(Progress.SILENT);
            print("indexed", study.versions().size() + " versions", start);
            heap("after reading and indexing");
            search(study);
            accuracy(folder, study);
            start = System.nanoTime();
            study.drinks(Progress.SILENT);
            print("grouped", study.drinks(Progress.SILENT).drinks().size() + " drinks", start);
            heap("after grouping");
            start = System.nanoTime();
            Study again = desk.reread(Progress.SILENT);
            print("opened again unchanged", again.versions().size() + " recipes", start);
        }
        ripgrep(folder);
        System.out.printf(Locale.ROOT, "asked for: %d recipes%n", recipes);
    }

    private static void print(String what, String amount, long start) {
        double seconds = (System.nanoTime() - start) / 1e9;
        System.out.printf(Locale.ROOT, "%-28s %-22s %8.2f s%n", what, amount, seconds);
    }

    private static void heap(String when) {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        Runtime r = Runtime.getRuntime();
        long used = (r.totalMemory() - r.freeMemory()) >> 20;
        System.out.printf(
                Locale.ROOT,
                "%-28s %d MB in use, %d MB allowed%n",
                "heap " + when,
                used,
                r.maxMemory() >> 20);
    }

    private static void search(Study study) {
        SplittableRandom random = new SplittableRandom(5);
        double[] times = new double[SEARCHES];
        for (int i = -50; i < SEARCHES; i++) {
            String query = QUERIES[random.nextInt(QUERIES.length)];
            long start = System.nanoTime();
            study.search(query, 20, Progress.SILENT);
            if (i >= 0) {
                times[i] = (System.nanoTime() - start) / 1e6;
            }
        }
        Arrays.sort(times);
        System.out.printf(
                Locale.ROOT,
                "%-28s p50 %.1f ms, p95 %.1f ms, p99 %.1f ms (%d queries with facets)%n",
                "search",
                times[SEARCHES / 2],
                times[SEARCHES * 95 / 100],
                times[SEARCHES * 99 / 100],
                SEARCHES);
    }

    private static void accuracy(Path folder, Study study) throws IOException {
        Map<String, List<String[]>> truth = truth(folder);
        int lines = 0;
        int right = 0;
        int found = 0;
        for (Version version : study.versions()) {
            String book = version.source().id().replace(".md", "");
            List<String[]> expected =
                    truth.getOrDefault(book + "#" + version.witness().ordinal(), List.of());
            List<ReadingLine> got =
                    version.reading().lines().stream()
                            .filter(l -> l.kind() == LineKind.MEASURED)
                            .toList();
            found += expected.isEmpty() ? 0 : 1;
            for (int i = 0; i < expected.size(); i++) {
                lines++;
                right += i < got.size() && same(expected.get(i), got.get(i)) ? 1 : 0;
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%-28s %d of %d recipes found, %.4f of %d lines wholly right%n",
                "accuracy",
                found,
                truth.size(),
                lines == 0 ? 0 : right / (double) lines,
                lines);
    }

    private static boolean same(String[] expected, ReadingLine got) {
        return got.amount().quantity().map(Rational::toString).orElse("").equals(expected[2])
                && got.measure().equals(expected[3])
                && got.ingredientName().equalsIgnoreCase(expected[4]);
    }

    private static Map<String, List<String[]>> truth(Path folder) throws IOException {
        Map<String, List<String[]>> truth = new HashMap<>();
        try (Stream<Path> files = Files.list(folder.resolve("truth"))) {
            for (Path file : files.sorted().toList()) {
                String book = file.getFileName().toString().replace(".tsv", "");
                List<String> rows = Files.readAllLines(file, StandardCharsets.UTF_8);
                for (String row : rows.subList(1, rows.size())) {
                    String[] cells = row.split("\t");
                    truth.computeIfAbsent(book + "#" + cells[0], k -> new ArrayList<>()).add(cells);
                }
            }
        }
        return truth;
    }

    private static void ripgrep(Path folder) throws InterruptedException {
        try {
            long start = System.nanoTime();
            Process process =
                    new ProcessBuilder(
                                    "rg",
                                    "--count-matches",
                                    "-i",
                                    "gin",
                                    folder.resolve("sources").toString())
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start();
            process.waitFor();
            print("ripgrep beside it", "one word, all files", start);
        } catch (IOException absent) {
            System.out.println(
                    "ripgrep is not installed (Debian: apt-get install ripgrep); left out");
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
