package org.stillroom.reading.anchor;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.stillroom.model.reading.Confidence;
import org.stillroom.model.reading.Doubt;
import org.stillroom.model.reading.Ingredient;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Reference;
import org.stillroom.model.reading.Serves;
import org.stillroom.model.reading.Step;
import org.stillroom.model.reading.Vessel;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;
import org.stillroom.reading.grammar.DoubtsOfShares;

/** Makes readings of readings: with other lines, or with their words at other places. */
public final class Readings {

    private Readings() {}

    /**
     * Returns a reading with other lines.
     *
     * <p>Doubts about the decided words go, those about shares are made anew, steps keep the lines
     * that they apply to.
     *
     * @param decided the words that a person decided about
     */
    static Reading with(Reading r, List<ReadingLine> lines, Span decided) {
        List<Doubt> doubts = new ArrayList<>();
        DoubtsOfShares.of(lines).ifPresent(doubts::add);
        for (Doubt doubt : r.doubts()) {
            boolean settled = decided.overlaps(doubt.span()) || lacksLine(doubt, lines);
            if (!settled && !DoubtsOfShares.is(doubt)) {
                doubts.add(doubt);
            }
        }
        List<Step> steps = r.steps().stream().map(s -> moved(s, r.lines(), lines)).toList();
        return with(r, lines, steps, r.vessels(), doubts);
    }

    /** Returns a reading with other lines, steps, vessels and doubts. */
    static Reading with(
            Reading r,
            List<ReadingLine> lines,
            List<Step> steps,
            List<Vessel> vessels,
            List<Doubt> doubts) {
        return new Reading(
                r.witness(),
                r.genre(),
                lines,
                r.inherited(),
                steps,
                vessels,
                r.serves(),
                r.reference(),
                r.temperature(),
                doubts,
                overall(lines));
    }

    /** Returns a reading with every line mapped, one to one. */
    public static Reading mapped(Reading r, UnaryOperator<ReadingLine> change) {
        return with(r, r.lines().stream().map(change).toList(), r.steps(), r.vessels(), r.doubts());
    }

    /** Returns a reading without the lines at some words. */
    public static Reading without(Reading r, Span span) {
        return with(r, r.lines().stream().filter(l -> !l.span().equals(span)).toList(), span);
    }

    /** Returns a reading without the doubts about lines that are surer than they were before. */
    public static Reading settled(Reading r, Reading before) {
        Reading result = r;
        for (ReadingLine line : r.lines()) {
            boolean surer =
                    before.lines().stream()
                            .anyMatch(
                                    b ->
                                            b.span().equals(line.span())
                                                    && b.confidence().probability()
                                                            < line.confidence().probability());
            if (surer) {
                result = with(result, result.lines(), line.span());
            }
        }
        return result;
    }

    /** Returns a reading whose words stand at other places. */
    public static Reading placed(Reading r, UnaryOperator<Span> place) {
        return new Reading(
                r.witness(),
                r.genre(),
                r.lines().stream().map(l -> placed(l, place)).toList(),
                r.inherited(),
                r.steps().stream()
                        .map(s -> new Step(s.verb(), place.apply(s.span()), s.lines(), s.detail()))
                        .toList(),
                r.vessels().stream()
                        .map(v -> new Vessel(v.word(), place.apply(v.span()), v.use()))
                        .toList(),
                r.serves().map(s -> new Serves(s.low(), s.high(), place.apply(s.span()))),
                r.reference(),
                r.temperature(),
                r.doubts().stream()
                        .map(d -> new Doubt(d.reason(), place.apply(d.span()), d.weight()))
                        .toList(),
                r.confidence());
    }

    /** Returns a witness whose words stand elsewhere. */
    public static Witness placed(Witness w, UnaryOperator<Span> place) {
        return new Witness(
                w.source(),
                w.ordinal(),
                w.number(),
                w.title(),
                place.apply(w.titleSpan()),
                place.apply(w.span()),
                place.apply(w.body()),
                w.page());
    }

