package org.stillroom.reading.anchor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.reading.Doubt;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Step;
import org.stillroom.model.reading.Vessel;
import org.stillroom.model.text.Span;

/** Carries out that words name a vessel or a step where they were read as something else. */
final class PartCorrection {

    private PartCorrection() {}

    /** Returns the reading corrected, where the correction is of this sort. */
    static Optional<Reading> corrected(Reading reading, Assertion correction, Span span) {
        Optional<String> word = correction.value("word").map(String::strip);
        return switch (correction.value("part").orElse("")) {
            case "vessel" ->
                    Optional.of(
                            with(
                                    reading,
                                    span,
                                    Optional.of(vessel(word.orElse(""), span, correction)),
                                    Optional.empty()));
            case "step" ->
                    Optional.of(
                            with(
                                    reading,
                                    span,
                                    Optional.empty(),
                                    Optional.of(new Step(word.orElse(""), span, List.of(), ""))));
            default -> Optional.empty();
        };
    }

    private static Vessel vessel(String word, Span span, Assertion correction) {
        boolean mixing = correction.value("use").filter("mixing"::equals).isPresent();
        return new Vessel(word, span, mixing ? Vessel.Use.MIXING : Vessel.Use.SERVING);
    }

    private static Reading with(
            Reading r, Span span, Optional<Vessel> vessel, Optional<Step> step) {
        List<ReadingLine> lines = r.lines().stream().filter(l -> !isAbout(l, span)).toList();
        Reading kept = Readings.with(r, lines, span);
        List<Vessel> vessels = new ArrayList<>(kept.vessels());
        vessels.removeIf(v -> v.span().overlaps(span));
        vessel.ifPresent(vessels::add);
        vessels.sort(Comparator.comparing(Vessel::span));
        List<Step> steps = new ArrayList<>(kept.steps());
        steps.removeIf(s -> s.span().overlaps(span));
        step.ifPresent(steps::add);
        steps.sort(Comparator.comparing(Step::span));
        List<Doubt> doubts = kept.doubts();
        return Readings.with(kept, lines, steps, vessels, doubts);
    }

    /** A line goes where at least half of it is these words. */
    private static boolean isAbout(ReadingLine line, Span span) {
        int common =
                Math.min(line.span().end(), span.end())
                        - Math.max(line.span().start(), span.start());
        return 2 * common >= line.span().length() && common > 0;
    }
}
