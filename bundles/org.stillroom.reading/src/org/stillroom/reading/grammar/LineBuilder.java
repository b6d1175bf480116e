package org.stillroom.reading.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillroom.model.reading.Amount;
import org.stillroom.model.reading.Confidence;
import org.stillroom.model.reading.Ingredient;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/** Makes finished lines of drafts: spans, names, confidence, alternatives. */
final class LineBuilder {

    private final Passage p;
    private final SourceText text;
    private final ConfidenceModel model;

    LineBuilder(Passage passage, SourceText text, ConfidenceModel model) {
        this.p = passage;
        this.text = text;
        this.model = model;
    }

    List<ReadingLine> build(List<Draft> drafts) {
        List<ReadingLine> lines = new ArrayList<>();
        int free = 0;
        for (Draft d : drafts) {
            int start = Math.max(d.start, free);
            int end = Math.max(trimmedEnd(d), start);
            if (end <= start) {
                continue;
            }
            lines.add(line(d, start, end));
            free = end;
        }
        return lines;
    }

    /** Returns the end of a draft without marks that only divide it from the next. */
    private int trimmedEnd(Draft d) {
        int end = Math.min(d.end, p.size());
        while (end > d.start + 1
                && p.at(end - 1).type() != Token.Type.NUMBER
                && (p.at(end - 1).isMark(',') || p.at(end - 1).ends())) {
            end--;
        }
        return end;
    }

    private ReadingLine line(Draft d, int start, int end) {
        Span span = p.span(start, end);
        Optional<Ingredient> ingredient = ingredient(d);
        Optional<Span> amountSpan =
                d.amountStart < 0 || d.amountEnd <= d.amountStart
                        ? Optional.empty()
                        : Optional.of(p.span(d.amountStart, d.amountEnd));
        Confidence confidence = model.of(d);
        List<ReadingLine> others = new ArrayList<>();
        double left = (1 - confidence.probability()) * 0.8;
        for (Amount other : d.others) {
            others.add(
                    new ReadingLine(
                            text.slice(span),
                            span,
                            d.kind,
                            other,
                            d.measure,
                            d.size,
                            ingredient,
                            amountSpan,
                            Confidence.of(Math.max(0.01, left)),
                            List.of()));
            left /= 2;
        }
        return new ReadingLine(
                text.slice(span),
                span,
                d.kind,
                d.amount,
                d.measure,
                d.size,
                ingredient,
                amountSpan,
                confidence,
                others);
    }

    private Optional<Ingredient> ingredient(Draft d) {
        if (!d.isNamed()) {
            return Optional.empty();
        }
        StringBuilder name = new StringBuilder();
        Span hull = null;
        for (Name.Piece piece : d.pieces) {
            if (piece.to() <= piece.from()) {
                continue;
            }
            String words = p.name(piece.from(), piece.to());
            name.append(name.length() == 0 || words.isEmpty() ? "" : " ").append(words);
            Span span = p.span(piece.from(), piece.to());
            hull = hull == null ? span : hull.hull(span);
        }
        return hull == null
                ? Optional.empty()
                : Optional.of(new Ingredient(name.toString(), hull, d.senses, d.preparations));
    }
}
