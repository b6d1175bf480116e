package org.stillroom.benchmarks;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Step;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;
import org.stillroom.model.source.Trade;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.Folding;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;
import org.stillroom.reading.grammar.RecipeReader;

/**
 * Reads the prose recipes of the reading truth and prints how much is right, by half.
 *
 * <p>Ingredients are matched one to one by name, best overlap first; a quantity counts as linked
 * where its ingredient is matched and number and measure agree. Lines of kind alternative are left
 * out on both sides, as the truth’s description says. Arguments: the file; then {@code --mistakes N}
 * for the N recipes of half A with the most errors, {@code --all} for both halves.
 */
public final class ProseBenchmark {

    private ProseBenchmark() {}

    /** Counts of one facet. */
    static final class Tally {
        int read;
        int truth;
        int both;

        void add(int readCount, int truthCount, int bothCount) {
            read += readCount;
            truth += truthCount;
            both += bothCount;
        }

        double f1() {
            return read + truth == 0 ? 1 : 2.0 * both / (read + truth);
        }
    }

    /** One recipe with what was wrong. */
    record Judged(JsonNode truth, Reading reading, List<String> errors) {}

    /** Runs the benchmark. */
    public static void main(String[] args) throws IOException {
        Locale.setDefault(Locale.ROOT);
        RecipeReader reader = RecipeReader.standard();
        ObjectMapper json = new ObjectMapper();
        Map<String, Map<String, Tally>> tallies = new TreeMap<>();
        List<Judged> judged = new ArrayList<>();
        for (String line :
                Truth.rows(
                        args,
                        "releng/truth/reading/prose.jsonl",
                        "releng/truth/reading/sealed-prose.jsonl")) {
            JsonNode truth = json.readTree(line);
            Reading reading = read(reader, truth);
            Map<String, Tally> half =
                    tallies.computeIfAbsent(truth.get("half").asText(), h -> new TreeMap<>());
            judged.add(new Judged(truth, reading, judge(truth, reading, half)));
        }
        tallies.forEach(ProseBenchmark::print);
        List<String> options = List.of(args);
        int count =
                options.contains("--mistakes")
                        ? Integer.parseInt(options.get(options.indexOf("--mistakes") + 1))
                        : 20;
        mistakes(judged, count, options.contains("--all"));
    }

    private static Reading read(RecipeReader reader, JsonNode truth) {
        SourceText text = SourceText.of(truth.get("text").asText());
        String title = truth.get("title").asText();
        Witness witness =
                new Witness(
                        "truth",
                        1,
                        Optional.empty(),
                        title,
                        new Span(0, 0),
                        text.span(),
                        text.span(),
                        Optional.empty());
        Circumstances where =
                new Circumstances(
                        Optional.of(Place.of(truth.get("place").asText())),
                        UncertainDate.parse(truth.get("date").asText()),
                        Trade.of(truth.get("trade").asText()),
                        Optional.empty());
        return reader.read(text, witness, where);
    }

    private static List<String> judge(JsonNode truth, Reading reading, Map<String, Tally> tallies) {
        List<String> errors = new ArrayList<>();
        lines(truth, reading, tallies, errors);
        steps(truth, reading, tallies, errors);
        vessel(truth, reading, tallies, errors);
        garnish(truth, reading, tallies, errors);
        ice(truth, reading, tallies, errors);
        String serves = TruthLine.text(truth, "serves");
        String read = reading.serves().map(s -> s.low().toString()).orElse("");
        single("serves", read, serves, read.equals(serves), tallies, errors);
        return errors;
    }

    private static Tally tally(Map<String, Tally> tallies, String facet) {
        return tallies.computeIfAbsent(facet, f -> new Tally());
    }

    private static void single(
            String facet,
            String read,
            String truth,
            boolean same,
            Map<String, Tally> tallies,
            List<String> errors) {
        int has = read.isEmpty() ? 0 : 1;
        int should = truth.isEmpty() ? 0 : 1;
        tally(tallies, facet).add(has, should, has == 1 && should == 1 && same ? 1 : 0);
        if (!same && has + should > 0) {
            errors.add(facet + ": true “" + truth + "”, read “" + read + "”");
        }
    }

    private static void lines(
            JsonNode truth, Reading reading, Map<String, Tally> tallies, List<String> errors) {
        List<TruthLine> read = reading.lines().stream().map(TruthLine::of).toList();
        read = read.stream().filter(l -> !l.isAlternative()).toList();
        List<TruthLine> lines =
                TruthLine.ofProse(truth).stream().filter(l -> !l.isAlternative()).toList();
        List<LinePairs.Pair> pairs = LinePairs.of(read, lines);
        int linked = 0;
        int kinds = 0;
        for (LinePairs.Pair pair : pairs) {
            TruthLine r = read.get(pair.read());
            TruthLine t = lines.get(pair.truth());
            linked += differs("amount", t, t.amount(), r.amount(), errors) ? 0 : 1;
            kinds += differs("kind", t, t.kind(), r.kind(), errors) ? 0 : 1;
        }
        report(read, lines, pairs, errors);
        tally(tallies, "ingredients").add(read.size(), lines.size(), pairs.size());
        tally(tallies, "quantities").add(read.size(), lines.size(), linked);
        tally(tallies, "kinds of matched").add(pairs.size(), pairs.size(), kinds);
    }

