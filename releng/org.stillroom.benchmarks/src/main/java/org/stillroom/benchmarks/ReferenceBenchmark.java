package org.stillroom.benchmarks;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.Reference;
import org.stillroom.model.reading.Reference.Edit;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;
import org.stillroom.model.source.Trade;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.Folding;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;
import org.stillroom.reading.grammar.RecipeReader;
import org.stillroom.reading.reference.References;

/**
 * Follows the references of the reading truth and prints how many lead to the right recipe.
 *
 * <p>A reference is right where its first step is; edits are compared by what is done, to what and
 * by what, as sets of words, as the truth’s description says. Arguments: the file; then
 * {@code --mistakes} to list those of half A, with {@code --all} those of all but the sealed half.
 */
public final class ReferenceBenchmark {

    private static final Pattern NUMBER = Pattern.compile("^(?:No\\. ?)?(\\d+|[A-Z])[.)] ?");

    private ReferenceBenchmark() {}

    /** Counts of one half: right, wrong, missed. */
    static final class Tally {
        int right;
        int wrong;
        int missed;

        void print(String name) {
            double precision = right / (double) Math.max(1, right + wrong);
            double recall = right / (double) Math.max(1, right + missed);
            System.out.printf(
                    "  %-12s right %4d  wrong %4d  missed %4d  precision %.3f  recall %.3f%n",
                    name, right, wrong, missed, precision, recall);
        }
    }

    /** A recipe of a page with what was read of all of them. */
    record Case(JsonNode truth, List<Witness> witnesses, Reading subject) {

        Optional<String> base() {
            return subject.reference()
                    .filter(Reference::isResolved)
                    .map(r -> r.chain().get(0))
                    .flatMap(
                            id ->
                                    witnesses.stream()
                                            .filter(w -> w.id().equals(id))
                                            .map(Witness::ordinal)
                                            .findFirst())
                    .map(n -> truth.get("page").get(n - 1).get("title").asText());
        }

        Optional<String> wanted() {
            JsonNode base = truth.get("truth").get("base");
            return base.isNull() ? Optional.empty() : Optional.of(base.asText());
        }
    }

    /** Runs the benchmark. */
    public static void main(String[] args) throws IOException {
        Locale.setDefault(Locale.ROOT);
        RecipeReader reader = RecipeReader.standard();
        ObjectMapper json = new ObjectMapper();
        Map<String, Tally[]> halves = new TreeMap<>();
        boolean show = List.of(args).contains("--mistakes");
        boolean all = List.of(args).contains("--all");
        for (String row : rows(args)) {
            Case read = read(reader, json.readTree(row));
            String half = read.truth().get("half").asText();
            Tally[] tallies =
                    halves.computeIfAbsent(half, h -> new Tally[] {new Tally(), new Tally()});
            boolean right = judge(read, tallies[0], tallies[1]);
            if (show && !right && (half.equals("A") || all && !half.equals(Truth.SEALED))) {
                tell(read);
            }
        }
        halves.forEach(
                (half, tallies) -> {
                    System.out.println("Half " + half);
                    tallies[0].print("references");
                    tallies[1].print("edits");
                });
    }

    /** Returns the rows of a file that was named, else those of all files of the truth. */
    private static List<String> rows(String[] args) throws IOException {
        String folder = "releng/truth/reading/";
        return Truth.rows(
                args,
                folder + "references.jsonl",
                folder + "holdout-references.jsonl",
                folder + "unseen-references.jsonl",
                folder + "sealed-references.jsonl");
    }

    private static boolean judge(Case read, Tally bases, Tally edits) {
        Optional<String> base = read.base();
        Optional<String> wanted = read.wanted();
        boolean same = base.equals(wanted);
        if (same) {
            bases.right += base.isPresent() ? 1 : 0;
        } else {
            bases.wrong += base.isPresent() ? 1 : 0;
            bases.missed += wanted.isPresent() ? 1 : 0;
        }
        TreeSet<String> got = got(read.subject());
        TreeSet<String> want = want(read.truth());
        TreeSet<String> both = new TreeSet<>(got);
        both.retainAll(want);
        edits.right += both.size();
        edits.wrong += got.size() - both.size();
        edits.missed += want.size() - both.size();
        return same && got.equals(want);
    }

