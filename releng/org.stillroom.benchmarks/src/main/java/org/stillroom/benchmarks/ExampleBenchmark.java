package org.stillroom.benchmarks;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.stillroom.inquiry.StudyDesk;
import org.stillroom.model.number.Rational;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Reference;
import org.stillroom.model.reading.Size;
import org.stillroom.model.reading.Step;
import org.stillroom.model.reading.Vessel;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.Folding;
import org.stillroom.reading.spec.SameAmounts;

/**
 * Reads the example library and prints how its lines agree with the truth.
 *
 * <p>{@code ExampleBenchmark [-v]}: with {@code -v} every difference is listed.
 */
public final class ExampleBenchmark {

    private final boolean verbose;
    private int recipes;
    private int found;
    private int titles;
    private int lines;
    private int paired;
    private int said;
    private int quantity;
    private int measure;
    private int kind;
    private int size;
    private int sureAndWrong;
    private int vessels;
    private int vesselsRight;
    private final double[] steps = new double[3];

    private ExampleBenchmark(boolean verbose) {
        this.verbose = verbose;
    }

    /** Runs the benchmark. */
    public static void main(String[] args) throws IOException {
        Path root = Path.of(System.getProperty("stillroom.root", "."));
        ExampleBenchmark benchmark = new ExampleBenchmark(List.of(args).contains("-v"));
        try (StudyDesk desk = new StudyDesk(Files.createTempDirectory("stillroom-caches"))) {
            desk.lay(root.resolve("corpus-example"));
            Map<String, Version> versions = new HashMap<>();
            desk.study(Progress.SILENT).versions().forEach(v -> versions.put(v.id(), v));
            ObjectMapper json = new ObjectMapper();
            Path file = root.resolve("releng/truth/example/lines.jsonl");
            for (String row : Files.readAllLines(file, StandardCharsets.UTF_8)) {
                JsonNode truth = json.readTree(row);
                benchmark.judge(
                        truth,
                        versions.get(
                                truth.get("file").asText() + "#" + truth.get("ordinal").asInt()));
            }
        }
        benchmark.print();
    }

    private void judge(JsonNode truth, Version version) {
        recipes++;
        lines += truth.get("lines").size();
        if (version == null) {
            return;
        }
        found++;
        String title = truth.get("title").asText();
        boolean titled = plain(title).equals(plain(version.witness().title()));
        titles += titled ? 1 : 0;
        if (!titled && verbose) {
            System.out.println("  title: " + title + " read " + version.witness().title());
        }
        List<ReadingLine> open = said(version.reading());
        said += open.size();
        for (JsonNode line : truth.get("lines")) {
            line(line, open, version.id());
        }
        vessel(truth, version);
        steps(truth, version);
    }

    /**
     * Returns what a recipe's own words name: its lines, amounts such as “half as much” worked out
     * as the truth does, and the ingredients that it puts into a recipe which it refers to.
     */
    private static List<ReadingLine> said(Reading reading) {
        List<ReadingLine> all = SameAmounts.workedOut(reading.allLines());
        List<ReadingLine> said =
                new ArrayList<>(all.subList(reading.inherited().size(), all.size()));
        Set<String> put = new TreeSet<>();
        for (Reference.Edit edit : reading.reference().map(Reference::edits).orElse(List.of())) {
            if (edit instanceof Reference.Edit.Replace replace) {
                put.add(replace.to());
            }
        }
        for (ReadingLine line : reading.inherited()) {
            if (put.contains(line.ingredientName())) {
                said.add(unmeasured(line));
            }
        }
        return said;
    }

    /** The amount of a replaced ingredient stands in the other recipe. */
    private static ReadingLine unmeasured(ReadingLine line) {
        return new ReadingLine(
                line.text(),
                line.span(),
                line.kind(),
                Amount.UNSTATED,
                "unstated",
                Optional.empty(),
                line.ingredient(),
                Optional.empty(),
                line.confidence(),
                List.of());
    }