    /**
     * Returns a reading as it stands in a text that is another layer of its own: every place moved,
     * and the lines with the words of that text.
     */
    public static Reading over(Reading r, UnaryOperator<Span> place, SourceText text) {
        Reading moved = placed(r, place);
        return new Reading(
                placed(r.witness(), place),
                moved.genre(),
                moved.lines().stream().map(l -> worded(l, text)).toList(),
                moved.inherited().stream().map(l -> worded(placed(l, place), text)).toList(),
                moved.steps(),
                moved.vessels(),
                moved.serves(),
                moved.reference().map(f -> over(f, place, text)),
                moved.temperature(),
                moved.doubts(),
                moved.confidence());
    }

    private static Reference over(Reference f, UnaryOperator<Span> place, SourceText text) {
        Span span = place.apply(f.span());
        List<Reference.Edit> edits = f.edits().stream().map(e -> over(e, place, text)).toList();
        return new Reference(text.slice(span), span, f.target(), f.chain(), edits, f.confidence());
    }

    private static Reference.Edit over(
            Reference.Edit edit, UnaryOperator<Span> place, SourceText text) {
        return switch (edit) {
            case Reference.Edit.Add add ->
                    new Reference.Edit.Add(worded(placed(add.line(), place), text));
            case Reference.Edit.Change change ->
                    new Reference.Edit.Change(
                            change.ingredient(),
                            change.words(),
                            change.line().map(l -> worded(placed(l, place), text)));
            case Reference.Edit.Replace replace -> replace;
            case Reference.Edit.Remove remove -> remove;
        };
    }

    /** Returns a line with its words as a text has them. */
    public static ReadingLine worded(ReadingLine line, SourceText text) {
        Span span = line.span();
        return new ReadingLine(
                span.end() <= text.length() ? text.slice(span) : line.text(),
                span,
                line.kind(),
                line.amount(),
                line.measure(),
                line.size(),
                line.ingredient(),
                line.amountSpan(),
                line.confidence(),
                line.alternatives().stream().map(a -> worded(a, text)).toList());
    }

    private static ReadingLine placed(ReadingLine l, UnaryOperator<Span> place) {
        return new ReadingLine(
                l.text(),
                place.apply(l.span()),
                l.kind(),
                l.amount(),
                l.measure(),
                l.size(),
                l.ingredient()
                        .map(
                                i ->
                                        new Ingredient(
                                                i.name(),
                                                place.apply(i.span()),
                                                i.senses(),
                                                i.preparations())),
                l.amountSpan().map(place),
                l.confidence(),
                l.alternatives().stream().map(a -> placed(a, place)).toList());
    }

    /** A step goes on applying to the lines that stand where its lines stood. */
    private static Step moved(Step step, List<ReadingLine> before, List<ReadingLine> after) {
        List<Integer> lines = new ArrayList<>();
        for (int old : step.lines()) {
            int now = old < before.size() ? at(after, before.get(old).span()) : -1;
            if (now >= 0 && !lines.contains(now)) {
                lines.add(now);
            }
        }
        return new Step(step.verb(), step.span(), lines, step.detail());
    }

    private static int at(List<ReadingLine> lines, Span span) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).span().overlaps(span)) {
                return i;
            }
        }
        return -1;
    }

    /** The doubt that a recipe has no ingredient goes with its first line. */
    private static boolean lacksLine(Doubt doubt, List<ReadingLine> lines) {
        return !lines.isEmpty() && doubt.reason().startsWith("No ingredient was found");
    }

    /** Returns the geometric mean of the lines' confidence, as the reader has it. */
    private static Confidence overall(List<ReadingLine> lines) {
        double product = 1;
        int count = 0;
        for (ReadingLine line : lines) {
            if (line.kind() != LineKind.ALTERNATIVE) {
                product *= line.confidence().probability();
                count++;
            }
        }
        return Confidence.of(count == 0 ? 0 : Math.pow(product, 1.0 / count));
    }
}
