package org.stillroom.reading.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.source.Section;
import org.stillroom.model.source.Source;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;
import org.stillroom.reading.anchor.Decided;
import org.stillroom.reading.anchor.Unplaced;

/**
 * Carries out what a person decided about a cut: decisions of the kind {@code cut}.
 *
 * <p>Their value {@code action} is {@code split} (a new recipe starts at the words), {@code end}
 * (the recipe at the words ends with them), {@code join} (the recipe at the words belongs to the
 * one before it; words that reach over several recipes join them all), {@code not-a-recipe}, {@code
 * recipe} (the words are one), or {@code title} (the words are the title of the recipe that they
 * stand in or stand before). {@code title} names the recipe where its first line does not.
 */
public final class CutCorrections {

    private static final String KIND = "cut";

    private final Source source;
    private final SourceText text;
    private final Decided decided;
    private final List<Unplaced> unplaced;
    private final List<Witness> witnesses;
    private final List<Section> sections;

    private CutCorrections(Cut cut, Source source, Decided decided, List<Unplaced> unplaced) {
        this.source = source;
        this.text = source.text();
        this.decided = decided;
        this.unplaced = unplaced;
        this.witnesses = new ArrayList<>(cut.witnesses());
        this.sections = new ArrayList<>(cut.sections());
    }

    /** Returns a cut with the decisions carried out; what cannot be becomes a problem. */
    public static Cut apply(Cut cut, Source source, Decided decided, List<Unplaced> unplaced) {
        List<Assertion> decisions = decided.ofKind(KIND);
        if (decisions.isEmpty()) {
            return cut;
        }
        CutCorrections corrections = new CutCorrections(cut, source, decided, unplaced);
        for (Assertion decision : decisions) {
            decided.place(decision, unplaced).ifPresent(at -> corrections.carryOut(decision, at));
        }
        return corrections.result();
    }

    private void carryOut(Assertion decision, Span at) {
        switch (decision.value("action").orElse("")) {
            case "split" -> split(decision, at);
            case "end" -> end(decision, at);
            case "title" -> title(decision, at);
            case "join" -> join(decision, at);
            case "not-a-recipe" -> remove(decision, at);
            case "recipe" -> add(decision, at);
            default ->
                    unplaced.add(
                            decided.refused(
                                    decision,
                                    at,
                                    "A correction of the cut says nothing that can be done.",
                                    "It may say split, end, join, title, not-a-recipe or recipe."));
        }
    }

    private int holding(Span at) {
        for (int i = 0; i < witnesses.size(); i++) {
            Span span = witnesses.get(i).span();
            if (span.contains(at.start()) || span.overlaps(at)) {
                return i;
            }
        }
        return -1;
    }

    private void refuse(Assertion decision, Span at) {
        unplaced.add(
                decided.refused(
                        decision,
                        at,
                        "No recipe stands at the words of a correction of the cut.",
                        "Mark the words as a recipe first."));
    }

    private void split(Assertion decision, Span at) {
        int i = holding(at);
        if (i < 0) {
            begin(decision, at);
            return;
        }
        if (at.start() <= witnesses.get(i).span().start()) {
            return;
        }
        Witness whole = witnesses.get(i);
        witnesses.set(i, ended(whole, trimmedEnd(whole.span().start(), at.start())));
        witnesses.add(
                i + 1, made(new Span(at.start(), whole.span().end()), decision, whole.page()));
    }

    /** A recipe begins where none was: it goes on to the end of its section. */
    private void begin(Assertion decision, Span at) {
        int end = text.length();
        for (Section section : sections) {
            if (section.span().contains(at.start())) {
                end = section.span().end();
            }
        }
        for (Witness witness : witnesses) {
            if (witness.span().start() > at.start()) {
                end = Math.min(end, witness.span().start());
            }
        }
        Span span = new Span(at.start(), trimmedEnd(at.start(), end));
        clear(span);
        witnesses.add(made(span, decision, Optional.empty()));
        witnesses.sort(Comparator.comparing(Witness::span));
    }

    private void end(Assertion decision, Span at) {
        int i = holding(at);
        if (i < 0) {
            refuse(decision, at);
            return;
        }
        Witness whole = witnesses.get(i);
        int end = Math.min(at.end(), whole.span().end());
        witnesses.set(i, ended(whole, trimmedEnd(whole.span().start(), end)));
        rest(end, whole.span().end());
    }

