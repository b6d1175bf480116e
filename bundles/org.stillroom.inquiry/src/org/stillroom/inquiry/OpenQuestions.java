package org.stillroom.inquiry;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.stillroom.ingredients.Label;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.reading.Doubt;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.spec.Spec;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.Span;
import org.stillroom.reading.idiom.Printed;

/** Asks of each recipe what is doubtful in it: lines, words that were not read, open measures. */
final class OpenQuestions {

    /** Readings that are surer than this are not listed: nobody would find a mistake in ten. */
    private static final double SURE = 0.9;

    /** A measure is open where the largest that it may be is so many times the smallest. */
    private static final double OPEN = 2;

    /** Less than so many millilitres at most is not asked about: dashes and drops. */
    private static final double LEAST_ML = 6;

    /** Less of a drink than this is not asked about for its measure alone. */
    private static final double LEAST_SHARE = 0.05;

    /** Nobody can say how large the author's lemons and lumps were. */
    private static final Set<String> COUNTED =
            Set.of(
                    "juice-of",
                    "whole",
                    "slice",
                    "piece",
                    "lump",
                    "part",
                    "leaf",
                    "bunch",
                    "sprig",
                    "stick",
                    "handful",
                    "pinch");

    private final Set<String> known;

    OpenQuestions(Thesaurus thesaurus) {
        known =
                thesaurus.senses().keySet().stream()
                        .flatMap(id -> thesaurus.labels(id).stream())
                        .filter(l -> l.kind() != Label.Kind.HIDDEN)
                        .flatMap(l -> Printed.words(l.text()).stream())
                        .collect(Collectors.toSet());
    }

    /**
     * Returns the questions of one book.
     *
     * @param weight how much each of its recipes counts
     */
    List<OpenQuestion> of(BookStudy book, java.util.function.ToDoubleFunction<Version> weight) {
        List<OpenQuestion> questions = new ArrayList<>();
        Set<String> answered = answered(book);
        for (Version version : book.versions()) {
            questions.addAll(of(version, weight.applyAsDouble(version), answered));
        }
        return questions;
    }

    /** Measures that a person has confirmed on a line are asked about no more. */
    private static Set<String> answered(BookStudy book) {
        Set<String> answered = new HashSet<>();
        for (Version version : book.versions()) {
            version.reading().lines().stream()
                    .filter(l -> l.confidence().probability() == 1)
                    .flatMap(l -> measure(version, l).stream())
                    .forEach(answered::add);
        }
        return answered;
    }

    private static Optional<String> measure(Version version, ReadingLine line) {
        return Printed.measure(line, version.source().text())
                .map(printed -> "measure " + printed + '|' + line.measure());
    }

    private List<OpenQuestion> of(Version version, double weight, Set<String> answered) {
        List<OpenQuestion> questions = new ArrayList<>();
        Set<Span> listed = new HashSet<>();
        for (SpecLine line : version.spec().lines()) {
            if (!version.reading().lines().contains(line.line())) {
                continue;
            }
            Optional<OpenQuestion> question =
                    doubtful(version, line, weight)
                            .or(() -> openMeasure(version, line, weight, answered));
            if (question.isPresent() && listed.add(line.line().span())) {
                questions.add(question.get());
            }
        }
        for (Doubt doubt : version.reading().doubts()) {
            if (listed.stream().noneMatch(s -> s.overlaps(doubt.span()))) {
                listed.add(doubt.span());
                questions.add(unread(version, doubt, weight));
            }
        }
        return questions;
    }

    private Optional<OpenQuestion> doubtful(Version version, SpecLine specLine, double weight) {
        ReadingLine line = specLine.line();
        double sure = line.confidence().probability();
        if (sure >= SURE) {
            return Optional.empty();
        }
        String reason =
                line.confidence().reasons().isEmpty()
                        ? "read with little certainty"
                        : String.join("; ", line.confidence().reasons());
        double gain = (1 - sure) * Math.max(0.1, share(specLine, version.spec())) * weight;
        return Optional.of(
                new OpenQuestion(
                        version,
                        line.span(),
                        BookRules.words(line),
                        reason,
                        sure,
                        gain,
                        habit(line.ingredientName()),
                        false));
    }

    /** What a name would be corrected by: its first unknown word, or the whole of it. */
    private String habit(String name) {
        return Printed.words(name).stream()
                .filter(w -> !Printed.isNumber(w) && !known.contains(w))
                .findFirst()
                .map(w -> w.replaceFirst("\\.$", ""))
                .map(w -> "word " + w)
                .orElse(name.isEmpty() ? "" : "name " + name);
    }

    private static Optional<OpenQuestion> openMeasure(
            Version version, SpecLine specLine, double weight, Set<String> answered) {
        ReadingLine line = specLine.line();
        Optional<Estimate> volume = specLine.millilitres();
        Optional<String> habit = measure(version, line).filter(h -> !answered.contains(h));
        boolean open =
                volume.filter(OpenQuestions::isOpen).isPresent()
                        && habit.isPresent()
                        && !COUNTED.contains(line.measure())
                        && line.confidence().probability() < 1;
        double share = open ? share(specLine, version.spec()) : 0;
        if (share < LEAST_SHARE) {
            return Optional.empty();
        }
        Estimate v = volume.orElseThrow();
        double spread = Math.min(1, (v.high() - v.low()) / (2 * Math.max(v.likely(), 1e-9)));
        return Optional.of(
                new OpenQuestion(
                        version,
                        line.span(),
                        BookRules.words(line),
                        String.format(
                                Locale.ROOT,
                                "the %s is open: it may hold %.0f to %.0f ml here",
                                line.measure(),
                                v.low(),
                                v.high()),
                        line.confidence().probability(),
                        spread * share * weight / 2,
                        habit.orElseThrow(),
                        true));
    }

    private static boolean isOpen(Estimate v) {
        return v.low() > 0 && v.high() >= OPEN * v.low() && v.high() >= LEAST_ML;
    }

    private OpenQuestion unread(Version version, Doubt doubt, double weight) {
        String printed = version.source().text().slice(doubt.span());
        String first =
                Printed.words(printed).stream()
                        .filter(w -> !Printed.isNumber(w))
                        .findFirst()
                        .map(w -> "word " + w.replaceFirst("\\.$", ""))
                        .orElse("");
        double even = 1.0 / Math.max(1, version.spec().lines().size());
        return new OpenQuestion(
                version,
                doubt.span(),
                "",
                doubt.reason(),
                1 - doubt.weight(),
                doubt.weight() * Math.max(0.1, even) * weight,
                first,
                false);
    }

    /** Returns what part of the drink a line is. */
    private static double share(SpecLine line, Spec spec) {
        if (line.line().kind() == LineKind.ICE || line.line().kind() == LineKind.GARNISH) {
            return 0;
        }
        double whole = spec.volume().map(Estimate::likely).orElse(0.0);
        double part = line.millilitres().map(Estimate::likely).orElse(0.0);
        double even = 1.0 / Math.max(1, spec.lines().size());
        return whole > 0 && part > 0 ? Math.min(1, part / whole) : even;
    }
}
