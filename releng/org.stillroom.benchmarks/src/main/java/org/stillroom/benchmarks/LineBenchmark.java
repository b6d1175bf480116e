package org.stillroom.benchmarks;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Size;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;
import org.stillroom.model.source.Trade;
import org.stillroom.model.text.Folding;
import org.stillroom.reading.grammar.RecipeReader;

/**
 * Reads the lines of the reading truth and prints how many are right, by half and by category; the
 * rows of the sealed half are never shown.
 *
 * <p>Arguments: a file of lines in place of all; then {@code --mistakes N} for the worst N mistakes of
 * half A, {@code --all} to show those of all halves but the sealed one.
 */
public final class LineBenchmark {

    private static final List<String> HALVES = List.of("A", "B", "C", "D", Truth.SEALED);
    private static final double SURE = 0.9;

    private LineBenchmark() {}

    /** One line of the truth. */
    record Row(
            String id,
            String half,
            String category,
            Circumstances where,
            String text,
            String kind,
            String quantity,
            String quantityMax,
            String measure,
            String size,
            String ingredient) {}

    /** What was read of it, and how right it is. */
    record Result(
            Row row,
            Optional<ReadingLine> read,
            boolean quantity,
            boolean measure,
            boolean kind,
            boolean size,
            Score score) {

        boolean right() {
            return quantity && measure && kind && score.f1() > 0.999;
        }

        boolean numbersRight() {
            return quantity && measure;
        }

        double probability() {
            return read.map(l -> l.confidence().probability()).orElse(0.0);
        }
    }

    /** Words found, words there, words in both. */
    record Score(int read, int truth, int both) {
        double f1() {
            return read + truth == 0 ? 1 : 2.0 * both / (read + truth);
        }
    }

    /** Runs the benchmark. */
    public static void main(String[] args) throws IOException {
        Locale.setDefault(Locale.ROOT);
        RecipeReader reader = RecipeReader.standard();
        List<Result> results = new ArrayList<>();
        String folder = "releng/truth/reading/";
        List<Row> rows =
                rows(
                        Truth.rows(
                                args,
                                folder + "lines.tsv",
                                folder + "holdout-lines.tsv",
                                folder + "unseen-lines.tsv",
                                folder + "sealed-lines.tsv"));
        for (Row row : rows) {
            results.add(judge(row, reader.readLine(row.text(), row.where())));
        }
        List<String> options = List.of(args);
        List<String> halves =
                HALVES.stream()
                        .filter(h -> results.stream().anyMatch(r -> r.row().half().equals(h)))
                        .toList();
        for (String half : halves) {
            print(half, results);
        }
        for (String half : halves) {
            Calibration.print(
                    results.stream().filter(r -> r.row().half().equals(half)).toList(), half);
        }
        int count =
                options.contains("--mistakes")
                        ? Integer.parseInt(options.get(options.indexOf("--mistakes") + 1))
                        : 20;
        mistakes(results, count, options.contains("--all"));
    }

    private static List<Row> rows(List<String> lines) {
        List<Row> rows = new ArrayList<>();
        for (String line : lines) {
            String[] c = line.split("\t", -1);
            if (c.length >= 13 && !c[0].equals("id")) {
                Circumstances where =
                        new Circumstances(
                                Optional.of(Place.of(c[4])),
                                UncertainDate.parse(c[3]),
                                Trade.of(c[5]),
                                c.length > 13 && !c[13].isEmpty()
                                        ? Optional.of(c[13])
                                        : Optional.empty());
                rows.add(
                        new Row(
                                c[0], c[1], c[2], where, c[6], c[7], c[8], c[9], c[10], c[11],
                                c[12]));
            }
        }
        return rows;
    }

    private static Result judge(Row row, List<ReadingLine> lines) {
        if (lines.isEmpty()) {
            int truth = words(row.ingredient()).size();
            return new Result(
                    row, Optional.empty(), false, false, false, false, new Score(0, truth, 0));
        }
        ReadingLine line = lines.get(0);
        String low = line.amount().quantity().map(Rational::toString).orElse("");
        String high = line.amount().quantityMax().map(Rational::toString).orElse("");
        boolean quantity = low.equals(row.quantity()) && high.equals(row.quantityMax());
        List<String> truth = words(row.ingredient());
        List<String> read = words(line.ingredientName());
        int both = (int) read.stream().distinct().filter(truth::contains).count();
        Score score =
                new Score(
                        (int) read.stream().distinct().count(),
                        (int) truth.stream().distinct().count(),
                        both);
        return new Result(
                row,
                Optional.of(line),
                quantity,
                sameMeasure(line.measure(), row.measure()),
                line.kind().word().equals(row.kind()),
                line.size().map(Size::word).orElse("").equals(row.size()),
                score);
    }