    private static TreeSet<String> got(Reading reading) {
        TreeSet<String> all = new TreeSet<>();
        for (Edit edit : reading.reference().map(Reference::edits).orElse(List.of())) {
            all.add(
                    switch (edit) {
                        case Edit.Replace x -> "replace " + words(x.from()) + words(x.to());
                        case Edit.Add x -> "add " + words(x.line().ingredientName());
                        case Edit.Remove x -> "remove " + words(x.ingredient());
                        case Edit.Change x -> "amount " + words(x.ingredient());
                    });
        }
        return all;
    }

    private static TreeSet<String> want(JsonNode truth) {
        TreeSet<String> all = new TreeSet<>();
        for (JsonNode edit : truth.get("truth").get("edits")) {
            String op = edit.get("op").asText();
            String from = edit.path("from").isNull() ? "" : edit.path("from").asText();
            String to = edit.path("to").isNull() ? "" : edit.path("to").asText();
            all.add(
                    switch (op) {
                        case "replace" -> "replace " + words(from) + words(to);
                        case "add" -> "add " + words(to);
                        default -> op + " " + words(from);
                    });
        }
        return all;
    }

    private static TreeSet<String> words(String name) {
        return new TreeSet<>(
                LineBenchmark.words(name).stream().filter(w -> !w.equals("of")).toList());
    }

    private static Case read(RecipeReader reader, JsonNode truth) {
        StringBuilder page = new StringBuilder();
        List<int[]> places = new ArrayList<>();
        for (JsonNode recipe : truth.get("page")) {
            int start = page.length();
            page.append(recipe.get("title").asText()).append('\n');
            int body = page.length();
            page.append(recipe.get("text").asText());
            places.add(new int[] {start, body, page.length()});
            page.append("\n\n");
        }
        SourceText text = SourceText.of(page.toString());
        Circumstances where = where(truth);
        List<Reading> readings = new ArrayList<>();
        List<Witness> witnesses = new ArrayList<>();
        int subject = 0;
        for (int i = 0; i < places.size(); i++) {
            String title = truth.get("page").get(i).get("title").asText();
            subject = title.equals(truth.get("subject").asText()) ? i : subject;
            witnesses.add(witness(text, places.get(i), i + 1, title));
            readings.add(reader.read(text, witnesses.get(i), where));
        }
        List<Reading> linked =
                References.resolve(readings, text, phrase -> reader.readLine(phrase, where));
        return new Case(truth, witnesses, linked.get(subject));
    }

    private static Witness witness(SourceText text, int[] place, int ordinal, String printed) {
        Matcher number = NUMBER.matcher(printed);
        boolean numbered = number.find();
        String title = numbered ? printed.substring(number.end()) : printed;
        int start = text.toPlace(place[0]);
        int body = text.toPlace(place[1]);
        int end = text.toPlace(place[2]);
        return new Witness(
                "truth",
                ordinal,
                numbered ? Optional.of(number.group(1)) : Optional.empty(),
                title,
                new Span(start, body - 1),
                new Span(start, end),
                new Span(body, end),
                Optional.empty());
    }

    private static Circumstances where(JsonNode truth) {
        return new Circumstances(
                Optional.of(Place.of(truth.get("place").asText())),
                UncertainDate.parse(truth.get("date").asText()),
                Trade.of(truth.get("trade").asText()),
                Optional.empty());
    }

    private static void tell(Case read) {
        System.out.println(read.truth().get("id").asText());
        read.truth()
                .get("page")
                .forEach(
                        p ->
                                System.out.println(
                                        "    ["
                                                + p.get("title").asText()
                                                + "] "
                                                + Folding.fold(p.get("text").asText()).folded()));
        System.out.println("  subject " + read.truth().get("subject").asText());
        System.out.println("  base " + read.wanted() + ", read " + read.base());
        System.out.println("  edits " + want(read.truth()) + ", read " + got(read.subject()));
    }
}