    private static boolean differs(
            String what, TruthLine line, String truth, String read, List<String> errors) {
        if (truth.equals(read)) {
            return false;
        }
        errors.add(what + " of " + line.ingredient() + ": true " + truth + ", read " + read);
        return true;
    }

    private static void report(
            List<TruthLine> read,
            List<TruthLine> lines,
            List<LinePairs.Pair> pairs,
            List<String> errors) {
        for (int i = 0; i < lines.size(); i++) {
            int at = i;
            if (pairs.stream().noneMatch(p -> p.truth() == at)) {
                errors.add("missed " + lines.get(i).amount() + " " + lines.get(i).ingredient());
            }
        }
        for (int i = 0; i < read.size(); i++) {
            int at = i;
            if (pairs.stream().noneMatch(p -> p.read() == at)) {
                errors.add("invented " + read.get(i).amount() + " " + read.get(i).ingredient());
            }
        }
    }

    private static void steps(
            JsonNode truth, Reading reading, Map<String, Tally> tallies, List<String> errors) {
        List<String> read = reading.steps().stream().map(Step::verb).toList();
        List<String> should = new ArrayList<>();
        truth.get("steps").forEach(s -> should.add(Folding.foldWord(s.asText())));
        List<String> left = new ArrayList<>(read);
        int both = 0;
        for (String verb : should) {
            if (left.remove(verb)) {
                both++;
            }
        }
        tally(tallies, "steps").add(read.size(), should.size(), both);
        if (both < Math.max(read.size(), should.size())) {
            errors.add("steps: true " + should + ", read " + read);
        }
    }

    private static void vessel(
            JsonNode truth, Reading reading, Map<String, Tally> tallies, List<String> errors) {
        String read =
                reading.vessel()
                        .map(v -> v.word())
                        .filter(w -> !w.endsWith("shaker") && !w.endsWith("mixing glass"))
                        .orElse("");
        String should = TruthLine.text(truth, "vessel");
        single("vessel", read, should, head(read).equals(head(should)), tallies, errors);
    }

    static String head(String phrase) {
        List<String> words = LineBenchmark.words(phrase);
        String last = words.isEmpty() ? "" : words.get(words.size() - 1);
        String single = last.replaceAll("(?<=gl)asses$", "ass").replaceAll("(?<=[^s])s$", "");
        return single.equals("wineglass") ? "glass" : single;
    }

    private static void garnish(
            JsonNode truth, Reading reading, Map<String, Tally> tallies, List<String> errors) {
        List<String> read =
                reading.lines().stream()
                        .filter(l -> l.kind() == LineKind.GARNISH)
                        .map(ReadingLine::ingredientName)
                        .toList();
        List<String> should = new ArrayList<>();
        truth.get("garnish").forEach(g -> should.add(g.asText()));
        List<String> left = new ArrayList<>(read);
        int both = 0;
        for (String g : should) {
            Optional<String> match =
                    left.stream()
                            .filter(r -> LinePairs.overlap(r, g) >= LinePairs.ENOUGH)
                            .findFirst();
            if (match.isPresent()) {
                left.remove(match.get());
                both++;
            }
        }
        tally(tallies, "garnish").add(read.size(), should.size(), both);
        if (both < Math.max(read.size(), should.size())) {
            errors.add("garnish: true " + should + ", read " + read);
        }
    }

    private static void ice(
            JsonNode truth, Reading reading, Map<String, Tally> tallies, List<String> errors) {
        String should = TruthLine.text(truth, "ice");
        boolean inside = !should.isEmpty() && !should.equals("around") && !should.equals("without");
        boolean read = reading.lines().stream().anyMatch(l -> l.kind() == LineKind.ICE);
        tally(tallies, "ice").add(read ? 1 : 0, inside ? 1 : 0, read && inside ? 1 : 0);
        if (read != inside) {
            errors.add("ice: true “" + should + "”, read " + read);
        }
    }

    private static void print(String half, Map<String, Tally> tallies) {
        System.out.println("Half " + half);
        System.out.printf("  %-18s %6s %6s %6s %7s%n", "facet", "read", "truth", "both", "F1");
        tallies.forEach(
                (facet, t) ->
                        System.out.printf(
                                "  %-18s %6d %6d %6d %7.3f%n",
                                facet, t.read, t.truth, t.both, t.f1()));
        double macro =
                List.of("steps", "vessel", "ice", "garnish", "serves").stream()
                        .mapToDouble(f -> tally(tallies, f).f1())
                        .average()
                        .orElse(0);
        System.out.printf("  macro F1 of steps, vessel, ice, garnish, serves: %.3f%n", macro);
    }

    private static String half(Judged j) {
        return j.truth().get("half").asText();
    }

    private static void mistakes(List<Judged> judged, int count, boolean all) {
        System.out.println("Recipes with the most errors" + (all ? "" : ", half A"));
        judged.stream()
                .filter(j -> all || half(j).equals("A"))
                .filter(j -> !half(j).equals(Truth.SEALED))
                .filter(j -> !j.errors().isEmpty())
                .sorted(Comparator.comparingInt((Judged j) -> -j.errors().size()))
                .limit(count)
                .forEach(
                        j -> {
                            System.out.println(
                                    "  "
                                            + j.truth().get("id").asText()
                                            + " “"
                                            + j.truth().get("text").asText()
                                            + "”");
                            j.errors().forEach(e -> System.out.println("      " + e));
                        });
    }
}