    /** The words become the title; a recipe that starts after them starts with them. */
    private void title(Assertion decision, Span at) {
        int i = 0;
        while (i < witnesses.size() && witnesses.get(i).span().end() <= at.start()) {
            i++;
        }
        if (i == witnesses.size()) {
            refuse(decision, at);
            return;
        }
        Witness w = witnesses.get(i);
        Span whole = new Span(Math.min(at.start(), w.span().start()), w.span().end());
        TitleText words =
                TitleText.of(text.toString(), text.toIndex(at.start()), text.toIndex(at.end()));
        int body = whole.start() == at.start() ? at.end() : w.body().start();
        clear(whole);
        witnesses.set(
                i,
                new Witness(
                        w.source(),
                        w.ordinal(),
                        words.number().or(w::number),
                        words.words(),
                        new Span(text.toPlace(words.start()), text.toPlace(words.end())),
                        whole,
                        new Span(Math.min(body, whole.end()), whole.end()),
                        w.page()));
    }

    private void join(Assertion decision, Span at) {
        int last = holding(at);
        while (last >= 0
                && last + 1 < witnesses.size()
                && witnesses.get(last + 1).span().overlaps(at)) {
            last++;
        }
        int first = holding(at);
        first = first == last ? last - 1 : first;
        if (first < 0) {
            refuse(decision, at);
            return;
        }
        Witness joined = ended(witnesses.get(first), witnesses.get(last).span().end());
        witnesses.subList(first, last + 1).clear();
        witnesses.add(first, joined);
        clear(joined.span());
    }

    private void remove(Assertion decision, Span at) {
        int i = holding(at);
        if (i < 0) {
            refuse(decision, at);
            return;
        }
        sections.add(new Section(Section.Kind.OTHER, witnesses.remove(i).span()));
    }

    private void add(Assertion decision, Span at) {
        List<Witness> kept = new ArrayList<>();
        for (Witness witness : witnesses) {
            Span span = witness.span();
            if (!span.overlaps(at)) {
                kept.add(witness);
            } else if (span.start() < at.start()) {
                kept.add(ended(witness, trimmedEnd(span.start(), at.start())));
                rest(at.end(), span.end());
            } else {
                rest(at.end(), span.end());
            }
        }
        witnesses.clear();
        witnesses.addAll(kept);
        clear(at);
        witnesses.add(made(at, decision, Optional.empty()));
        witnesses.sort(Comparator.comparing(Witness::span));
    }

    /** What is left of a recipe after another was marked inside it stays as a note. */
    private void rest(int from, int to) {
        if (from < to && !text.slice(new Span(from, to)).isBlank()) {
            sections.add(new Section(Section.Kind.NOTE, new Span(from, to)));
        }
    }

    /** Takes a span out of the sections. */
    private void clear(Span span) {
        List<Section> kept = new ArrayList<>();
        for (Section section : sections) {
            Span old = section.span();
            if (!old.overlaps(span)) {
                kept.add(section);
                continue;
            }
            if (old.start() < span.start()) {
                kept.add(new Section(section.kind(), new Span(old.start(), span.start())));
            }
            if (old.end() > span.end()) {
                kept.add(new Section(section.kind(), new Span(span.end(), old.end())));
            }
        }
        sections.clear();
        sections.addAll(kept);
    }

    private int trimmedEnd(int from, int to) {
        String words = text.slice(new Span(from, to));
        return from + words.stripTrailing().codePointCount(0, words.stripTrailing().length());
    }

    private static Witness ended(Witness w, int end) {
        Span title = w.titleSpan().end() <= end ? w.titleSpan() : new Span(w.span().start(), end);
        int body = Math.min(w.body().start(), end);
        return new Witness(
                w.source(),
                w.ordinal(),
                w.number(),
                w.title(),
                title,
                new Span(w.span().start(), end),
                new Span(body, end),
                w.page());
    }

    private Witness made(Span span, Assertion decision, Optional<String> page) {
        Span first = text.line(text.lineAt(span.start()));
        int lineEnd = Math.min(first.end(), span.end());
        Optional<String> given = decision.value("title").filter(t -> !t.isBlank());
        int from = text.toIndex(span.start());
        TitleText line = TitleText.of(text.toString(), from, text.toIndex(lineEnd));
        boolean onLine =
                given.isEmpty() || TitleKey.of(given.get()).equals(TitleKey.of(line.words()));
        int end = onLine ? lineEnd : span.start();
        Span title =
                onLine
                        ? new Span(
                                text.toPlace(line.start()),
                                text.toPlace(Math.max(line.start(), line.end())))
                        : new Span(span.start(), span.start());
        return new Witness(
                source.id(),
                0,
                onLine ? line.number() : Optional.empty(),
                given.map(String::strip).orElse(line.words()),
                title,
                span,
                new Span(end, span.end()),
                page);
    }

    private Cut result() {
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
        sections.sort(Comparator.comparing(Section::span));
        return new Cut(numbered, sections);
    }
}
