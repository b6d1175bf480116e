package org.stillroom.workbench.library;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillroom.inquiry.BookStudy;
import org.stillroom.model.reading.Doubt;
import org.stillroom.model.reading.Ingredient;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Step;
import org.stillroom.model.reading.Vessel;
import org.stillroom.model.source.Source;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.Folding;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;
import org.stillroom.reading.anchor.WordCorrection;
import org.stillroom.workbench.Ink;

/**
 * A stretch of a source around one recipe, with what was read marked on the printed words.
 *
 * @param words the stretch as printed
 * @param start where it starts in the source, in code points
 * @param source the source
 * @param shown the recipe that the page is about, if the source has one
 * @param neighbours every recipe of the source that the stretch touches, in order
 * @param marks what was read in them, in order
 * @param putRight words of the source that a person put right
 */
record MarkedPage(
        String words,
        int start,
        Source source,
        Optional<Version> shown,
        List<Version> neighbours,
        List<Mark> marks,
        List<WordCorrection> putRight) {
    /** Code points before and after a recipe that are shown with it. */
    private static final int AROUND = 1_800;

    /** Code points that are shown of a source without recipes. */
    private static final int MOST = 20_000;

    /**
     * Something that was read in the printed words.
     *
     * @param use what it is
     * @param from first character in the stretch, in UTF-16 units
     * @param to first character after it
     * @param version the recipe that it belongs to
     * @param line which of the recipe's own lines, or -1
     */
    record Mark(Ink.Use use, int from, int to, Version version, int line) {}

    MarkedPage {
        neighbours = List.copyOf(neighbours);
        marks = List.copyOf(marks);
        putRight = List.copyOf(putRight);
    }

    /** Returns the page of a source around some words that stand in no recipe. */
    static MarkedPage around(BookStudy book, Span words) {
        return of(book, Optional.empty(), around(book.source().text(), words));
    }

    /** Returns the page of a source at one of its recipes. */
    static MarkedPage of(BookStudy book, Optional<Version> shown) {
        SourceText text = book.source().text();
        Span stretch =
                shown.map(v -> around(text, v.witness().span())).orElseGet(() -> beginning(text));
        return of(book, shown, stretch);
    }

    private static MarkedPage of(BookStudy book, Optional<Version> shown, Span stretch) {
        Source source = book.source();
        SourceText text = source.text();
        List<Version> touched =
                book.versions().stream().filter(v -> v.witness().span().overlaps(stretch)).toList();
        Marker marker = new Marker(text, stretch);
        touched.forEach(marker::mark);
        return new MarkedPage(
                text.slice(stretch),
                stretch.start(),
                source,
                shown,
                touched,
                marker.marks(),
                book.reading().putRight());
    }

    private static Span around(SourceText text, Span recipe) {
        int first = text.lineAt(Math.max(0, recipe.start() - AROUND));
        int last = text.lineAt(Math.min(text.length(), recipe.end() + AROUND));
        return new Span(text.line(first).start(), text.line(last).end());
    }

    private static Span beginning(SourceText text) {
        return new Span(0, Math.min(MOST, text.length()));
    }

    /** Returns the characters of the stretch that a span of the source covers, if any. */
    Optional<int[]> characters(Span span) {
        return Marker.characters(source.text(), new Span(start, end()), span);
    }

    /** Returns the place in the source of characters of the stretch. */
    Span span(int from, int to) {
        int first = start + words.codePointCount(0, from);
        return new Span(first, first + words.codePointCount(from, to));
    }

    /** Returns the recipe that holds a place of the source. */
    Optional<Version> recipe(Span span) {
        return neighbours.stream().filter(v -> v.witness().span().contains(span)).findFirst();
    }

    /** Returns the words put right at characters of the stretch, if there are any. */
    Optional<WordCorrection> putRight(Span span) {
        return putRight.stream().filter(c -> c.span().overlaps(span)).findFirst();
    }

    private int end() {
        return start + words.codePointCount(0, words.length());
    }

    /** Collects marks. */
    private static final class Marker {
        private final SourceText text;
        private final Span stretch;
        private final List<Mark> marks = new ArrayList<>();

        Marker(SourceText text, Span stretch) {
            this.text = text;
            this.stretch = stretch;
        }

        List<Mark> marks() {
            return marks;
        }

        void mark(Version version) {
            List<ReadingLine> lines = version.reading().lines();
            for (int i = 0; i < lines.size(); i++) {
                mark(version, lines.get(i), i);
            }
            for (Step step : version.reading().steps()) {
                add(Ink.Use.STEP, step.span(), version, -1);
            }
            for (Vessel vessel : version.reading().vessels()) {
                add(Ink.Use.VESSEL, vessel.span(), version, -1);
            }
            for (Doubt doubt : version.reading().doubts()) {
                add(Ink.Use.DOUBT, doubt.span(), version, -1);
            }
        }

        private void mark(Version version, ReadingLine line, int number) {
            line.amountSpan().ifPresent(span -> amount(version, line, span, number));
            line.ingredient()
                    .map(Ingredient::span)
                    .ifPresent(span -> add(Ink.Use.INGREDIENT, span, version, number));
        }

        /** Marks the number and, where its printed word can be told apart, the measure. */
        private void amount(Version version, ReadingLine line, Span span, int number) {
            int measure = measureAt(text.slice(span), line.measure());
            int cut = span.start() + measure;
            if (measure > 0) {
                add(Ink.Use.AMOUNT, new Span(span.start(), cut), version, number);
            }
            if (measure >= 0) {
                add(Ink.Use.MEASURE, new Span(cut, span.end()), version, number);
            } else {
                add(Ink.Use.AMOUNT, span, version, number);
            }
        }

        /** Returns how many code points of an amount stand before its word of measure, or -1. */
        private static int measureAt(String amount, String measure) {
            String stem = letters(measure).substring(0, Math.min(4, letters(measure).length()));
            int place = 0;
            for (String word : amount.split("(?<=[\\s\\d½⅓¼¾⅔⅛])")) {
                if (!stem.isEmpty() && letters(word).startsWith(stem)) {
                    return place;
                }
                place += word.codePointCount(0, word.length());
            }
            return -1;
        }

        private static String letters(String word) {
            return Folding.foldWord(word).replaceAll("[^\\p{L}]", "");
        }

        private void add(Ink.Use use, Span span, Version version, int line) {
            characters(text, stretch, span)
                    .filter(c -> c[1] > c[0])
                    .ifPresent(c -> marks.add(new Mark(use, c[0], c[1], version, line)));
        }

        static Optional<int[]> characters(SourceText text, Span stretch, Span span) {
            if (!stretch.overlaps(span)) {
                return Optional.empty();
            }
            int zero = text.toIndex(stretch.start());
            int from = text.toIndex(Math.max(stretch.start(), span.start())) - zero;
            int to = text.toIndex(Math.min(stretch.end(), span.end())) - zero;
            return Optional.of(new int[] {from, to});
        }
    }
}
