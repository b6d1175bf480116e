package org.stillroom.inquiry;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.ingredients.ThesaurusEdit;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.Anchor;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;
import org.stillroom.reading.anchor.WordCorrection;
import org.stillroom.reading.spec.SystemDecisions;

/**
 * Makes a decision of words: finds the place that is meant, refuses what could never be carried out,
 * and tells what became of it.
 */
public final class Deciding {

    /** The kinds of decisions by the words that a user gives, with the one that the journal has. */
    private static final SortedMap<String, String> KINDS =
            new TreeMap<>(
                    Map.of(
                            "system",
                            SystemDecisions.KIND,
                            "sense",
                            ThesaurusEdit.ASSERTION_KIND,
                            "words",
                            WordCorrection.KIND,
                            "line",
                            "line",
                            "cut",
                            "cut",
                            "drink",
                            "drink"));

    private final StudyDesk desk;

    /** Makes decisions at a desk. */
    public Deciding(StudyDesk desk) {
        this.desk = desk;
    }

    /**
     * A decision that was made.
     *
     * @param decision the decision
     * @param problems what the library has to complain of since
     */
    public record Done(Assertion decision, List<Problem> problems) {

        /** Keeps the problems unchangeable. */
        public Done {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Decides what is wished.
     *
     * @throws InquiryException where it could not be carried out or written
     */
    public Done decide(Wish wish, Progress progress) {
        String kind = kind(wish.kind());
        Study before = desk.study(progress);
        Optional<Source> source = wish.source().map(id -> source(before, id));
        Optional<Anchor> anchor = source.flatMap(s -> anchor(s, wish));
        check(kind, wish, source, anchor, before.knowledge());
        Set<Problem> known = new HashSet<>(before.problems());
        Assertion decision =
                desk.decide(kind, source.map(Source::id).orElse(""), anchor, wish.values());
        List<Problem> since = new ArrayList<>(desk.study(progress).problems());
        since.removeIf(known::contains);
        return new Done(decision, since);
    }

    private static String kind(String words) {
        String wanted = words.strip().toLowerCase(Locale.ROOT);
        String kind = KINDS.get(wanted);
        if (kind == null && KINDS.containsValue(wanted)) {
            kind = wanted;
        }
        if (kind == null) {
            throw new InquiryException(
                    "Nothing of the kind “" + words + "” can be decided.",
                    "Perhaps “"
                            + nearest(wanted, KINDS.keySet())
                            + "” is meant; it may be "
                            + String.join(", ", KINDS.keySet())
                            + ".");
        }
        return kind;
    }

    private static String nearest(String word, Set<String> known) {
        JaroWinklerSimilarity alike = new JaroWinklerSimilarity();
        return known.stream()
                .max(java.util.Comparator.comparingDouble((String k) -> alike.apply(word, k)))
                .orElse("");
    }

    private static Source source(Study study, String id) {
        Set<String> ids = new java.util.TreeSet<>();
        study.sources().forEach(s -> ids.add(s.id()));
        return study.book(id)
                .map(BookStudy::source)
                .orElseThrow(
                        () ->
                                new InquiryException(
                                        "There is no source “" + id + "” in the library.",
                                        ids.isEmpty()
                                                ? "Put its file into sources/."
                                                : "The nearest is “" + nearest(id, ids) + "”."));
    }

    private static Optional<Anchor> anchor(Source source, Wish wish) {
        SourceText text = source.text();
        if (wish.line().isPresent()
                && (wish.line().getAsInt() < 1 || wish.line().getAsInt() > text.lineCount())) {
            throw new InquiryException(
                    source.id() + " has no line " + wish.line().getAsInt() + ".",
                    "Give a line from 1 to " + text.lineCount() + ".");
        }
        Optional<Span> line =
                wish.line().isPresent()
                        ? Optional.of(text.line(wish.line().getAsInt()))
                        : Optional.empty();
        if (wish.words().isEmpty()) {
            return line.map(l -> Anchor.of(text, stripped(text, l)));
        }
        String words = wish.words().get();
        List<Span> places = new ArrayList<>();
        String all = text.toString();
        for (int at = all.indexOf(words); at >= 0; at = all.indexOf(words, at + 1)) {
            Span span = new Span(text.toPlace(at), text.toPlace(at + words.length()));
            if (line.isEmpty() || line.get().overlaps(span)) {
                places.add(span);
            }
        }
        if (places.size() != 1) {
            String lines =
                    places.stream()
                            .limit(6)
                            .map(p -> Integer.toString(text.lineAt(p.start())))
                            .reduce((a, b) -> a + ", " + b)
                            .orElse("");
            throw new InquiryException(
                    places.isEmpty()
                            ? "The words “" + words + "” do not stand in " + source.id() + "."
                            : "The words stand " + places.size() + " times in " + source.id() + ".",
                    places.isEmpty()
                            ? "Give them letter by letter as they are printed there."
                            : "Say which with the number of their line: " + lines + ".");
        }
        return Optional.of(Anchor.of(text, places.get(0)));
    }

    private static Span stripped(SourceText text, Span line) {
        String words = text.slice(line);
        int before = words.length() - words.stripLeading().length();
        String bare = words.strip();
        int start = line.start() + words.codePointCount(0, before);
        return new Span(start, start + bare.codePointCount(0, bare.length()));
    }

    private static void check(
            String kind,
            Wish wish,
            Optional<Source> source,
            Optional<Anchor> anchor,
            Knowledge knowledge) {
        switch (kind) {
            case SystemDecisions.KIND -> checkSystem(wish, knowledge);
            case ThesaurusEdit.ASSERTION_KIND -> checkSense(wish, knowledge.thesaurus());
            case "line", "cut", WordCorrection.KIND -> {
                if (source.isEmpty() || anchor.isEmpty()) {
                    throw new InquiryException(
                            "A decision about "
                                    + (kind.equals(WordCorrection.KIND) ? kind : "a " + kind)
                                    + " needs the words that it is about.",
                            "Name the source, and its words or the number of their line.");
                }
                checkValues(kind, wish);
            }
            default -> checkValues(kind, wish);
        }
    }

    private static void checkSystem(Wish wish, Knowledge knowledge) {
        String words = wish.values().getOrDefault(SystemDecisions.KIND, "");
        if (SystemDecisions.find(knowledge.measures(), words).isEmpty()) {
            throw new InquiryException(
                    "No system of measures is called “" + words + "”.",
                    SystemDecisions.nearest(knowledge.measures(), words));
        }
    }

    private static void checkSense(Wish wish, Thesaurus thesaurus) {
        Optional<ThesaurusEdit> edit = ThesaurusEdit.fromValues(wish.values());
        if (edit.isEmpty()) {
            throw new InquiryException(
                    "These words make no decision about a sense: " + wish.values() + ".",
                    "It may be add-sense id= label= role=, add-label sense= label=, remove-label"
                            + " sense= label=, merge from= into=, or split sense= id= label= labels=.");
        }
        Thesaurus.Loaded tried = thesaurus.apply(List.of(edit.get()));
        if (!tried.problems().isEmpty()) {
            Problem problem = tried.problems().getFirst();
            throw new InquiryException(
                    problem.reason(), "“thesaurus NAME” shows senses with their ids and names.");
        }
    }

    private static void checkValues(String kind, Wish wish) {
        Set<String> known =
                switch (kind) {
                    case "line" ->
                            Set.of(
                                    "kind",
                                    "quantity",
                                    "quantityMax",
                                    "measure",
                                    "size",
                                    "ingredient",
                                    "sense",
                                    "action");
                    case "cut" -> Set.of("action", "title");
                    case WordCorrection.KIND -> Set.of(WordCorrection.READS);
                    default -> Set.of("action", "a", "b", "version", "name");
                };
        if (wish.values().isEmpty()) {
            throw new InquiryException(
                    "Nothing was decided about the " + kind + ".",
                    "Give values such as "
                            + switch (kind) {
                                case "line" -> "measure=wineglass";
                                case WordCorrection.KIND -> "reads=syrup";
                                default -> "action=split";
                            }
                            + ".");
        }
        for (String name : wish.values().keySet()) {
            if (!known.contains(name)) {
                throw new InquiryException(
                        "A decision about a " + kind + " has no value “" + name + "”.",
                        "Perhaps “" + nearest(name, known) + "” is meant.");
            }
        }
    }
}
