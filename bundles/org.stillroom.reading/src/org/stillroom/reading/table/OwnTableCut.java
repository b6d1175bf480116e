package org.stillroom.reading.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.stillroom.model.source.Section;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;
import org.stillroom.reading.cut.Cut;

/** Takes the book's own table of measures out of the recipes that it was cut into. */
public final class OwnTableCut {

    /** How much of a recipe's words may be a table before it is one; from memory. */
    private static final double MOSTLY = 0.6;

    private OwnTableCut() {}

    /** Returns a cut in which tables of measures are sections and no recipes. */
    public static Cut apply(Cut cut, List<OwnStatement> statements, SourceText text) {
        if (statements.isEmpty()) {
            return cut;
        }
        List<Witness> witnesses = new ArrayList<>();
        List<Section> sections = new ArrayList<>(cut.sections());
        for (Witness w : cut.witnesses()) {
            List<Span> inside =
                    statements.stream()
                            .map(OwnStatement::span)
                            .filter(s -> w.span().overlaps(s))
                            .toList();
            if (inside.size() > 1 && share(w, inside, text) >= MOSTLY) {
                sections.add(new Section(Section.Kind.MEASURES, w.span()));
            } else {
                Optional<Integer> tail = tail(w, statements, text);
                tail.ifPresent(
                        at ->
                                sections.add(
                                        new Section(
                                                Section.Kind.MEASURES,
                                                new Span(at, w.span().end()))));
                witnesses.add(tail.map(at -> ended(w, at, text)).orElse(w));
            }
        }
        sections.sort(Comparator.comparing(Section::span));
        return new Cut(numbered(witnesses), sections);
    }

    private static double share(Witness w, List<Span> inside, SourceText text) {
        int whole = letters(text.slice(w.body()));
        int table =
                inside.stream()
                        .mapToInt(
                                s ->
                                        letters(
                                                text.slice(
                                                        new Span(
                                                                Math.max(
                                                                        s.start(),
                                                                        w.span().start()),
                                                                Math.min(
                                                                        s.end(), w.span().end())))))
                        .sum();
        return whole == 0 ? 0 : (double) table / whole;
    }

    private static int letters(String words) {
        return (int) words.codePoints().filter(Character::isLetterOrDigit).count();
    }

    /** Returns where the rows of a table start that close a recipe, if two or more do. */
    private static Optional<Integer> tail(Witness w, List<OwnStatement> all, SourceText text) {
        List<Span> rows =
                all.stream()
                        .filter(OwnStatement::row)
                        .map(OwnStatement::span)
                        .filter(s -> w.body().contains(s))
                        .distinct()
                        .toList();
        int start = w.span().end();
        int found = 0;
        for (int i = rows.size() - 1; i >= 0; i--) {
            if (letters(text.slice(new Span(rows.get(i).end(), start))) > 0) {
                break;
            }
            start = rows.get(i).start();
            found++;
        }
        return found > 1 && start > w.body().start() ? Optional.of(start) : Optional.empty();
    }

    private static Witness ended(Witness w, int at, SourceText text) {
        String words = text.slice(new Span(w.span().start(), at)).stripTrailing();
        int end = w.span().start() + words.codePointCount(0, words.length());
        return new Witness(
                w.source(),
                w.ordinal(),
                w.number(),
                w.title(),
                w.titleSpan(),
                new Span(w.span().start(), end),
                new Span(Math.min(w.body().start(), end), end),
                w.page());
    }

    private static List<Witness> numbered(List<Witness> witnesses) {
        List<Witness> numbered = new ArrayList<>();
        for (Witness w : witnesses) {
            numbered.add(
                    new Witness(
                            w.source(),
                            numbered.size() + 1,
                            w.number(),
                            w.title(),
                            w.titleSpan(),
                            w.span(),
                            w.body(),
                            w.page()));
        }
        return numbered;
    }

    /** Returns the text with the statements blank, every other code point where it stood. */
    public static SourceText blank(SourceText text, List<OwnStatement> statements) {
        if (statements.isEmpty()) {
            return text;
        }
        StringBuilder out = new StringBuilder(text.toString());
        for (OwnStatement s : statements) {
            for (int i = text.toIndex(s.span().start()); i < text.toIndex(s.span().end()); i++) {
                char c = out.charAt(i);
                if (c != '\n' && !Character.isSurrogate(c)) {
                    out.setCharAt(i, ' ');
                }
            }
        }
        return SourceText.of(out.toString());
    }
}
