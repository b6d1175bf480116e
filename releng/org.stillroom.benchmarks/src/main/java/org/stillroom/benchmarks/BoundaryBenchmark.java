package org.stillroom.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.stillroom.library.read.SourceReaders;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Source;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.Folding;
import org.stillroom.model.text.Span;
import org.stillroom.reading.cut.BookCutter;
import org.stillroom.reading.cut.Cut;
import org.stillroom.reading.cut.TitleKey;

/**
 * Cuts books into recipes and prints how many stand where the truth has them.
 *
 * <p>Two ways: {@code --example SOURCES TRUTH} compares the example library's sources with the file
 * {@code recipes.tsv} of its truth, a recipe being right when its title and the first words after it agree;
 * {@code TEXT [TITLES]} prints the titles found in one text and, with a file of one title to a line,
 * how many of them were found.
 */
public final class BoundaryBenchmark {

    private BoundaryBenchmark() {}

    /** Right, found, and wanted recipes. */
    record Score(int right, int found, int wanted) {

        Score plus(Score other) {
            return new Score(right + other.right, found + other.found, wanted + other.wanted);
        }

        String line(String name) {
            double precision = found == 0 ? 1 : (double) right / found;
            double recall = wanted == 0 ? 1 : (double) right / wanted;
            double f1 = precision + recall == 0 ? 0 : 2 * precision * recall / (precision + recall);
            return String.format(
                    Locale.ROOT,
                    "%-44s wanted %4d  found %4d  right %4d  precision %.3f  recall %.3f  F1 %.3f",
                    name,
                    wanted,
                    found,
                    right,
                    precision,
                    recall,
                    f1);
        }
    }

    /** A recipe as the truth has it. */
    record Wanted(String title, String firstWords) {

        boolean isIn(Source source, Witness witness) {
            Span after = new Span(witness.titleSpan().end(), witness.span().end());
            String body = source.text().slice(after);
            String told = body.replaceFirst("^\\s*\\([^()]*\\)", "");
            boolean words =
                    plain(body).startsWith(plain(firstWords))
                            || plain(told).startsWith(plain(firstWords));
            return words && TitleKey.of(title).equals(TitleKey.of(witness.title()));
        }
    }

    /** Runs the benchmark. */
    public static void main(String[] args) throws IOException {
        Locale.setDefault(Locale.ROOT);
        if (args.length == 3 && args[0].equals("--example")) {
            example(Path.of(args[1]), Path.of(args[2]));
        } else if (args.length == 1 || args.length == 2) {
            book(
                    Path.of(args[0]),
                    args.length == 2 ? Files.readAllLines(Path.of(args[1])) : List.of());
        } else {
            Path root = Path.of(System.getProperty("stillroom.root", "."));
            example(root.resolve("corpus-example/sources"), root.resolve("releng/truth/example"));
        }
    }

    private static void example(Path sources, Path truth) throws IOException {
        Map<String, List<Wanted>> wanted = new LinkedHashMap<>();
        List<String> rows =
                Files.readAllLines(truth.resolve("recipes.tsv"), StandardCharsets.UTF_8);
        for (String row : rows.subList(1, rows.size())) {
            String[] cells = row.split("\t", -1);
            wanted.computeIfAbsent(cells[0], k -> new ArrayList<>())
                    .add(new Wanted(cells[2], cells[3]));
        }
        Score all = new Score(0, 0, 0);
        for (Map.Entry<String, List<Wanted>> entry : wanted.entrySet()) {
            Source source = read(sources.resolve(entry.getKey()));
            Score score = compare(source, new BookCutter().cut(source), entry.getValue());
            System.out.println(score.line(entry.getKey()));
            all = all.plus(score);
        }
        System.out.println(all.line("all"));
    }

    private static Score compare(Source source, Cut cut, List<Wanted> wanted) {
        List<Witness> left = new ArrayList<>(cut.witnesses());
        int right = 0;
        for (Wanted recipe : wanted) {
            for (int i = 0; i < left.size(); i++) {
                if (recipe.isIn(source, left.get(i))) {
                    left.remove(i);
                    right++;
                    break;
                }
            }
        }
        return new Score(right, cut.witnesses().size(), wanted.size());
    }

    private static void book(Path file, List<String> titles) throws IOException {
        Source source = read(file);
        long start = System.nanoTime();
        Cut cut = new BookCutter().cut(source);
        long millis = (System.nanoTime() - start) / 1_000_000;
        TreeSet<String> found = new TreeSet<>();
        for (Witness w : cut.witnesses()) {
            found.add(TitleKey.of(w.title()).text());
            System.out.println(
                    w.page().orElse("-") + "\t" + w.number().orElse("-") + "\t" + w.title());
        }
        System.out.printf(
                "%d recipes, %d sections, %d ms%n",
                cut.witnesses().size(), cut.sections().size(), millis);
        List<String> wanted = titles.stream().filter(t -> !t.isBlank()).toList();
        if (!wanted.isEmpty()) {
            List<String> missing =
                    wanted.stream().filter(t -> !found.contains(TitleKey.of(t).text())).toList();
            missing.forEach(t -> System.out.println("missing\t" + t));
            int right = wanted.size() - missing.size();
            System.out.println(
                    new Score(right, cut.witnesses().size(), wanted.size()).line("titles"));
        }
    }

    private static Source read(Path file) {
        return SourceReaders.shipped()
                .read(file.getFileName().toString(), file, Circumstances.UNKNOWN)
                .source()
                .orElseThrow();
    }

    private static String plain(String words) {
        return Folding.foldWord(words).replaceAll("[^a-z0-9]+", " ").strip();
    }
}
