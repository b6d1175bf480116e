package org.stillroom.reading.idiom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.stillroom.model.reading.Confidence;
import org.stillroom.model.reading.Ingredient;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.EditedText;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;
import org.stillroom.reading.anchor.Decided;
import org.stillroom.reading.anchor.Readings;
import org.stillroom.reading.cut.Cut;

/**
 * The rules that a person accepted for a book, carried out while it is read.
 *
 * @param all in the order in which they were accepted
 */
public record Idioms(List<Idiom> all) {

    /**
     * How sure a line is at least that a rule of its book was carried out on; lower than a line
     * that was corrected itself, because nobody looked at it. Our own figure.
     */
    private static final double BY_RULE = 0.95;

    /** Keeps the list unchangeable. */
    public Idioms {
        all = List.copyOf(all);
    }

    /** Returns the rules among the decisions about a book. */
    public static Idioms of(Decided decided) {
        return new Idioms(
                decided.ofKind(Idiom.KIND).stream().flatMap(a -> Idiom.of(a).stream()).toList());
    }

    private Stream<Idiom> on(Idiom.On on) {
        return all.stream().filter(i -> i.on() == on);
    }

    /** Returns a cut that goes by the book’s way of printing headings. */
    public Cut cut(Cut cut, Source source) {
        Cut result = cut;
        for (Idiom idiom : on(Idiom.On.HEADING).toList()) {
            result = new HeadingHabit(idiom).apply(result, source);
        }
        return result;
    }

    /** Returns the edits of a text that spell out, for the reader, words that stand for others. */
    public List<EditedText.Edit> respellings(SourceText plain) {
        List<EditedText.Edit> edits = new ArrayList<>();
        on(Idiom.On.WORDS).forEach(i -> edits.addAll(edits(plain, i)));
        edits.sort(Comparator.comparing(EditedText.Edit::span));
        List<EditedText.Edit> apart = new ArrayList<>();
        for (EditedText.Edit edit : edits) {
            boolean free = apart.isEmpty() || !apart.getLast().span().overlaps(edit.span());
            if (free) {
                apart.add(edit);
            }
        }
        return apart;
    }

    private static List<EditedText.Edit> edits(SourceText plain, Idiom idiom) {
        Matcher m = pattern(idiom.printed()).matcher(plain.toString());
        List<EditedText.Edit> edits = new ArrayList<>();
        while (m.find()) {
            Span span = new Span(plain.toPlace(m.start()), plain.toPlace(m.end()));
            edits.add(new EditedText.Edit(span, idiom.value("reads")));
        }
        return edits;
    }

    /** Whole words alone; blanks in them may be line ends. */
    private static Pattern pattern(String printed) {
        List<String> words = Stream.of(printed.strip().split("\\s+")).map(Pattern::quote).toList();
        String end = printed.endsWith(".") ? "" : "(?![\\p{L}\\p{N}])";
        return Pattern.compile(
                "(?<![\\p{L}\\p{N}])" + String.join("\\s+", words) + end,
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** Returns a reading with the rules about measures and ingredients carried out. */
    public Reading lines(Reading reading, SourceText text) {
        List<Idiom> rules = Stream.concat(on(Idiom.On.MEASURE), on(Idiom.On.INGREDIENT)).toList();
        if (rules.isEmpty()) {
            return reading;
        }
        Reading changed = Readings.mapped(reading, l -> line(rules, l, text));
        List<Span> gone =
                changed.lines().stream()
                        .filter(l -> isNone(rules, l))
                        .map(ReadingLine::span)
                        .toList();
        Reading result = changed;
        for (Span span : gone) {
            result = Readings.without(result, span);
        }
        return Readings.settled(result, reading);
    }

    private static ReadingLine line(List<Idiom> rules, ReadingLine line, SourceText text) {
        ReadingLine result = line;
        for (Idiom rule : rules) {
            if (matches(rule, result, text)) {
                result = applied(rule, result);
            }
        }
        return result;
    }

    static boolean matches(Idiom rule, ReadingLine line, SourceText text) {
        if (rule.on() == Idiom.On.MEASURE) {
            return line.measure().equals(rule.value("from"))
                    && Printed.measure(line, text).filter(rule.printed()::equals).isPresent();
        }
        return line.ingredientName().equals(rule.printed());
    }

    private static boolean isNone(List<Idiom> rules, ReadingLine line) {
        return rules.stream()
                .anyMatch(
                        r ->
                                r.on() == Idiom.On.INGREDIENT
                                        && r.value("action").equals("remove")
                                        && line.ingredientName().equals(r.printed()));
    }

    private static ReadingLine applied(Idiom rule, ReadingLine line) {
        Optional<String> measure = Optional.of(rule.value("measure")).filter(m -> !m.isEmpty());
        Optional<LineKind> kind =
                Stream.of(LineKind.values())
                        .filter(k -> k.word().equals(rule.value("kind")))
                        .findFirst();
        double sure = Math.max(BY_RULE, line.confidence().probability());
        return new ReadingLine(
                line.text(),
                line.span(),
                kind.orElse(line.kind()),
                line.amount(),
                measure.orElse(line.measure()),
                line.size(),
                line.ingredient().map(i -> named(rule, i)),
                line.amountSpan(),
                Confidence.of(sure),
                List.of());
    }

    private static Ingredient named(Idiom rule, Ingredient i) {
        String name = rule.value("ingredient").isEmpty() ? i.name() : rule.value("ingredient");
        List<String> kept = name.equals(i.name()) ? i.senses() : List.of();
        List<String> senses = rule.value("sense").isEmpty() ? kept : List.of(rule.value("sense"));
        return new Ingredient(name, i.span(), senses, i.preparations());
    }
}
