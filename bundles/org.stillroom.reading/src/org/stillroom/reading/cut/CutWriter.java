package org.stillroom.reading.cut;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stillroom.model.source.Section;
import org.stillroom.model.source.Source;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/** Turns stretches of UTF-16 units into witnesses and sections counted in code points. */
final class CutWriter {

    private final Source source;
    private final SourceText text;
    private final String characters;
    private final Listing listing;
    private final Pages pages;
    private final Map<TitleKey, Integer> seen = new HashMap<>();

    CutWriter(Source source, Listing listing) {
        this.source = source;
        this.text = source.text();
        this.characters = text.toString();
        this.listing = listing;
        this.pages = new Pages(source);
    }

    Cut write(List<BookCutter.Stretch> stretches) {
        List<Witness> witnesses = new ArrayList<>();
        List<Section> sections = new ArrayList<>();
        boolean open = false;
        for (BookCutter.Stretch stretch : stretches) {
            Optional<Span> span = span(stretch.start(), stretch.end());
            if (span.isEmpty()) {
                continue;
            }
            if (stretch.head().isPresent()) {
                witnesses.add(witness(stretch, span.get(), witnesses.size() + 1));
                open = false;
            } else {
                add(sections, new Section(stretch.kind(), span.get()), open);
                open = true;
            }
        }
        return new Cut(witnesses, sections);
    }

    /** Adds a section, to the one before it where both are of a kind and nothing lies between. */
    private static void add(List<Section> sections, Section section, boolean open) {
        int last = sections.size() - 1;
        if (open && last >= 0 && sections.get(last).kind() == section.kind()) {
            Span hull = sections.get(last).span().hull(section.span());
            sections.set(last, new Section(section.kind(), hull));
        } else {
            sections.add(section);
        }
    }

    private Optional<Span> span(int from, int to) {
        int start = from;
        int end = to;
        while (start < end && Lines.isBlank(characters.charAt(start))) {
            start++;
        }
        while (end > start && Lines.isBlank(characters.charAt(end - 1))) {
            end--;
        }
        return start == end
                ? Optional.empty()
                : Optional.of(new Span(text.toPlace(start), text.toPlace(end)));
    }

    private Witness witness(BookCutter.Stretch stretch, Span span, int ordinal) {
        Head head = stretch.head().orElseThrow();
        int bodyStart = head.place == Head.Place.LEAD_IN ? head.end : head.end;
        Span body =
                span(Math.min(bodyStart, stretch.end()), stretch.end())
                        .orElse(new Span(span.end(), span.end()));
        Span title = new Span(text.toPlace(head.title.start()), text.toPlace(head.title.end()));
        int time = seen.merge(head.key, 1, Integer::sum) - 1;
        Optional<String> page = pages.at(span.start()).or(() -> listing.page(head.key, time));
        return new Witness(
                source.id(),
                ordinal,
                head.title.number(),
                head.title.words(),
                title,
                span,
                body,
                page);
    }
}
