package org.stillroom.reading.idiom;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/**
 * What a line was read as beside what a person made of it.
 *
 * @param line as it was read, if anything was read there
 * @param text the source’s words
 * @param words the printed words, folded, in order
 * @param correction what the person decided
 */
record Comparison(
        Optional<ReadingLine> line, SourceText text, List<String> words, Assertion correction) {

    static Comparison of(
            Optional<ReadingLine> line, SourceText text, Span span, Assertion correction) {
        Span whole = line.map(l -> l.span().hull(span)).orElse(span);
        return new Comparison(line, text, Printed.words(text.slice(whole)), correction);
    }

    /** Returns the habits that would have led to the same correction. */
    List<Idiom> idioms() {
        List<Idiom> found = new ArrayList<>();
        if (correction.value("action").filter("remove"::equals).isPresent()) {
            name().ifPresent(n -> found.add(idiom(Idiom.On.INGREDIENT, n, "action", "remove")));
            return found;
        }
        Optional<String> measure = changed("measure", line.map(ReadingLine::measure));
        Optional<String> ingredient = changed("ingredient", name()).map(Comparison::folded);
        Optional<Idiom> shortened = shortened(measure, ingredient);
        shortened.ifPresent(found::add);
        measure.flatMap(this::measure).ifPresent(found::add);
        boolean explained = shortened.isPresent() && isRest(ingredient);
        if (!explained) {
            ingredient.ifPresent(i -> found.addAll(names(i)));
        }
        if (ingredient.isEmpty()) {
            found.addAll(parts());
        }
        return found;
    }

    /** Tells whether a rule would change what was read here. */
    boolean concerns(Idiom idiom) {
        return switch (idiom.on()) {
            case MEASURE, INGREDIENT ->
                    line.filter(l -> Idioms.matches(idiom, l, text)).isPresent();
            case WORDS ->
                    words.contains(idiom.printed())
                            || words.contains(Printed.bare(idiom.printed()));
            case HEADING -> false;
        };
    }

    private Optional<String> name() {
        return line.map(ReadingLine::ingredientName).filter(n -> !n.isEmpty());
    }

    private static String folded(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    private Optional<String> changed(String value, Optional<String> before) {
        return correction
                .value(value)
                .filter(v -> !v.isBlank())
                .filter(v -> before.filter(folded(v)::equals).isEmpty());
    }

    private static Idiom idiom(Idiom.On on, String printed, String... values) {
        Map<String, String> all = new TreeMap<>();
        for (int i = 0; i < values.length; i += 2) {
            all.put(values[i], values[i + 1]);
        }
        return new Idiom(on, printed, new TreeMap<>(all));
    }

    /** A printed word of measure means another measure. */
    private Optional<Idiom> measure(String to) {
        return line.filter(l -> !l.measure().equals("unstated") && !l.measure().isEmpty())
                .flatMap(l -> Printed.measure(l, text))
                .map(
                        stem ->
                                idiom(
                                        Idiom.On.MEASURE,
                                        stem,
                                        "from",
                                        line.orElseThrow().measure(),
                                        "measure",
                                        to));
    }

    /** One printed word that the reader did not know stands for the measure or the ingredient. */
    private Optional<Idiom> shortened(Optional<String> measure, Optional<String> ingredient) {
        String name = ingredient.or(this::name).orElse("");
        List<String> rest = new ArrayList<>(words);
        Printed.words(name).forEach(w -> rest.removeIf(r -> Printed.bare(r).equals(w)));
        rest.removeIf(Printed::isNumber);
        boolean unread =
                line.filter(l -> Printed.measure(l, text).isPresent()).isEmpty()
                        || measure.isPresent() && isRest(ingredient);
        if (measure.isPresent() && unread && rest.size() == 1) {
            return Optional.of(idiom(Idiom.On.WORDS, rest.getFirst(), "reads", measure.get()));
        }
        return Optional.empty();
    }

    /** Tells whether the corrected name is what was read less some words before it. */
    private boolean isRest(Optional<String> ingredient) {
        return ingredient
                .filter(i -> name().filter(n -> n.endsWith(" " + i)).isPresent())
                .isPresent();
    }

    private List<Idiom> names(String ingredient) {
        List<Idiom> found = new ArrayList<>();
        List<String> now = Printed.words(ingredient);
        List<String> before = before();
        int at = onlyDifference(before, now);
        if (at >= 0 && before.size() > 1) {
            found.add(idiom(Idiom.On.WORDS, before.get(at), "reads", now.get(at)));
        }
        name().ifPresent(
                        n -> {
                            Map<String, String> values = new TreeMap<>();
                            values.put("ingredient", ingredient);
                            correction
                                    .value("sense")
                                    .filter(v -> !v.isBlank())
                                    .ifPresent(v -> values.put("sense", v));
                            found.add(new Idiom(Idiom.On.INGREDIENT, n, new TreeMap<>(values)));
                        });
        return found;
    }

    /** Returns the printed words of the ingredient, with their stops. */
    private List<String> before() {
        return line.flatMap(ReadingLine::ingredient)
                .map(i -> Printed.words(text.slice(new Span(i.span().start(), end(i.span())))))
                .orElse(List.of());
    }

    /** A stop after the name may belong to a shortened word. */
    private int end(Span span) {
        boolean stop =
                span.end() < text.length()
                        && text.slice(new Span(span.end(), span.end() + 1)).equals(".");
        return stop ? span.end() + 1 : span.end();
    }

    private static int onlyDifference(List<String> before, List<String> now) {
        if (before.size() != now.size()) {
            return -1;
        }
        int at = -1;
        for (int i = 0; i < now.size(); i++) {
            if (!Printed.bare(before.get(i)).equals(now.get(i))) {
                if (at >= 0) {
                    return -1;
                }
                at = i;
            }
        }
        return at;
    }

    /** The name is right, and means another sense or plays another part. */
    private List<Idiom> parts() {
        Map<String, String> values = new TreeMap<>();
        correction.value("sense").filter(v -> !v.isBlank()).ifPresent(v -> values.put("sense", v));
        correction
                .value("kind")
                .filter(v -> line.filter(l -> !l.kind().word().equals(v)).isPresent())
                .ifPresent(v -> values.put("kind", v));
        return values.isEmpty() || name().isEmpty()
                ? List.of()
                : List.of(
                        new Idiom(
                                Idiom.On.INGREDIENT, name().orElseThrow(), new TreeMap<>(values)));
    }
}
