package org.stillroom.reading;

import java.util.Optional;
import org.stillroom.model.source.Source;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/** Makes witnesses of texts that were not cut. */
final class Witnesses {

    private static final int LONGEST_TITLE = 60;

    private Witnesses() {}

    /** Returns the whole text as one recipe; a short first line over others is its title. */
    static Witness whole(Source source) {
        SourceText text = source.text();
        int first = 1;
        while (first < text.lineCount() && text.slice(text.line(first)).isBlank()) {
            first++;
        }
        Span line = text.line(first);
        String words = text.slice(line).strip();
        boolean more =
                first < text.lineCount()
                        && !text.slice(new Span(line.end(), text.length())).isBlank();
        boolean titled =
                more
                        && words.length() <= LONGEST_TITLE
                        && !words.endsWith(",")
                        && words.chars().noneMatch(Character::isDigit);
        Span title = titled ? line : new Span(line.start(), line.start());
        Span body = new Span(titled ? line.end() : 0, text.length());
        String name = titled ? words.replaceAll("[.:#*_ ]+$|^[#*_ ]+", "") : "";
        return new Witness(
                source.id(), 1, Optional.empty(), name, title, text.span(), body, Optional.empty());
    }
}
