package org.stillroom.reading.anchor;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.Confidence;
import org.stillroom.model.reading.Ingredient;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Size;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.Span;

/**
 * Carries out corrections of lines: decisions of the kind {@code line}.
 *
 * <p>Their values are {@code kind}, {@code quantity}, {@code quantityMax}, {@code measure}, {@code
 * size}, {@code ingredient} and {@code sense}; an empty value takes the part away; {@code action}
 * with the value {@code remove} takes the line away, with {@code right} it says that the line is
 * read right. A correction of words that no line covers adds a line.
 *
 * <p>With {@code part} the words are no ingredient but a {@code vessel} or a {@code step}, called by
 * its {@code word}; {@code use} says what a vessel serves for.
 */
public final class LineCorrections {

    private static final String KIND = "line";

    private LineCorrections() {}

    /** Returns the readings with the corrections carried out. */
    public static List<Reading> apply(
            List<Reading> readings, Source source, Decided decided, List<Unplaced> unplaced) {
        List<Assertion> corrections = decided.ofKind(KIND);
        if (corrections.isEmpty()) {
            return readings;
        }
        List<Reading> corrected = new ArrayList<>(readings);
        for (Assertion correction : corrections) {
            decided.place(correction, unplaced)
                    .ifPresent(
                            span ->
                                    carryOut(
                                            corrected,
                                            source,
                                            decided,
                                            correction,
                                            span,
                                            unplaced));
        }
        return corrected;
    }

    private static void carryOut(
            List<Reading> readings,
            Source source,
            Decided decided,
            Assertion correction,
            Span span,
            List<Unplaced> unplaced) {
        int i = 0;
        while (i < readings.size() && !readings.get(i).witness().span().contains(span)) {
            i++;
        }
        if (i == readings.size()) {
            unplaced.add(
                    decided.refused(
                            correction,
                            span,
                            "The corrected words stand in no recipe.",
                            "Cut the page so that they belong to one."));
            return;
        }
        Optional<String> wrong = wrongNumber(correction);
        if (wrong.isPresent()) {
            unplaced.add(
                    decided.refused(
                            correction,
                            span,
                            "“" + wrong.get() + "” is not a number.",
                            "Write it as 2, 1/2 or 1 1/2."));
            return;
        }
        readings.set(i, corrected(readings.get(i), source, correction, span));
    }

    /** Returns a reading with one correction of words inside it carried out. */
    public static Reading corrected(
            Reading reading, Source source, Assertion correction, Span span) {
        Optional<Reading> part = PartCorrection.corrected(reading, correction, span);
        if (part.isPresent()) {
            return part.get();
        }
        List<ReadingLine> lines = lines(reading.lines(), source, correction, span);
        return Readings.with(reading, lines, span);
    }

    /** Returns the line of a reading that words are mostly about. */
    public static Optional<ReadingLine> lineAt(Reading reading, Span span) {
        int at = mostCovered(reading.lines(), span);
        return at < 0 ? Optional.empty() : Optional.of(reading.lines().get(at));
    }

    private static Optional<String> wrongNumber(Assertion correction) {
        return Stream.of("quantity", "quantityMax")
                .flatMap(name -> correction.value(name).stream())
                .filter(v -> !v.isBlank() && Rational.parse(v).isEmpty())
                .findFirst();
    }

    private static List<ReadingLine> lines(
            List<ReadingLine> lines, Source source, Assertion correction, Span span) {
        List<ReadingLine> changed = new ArrayList<>(lines);
        int at = mostCovered(lines, span);
        if (correction.value("action").filter("remove"::equals).isPresent()) {
            if (at >= 0) {
                changed.remove(at);
            }
        } else if (at >= 0) {
            changed.set(at, corrected(lines.get(at), source, correction, span));
        } else {
            ReadingLine blank = blank(source, span);
            int before = 0;
            while (before < lines.size() && lines.get(before).span().start() < span.start()) {
                before++;
            }
            changed.add(before, corrected(blank, source, correction, span));
        }
        return changed;
    }

    static int mostCovered(List<ReadingLine> lines, Span span) {
        int best = -1;
        int most = 0;
        for (int i = 0; i < lines.size(); i++) {
            Span line = lines.get(i).span();
            int common = Math.min(line.end(), span.end()) - Math.max(line.start(), span.start());
            if (common > most) {
                most = common;
                best = i;
            }
        }
        return best;
    }

    private static ReadingLine blank(Source source, Span span) {
        return new ReadingLine(
                source.text().slice(span),
                span,
                LineKind.MEASURED,
                Amount.UNSTATED,
                "unstated",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Confidence.of(1),
                List.of());
    }

    private static ReadingLine corrected(
            ReadingLine line, Source source, Assertion correction, Span span) {
        LineKind kind =
                correction
                        .value("kind")
                        .flatMap(
                                v ->
                                        Stream.of(LineKind.values())
                                                .filter(k -> k.word().equals(v))
                                                .findFirst())
                        .orElse(line.kind());
        Optional<Size> size = correction.value("size").map(Size::of).orElse(line.size());
        Span hull = line.span().hull(span);
        return new ReadingLine(
                source.text().slice(hull),
                hull,
                kind,
                amount(line.amount(), correction),
                correction.value("measure").filter(v -> !v.isBlank()).orElse(line.measure()),
                size,
                ingredient(line, correction, span),
                line.amountSpan(),
                Confidence.of(1),
                List.of());
    }

    private static Amount amount(Amount amount, Assertion correction) {
        if (correction.value("quantity").isEmpty() && correction.value("quantityMax").isEmpty()) {
            return amount;
        }
        Optional<Rational> low =
                correction.value("quantity").map(Rational::parse).orElse(amount.quantity());
        Optional<Rational> high =
                correction.value("quantityMax").map(Rational::parse).orElse(Optional.empty());
        if (low.isEmpty()) {
            return Amount.UNSTATED;
        }
        Amount.Kind kind =
                amount.kind() == Amount.Kind.SHARE ? Amount.Kind.SHARE : Amount.Kind.STATED;
        return new Amount(kind, low, high);
    }

    private static Optional<Ingredient> ingredient(
            ReadingLine line, Assertion correction, Span span) {
        List<String> senses =
                correction.value("sense").filter(v -> !v.isBlank()).map(List::of).orElse(List.of());
        Optional<String> name = correction.value("ingredient");
        if (name.isEmpty()) {
            return senses.isEmpty()
                    ? line.ingredient()
                    : line.ingredient()
                            .map(i -> new Ingredient(i.name(), i.span(), senses, i.preparations()));
        }
        if (name.get().isBlank()) {
            return Optional.empty();
        }
        String words = name.get().strip().toLowerCase(Locale.ROOT);
        Span at = line.ingredient().map(Ingredient::span).orElse(span);
        List<String> kept =
                line.ingredient()
                        .filter(i -> i.name().equals(words))
                        .map(Ingredient::senses)
                        .orElse(List.of());
        List<String> preparations =
                line.ingredient().map(Ingredient::preparations).orElse(List.of());
        return Optional.of(
                new Ingredient(words, at, senses.isEmpty() ? kept : senses, preparations));
    }
}
