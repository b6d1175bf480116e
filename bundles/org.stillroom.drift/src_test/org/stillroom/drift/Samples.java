package org.stillroom.drift;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.Confidence;
import org.stillroom.model.reading.Ingredient;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Reference;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Source;
import org.stillroom.model.source.Witness;
import org.stillroom.model.spec.Concept;
import org.stillroom.model.spec.Role;
import org.stillroom.model.spec.Spec;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/** Invented versions for tests, each in a source of its own. */
final class Samples {

    private Samples() {}

    /** A line: words as printed, quantity, measure, family, role, volume. */
    static SpecLine line(
            String words, String quantity, String measure, String family, Role role, Estimate ml) {
        return line(words, quantity, measure, family, role, Optional.of(ml), LineKind.MEASURED);
    }

    /** A line that may have no volume. */
    static SpecLine line(
            String words,
            String quantity,
            String measure,
            String family,
            Role role,
            Optional<Estimate> ml,
            LineKind kind) {
        Optional<Rational> number = Rational.parse(quantity);
        Amount amount = number.map(Amount::of).orElse(Amount.UNSTATED);
        Ingredient ingredient = new Ingredient(family, Span.of(0, 0), List.of(family), List.of());
        ReadingLine line =
                new ReadingLine(
                        words,
                        Span.of(0, words.length()),
                        kind,
                        amount,
                        measure,
                        Optional.empty(),
                        Optional.of(ingredient),
                        number.map(n -> Span.of(0, 1)),
                        Confidence.of(1),
                        List.of());
        return new SpecLine(
                line,
                new Concept(family, family, family, role, true),
                ml,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Explanation.of("a test"));
    }

    /** A version; where a line's words stand in the body, number, measure and ingredient are placed. */
    static Version version(
            String id, String date, String author, String title, String body, SpecLine... lines) {
        return version(id, date, author, title, body, Optional.empty(), lines);
    }

    /** A version that may send the reader to another. */
    static Version version(
            String id,
            String date,
            String author,
            String title,
            String body,
            Optional<Reference> reference,
            SpecLine... lines) {
        Bibliography titled = Bibliography.titled(id);
        Bibliography bibliography =
                new Bibliography(
                        titled.title(),
                        Optional.of(author),
                        titled.edition(),
                        titled.place(),
                        UncertainDate.parse(date),
                        titled.printingDate(),
                        titled.language(),
                        titled.trade(),
                        titled.rights(),
                        titled.scan(),
                        titled.transcriber(),
                        titled.notes());
        SourceText text = SourceText.of(title + "\n" + body);
        Source source = new Source(id, bibliography, text, List.of(), "");
        int start = title.length() + 1;
        Span own = Span.of(start, text.length());
        Witness witness =
                new Witness(
                        id,
                        1,
                        Optional.empty(),
                        title,
                        Span.of(0, title.length()),
                        text.span(),
                        own,
                        Optional.empty());
        List<SpecLine> placed = new ArrayList<>();
        for (SpecLine line : lines) {
            placed.add(place(line, body, start));
        }
        Reading reading =
                new Reading(
                        witness,
                        Reading.Genre.RECIPE,
                        placed.stream().map(SpecLine::line).toList(),
                        List.of(),
                        List.of(),
                        List.of(),
                        Optional.empty(),
                        reference,
                        Optional.empty(),
                        List.of(),
                        Confidence.of(1));
        return new Version(
                source,
                new Spec(
                        reading,
                        placed,
                        "metric",
                        "a test",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of()));
    }

    private static SpecLine place(SpecLine spec, String body, int start) {
        ReadingLine line = spec.line();
        int at = body.toLowerCase(Locale.ROOT).indexOf(line.text().toLowerCase(Locale.ROOT));
        if (at < 0) {
            return spec;
        }
        int name = line.text().lastIndexOf(' ') + 1;
        Span whole = Span.of(start + at, start + at + line.text().length());
        Span named = Span.of(whole.start() + name, whole.end());
        Ingredient ingredient = new Ingredient(line.ingredientName(), named, List.of(), List.of());
        Optional<Span> amount =
                line.amountSpan()
                        .filter(s -> name > 0)
                        .map(s -> Span.of(whole.start(), named.start() - 1));
        ReadingLine moved =
                new ReadingLine(
                        line.text(),
                        whole,
                        line.kind(),
                        line.amount(),
                        line.measure(),
                        line.size(),
                        Optional.of(ingredient),
                        amount,
                        line.confidence(),
                        List.of());
        return new SpecLine(
                moved,
                spec.ingredient(),
                spec.millilitres(),
                spec.grams(),
                spec.share(),
                List.of(),
                spec.why());
    }
}