    /** Other names of a measure, as a book prints them, beside ours; folded. */
    private static final Map<String, String> NAMES =
            Map.ofEntries(
                    Map.entry("centilitre", "cl"),
                    Map.entry("mil", "ml"),
                    Map.entry("kilogramme", "kilo"),
                    Map.entry("decilitre", "dl"),
                    Map.entry("pint", "pinte"),
                    Map.entry("mass", "masz"),
                    Map.entry("messerspitze", "pinch"),
                    Map.entry("bundchen", "bunch"),
                    Map.entry("rama", "sprig"),
                    Map.entry("vaso", "glass"),
                    Map.entry("copa", "glass"),
                    Map.entry("copita", "liqueur glass"),
                    Map.entry("verre a bordeaux", "wineglass"),
                    Map.entry("verre a madere", "madeira glass"));

    private static boolean sameMeasure(String read, String truth) {
        String said = Folding.foldWord(truth);
        return read.equals(truth)
                || Folding.foldWord(read).equals(said)
                || read.equals(NAMES.get(said));
    }

    static List<String> words(String name) {
        String folded = Folding.foldWord(name).replace("-", " ").replaceAll("[.,;()]", " ");
        return folded.isBlank() ? List.of() : List.of(folded.strip().split(" +"));
    }

    private static void print(String half, List<Result> all) {
        List<Result> results = all.stream().filter(r -> r.row().half().equals(half)).toList();
        System.out.println("Half " + half + ", " + results.size() + " lines");
        System.out.printf(
                "  %-16s %6s %8s %8s %8s %8s %8s%n",
                "category", "lines", "quantity", "measure", "kind", "size", "name F1");
        Map<String, List<Result>> by = new TreeMap<>();
        results.forEach(r -> by.computeIfAbsent(r.row().category(), c -> new ArrayList<>()).add(r));
        by.forEach(LineBenchmark::printRow);
        printRow("all", results);
        long wrong =
                results.stream().filter(r -> !r.numbersRight() && r.probability() >= SURE).count();
        System.out.printf(
                "  confidently wrong (quantity or measure, sure to %.2f): %.4f%n",
                SURE, wrong / (double) Math.max(1, results.size()));
    }

    private static void printRow(String name, List<Result> rows) {
        double n = rows.size();
        int read = rows.stream().mapToInt(r -> r.score().read()).sum();
        int truth = rows.stream().mapToInt(r -> r.score().truth()).sum();
        int both = rows.stream().mapToInt(r -> r.score().both()).sum();
        System.out.printf(
                "  %-16s %6d %8.3f %8.3f %8.3f %8.3f %8.3f%n",
                name,
                rows.size(),
                rows.stream().filter(Result::quantity).count() / n,
                rows.stream().filter(Result::measure).count() / n,
                rows.stream().filter(Result::kind).count() / n,
                rows.stream().filter(Result::size).count() / n,
                new Score(read, truth, both).f1());
    }

    private static void mistakes(List<Result> results, int count, boolean all) {
        if (count == 0) {
            return;
        }
        System.out.println("Worst mistakes" + (all ? "" : " of half A") + ", surest first");
        results.stream()
                .filter(
                        r ->
                                all
                                        ? !r.row().half().equals(Truth.SEALED)
                                        : r.row().half().equals("A"))
                .filter(r -> !r.right())
                .sorted(Comparator.comparingDouble(Result::probability).reversed())
                .limit(count)
                .forEach(
                        r ->
                                System.out.printf(
                                        "  %.2f %s [%s] “%s”%n        true %s%n        read %s%n",
                                        r.probability(),
                                        r.row().id(),
                                        r.row().category(),
                                        r.row().text(),
                                        String.join(
                                                " | ",
                                                r.row().kind(),
                                                r.row().quantity(),
                                                r.row().quantityMax(),
                                                r.row().measure(),
                                                r.row().size(),
                                                r.row().ingredient()),
                                        r.read().map(LineBenchmark::show).orElse("nothing")));
    }

    private static String show(ReadingLine line) {
        return String.join(
                " | ",
                line.kind().word(),
                line.amount().quantity().map(Rational::toString).orElse(""),
                line.amount().quantityMax().map(Rational::toString).orElse(""),
                line.measure(),
                line.size().map(Size::word).orElse(""),
                line.ingredientName());
    }

    /** How well probabilities agree with how often a reading is right. */
    static final class Calibration {

        private Calibration() {}

        static void print(List<Result> results, String half) {
            double error = 0;
            System.out.println("Calibration, half " + half + ": bin, lines, said, right");
            for (int bin = 0; bin < 10; bin++) {
                int b = bin;
                List<Result> in =
                        results.stream()
                                .filter(r -> Math.min(9, (int) (r.probability() * 10)) == b)
                                .toList();
                if (!in.isEmpty()) {
                    double said = in.stream().mapToDouble(Result::probability).average().orElse(0);
                    double right = in.stream().filter(Result::right).count() / (double) in.size();
                    error += Math.abs(said - right) * in.size() / results.size();
                    System.out.printf(
                            "  %.1f–%.1f %5d %.3f %.3f%n",
                            bin / 10.0, (bin + 1) / 10.0, in.size(), said, right);
                }
            }
            System.out.printf("  expected calibration error %.4f%n", error);
        }
    }
}