    private void line(JsonNode truth, List<ReadingLine> open, String where) {
        Set<String> wanted = words(truth.get("i").asText(""));
        ReadingLine best = null;
        double most = 0.49;
        for (ReadingLine line : open) {
            double overlap = overlap(wanted, words(line.ingredientName()));
            if (overlap > most) {
                most = overlap;
                best = line;
            }
        }
        if (best == null) {
            tell(where, truth, "not found");
            return;
        }
        open.remove(best);
        paired++;
        boolean q = number(truth).equals(best.amount().quantity());
        boolean m = measure(text(truth, "m")).equals(measure(best.measure()));
        boolean k = text(truth, "k").equals(best.kind().word());
        quantity += q ? 1 : 0;
        measure += m ? 1 : 0;
        kind += k ? 1 : 0;
        size += text(truth, "size").equals(best.size().map(Size::word).orElse("")) ? 1 : 0;
        if (!(q && m)) {
            sureAndWrong += best.confidence().probability() >= 0.9 ? 1 : 0;
            tell(
                    where,
                    truth,
                    (best.confidence().probability() >= 0.9 ? "sure, and read " : "read ")
                            + best.amount().quantity().map(Rational::toString).orElse("–")
                            + " "
                            + best.measure());
        }
    }

    private static Optional<Rational> number(JsonNode truth) {
        return Rational.parse(text(truth, "q"));
    }

    /** This truth writes “liqueur-glass” and “spoonful” where the reader has “liqueur glass”. */
    private static String measure(String word) {
        return word.replace('-', ' ').replaceAll("ful$", "").replaceAll("^g$", "gramme");
    }

    private void tell(String where, JsonNode truth, String what) {
        if (verbose) {
            System.out.println("  " + where + " " + truth + ": " + what);
        }
    }

    private void vessel(JsonNode truth, Version version) {
        String wanted = text(truth, "vessel").replace('-', ' ');
        if (!wanted.isEmpty()) {
            vessels++;
            String got = version.reading().vessel().map(Vessel::word).orElse("");
            vesselsRight += head(got).equals(head(wanted)) ? 1 : 0;
            if (verbose && !head(got).equals(head(wanted))) {
                System.out.println(
                        "  vessel: "
                                + version.witness().title()
                                + ": true "
                                + wanted
                                + ", read "
                                + got);
            }
        }
    }

    /** Vessels agree when their last word does, as the description of the reading truth says. */
    private static String head(String vessel) {
        String last = vessel.substring(vessel.lastIndexOf(' ') + 1);
        return last.replaceAll("^wineglass", "glass").replaceAll("(?<=ss)es$|(?<!s)s$", "");
    }

    private void steps(JsonNode truth, Version version) {
        Set<String> wanted = new TreeSet<>();
        truth.get("steps").forEach(s -> wanted.add(s.asText()));
        Set<String> got = new TreeSet<>();
        version.reading().steps().stream().map(Step::verb).forEach(got::add);
        Set<String> both = new TreeSet<>(wanted);
        both.retainAll(got);
        steps[0] += both.size();
        steps[1] += got.size();
        steps[2] += wanted.size();
    }

    private static String text(JsonNode node, String field) {
        JsonNode value = node.path(field);
        return value.isMissingNode() || value.isNull() ? "" : value.asText();
    }

    private static String plain(String words) {
        return String.join(" ", words(words));
    }

    private static Set<String> words(String words) {
        Set<String> set = new TreeSet<>();
        for (String word : Folding.foldWord(words).split("[^\\p{L}\\p{N}]+")) {
            if (!word.isEmpty() && !Set.of("of", "the", "a").contains(word)) {
                set.add(
                        word.length() > 3 && word.endsWith("s")
                                ? word.substring(0, word.length() - 1)
                                : word);
            }
        }
        return set;
    }

    private static double overlap(Set<String> a, Set<String> b) {
        if (a.isEmpty() || b.isEmpty()) {
            return a.isEmpty() && b.isEmpty() ? 1 : 0;
        }
        Set<String> both = new TreeSet<>(a);
        both.retainAll(b);
        return 2.0 * both.size() / (a.size() + b.size());
    }

    private void print() {
        Figures.printShare("recipes found at their place", found, recipes);
        Figures.printShare("titles right", titles, recipes);
        double precision = (double) paired / Math.max(1, said);
        double recall = (double) paired / Math.max(1, lines);
        Figures.print("ingredient lines, precision", precision, "");
        Figures.print("ingredient lines, recall", recall, "");
        Figures.print("ingredient lines, F1", 2 * precision * recall / (precision + recall), "");
        Figures.printShare("quantity right, of lines found", quantity, paired);
        Figures.printShare("measure right, of lines found", measure, paired);
        Figures.printShare("kind right, of lines found", kind, paired);
        Figures.printShare("size right, of lines found", size, paired);
        Figures.printShare("sure and wrong, of lines found", sureAndWrong, paired);
        Figures.printShare("vessel right, where one is named", vesselsRight, vessels);
        System.out.printf(
                Locale.ROOT,
                "%-44s %14.3f%n",
                "steps, F1",
                2 * steps[0] / Math.max(1, steps[1] + steps[2]));
    }
}
