package org.stillroom.reading;

import java.util.List;
import java.util.Optional;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.SourceText;

/** A book in English of which nothing is known but its words. */
public final class PlainBook {

    private PlainBook() {}

    /** Returns the book with these words. */
    public static Source of(String words) {
        Optional<String> none = Optional.empty();
        Bibliography book =
                new Bibliography(
                        "A Book",
                        none,
                        none,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of("en"),
                        Optional.empty(),
                        none,
                        none,
                        none,
                        none);
        return new Source("book.md", book, SourceText.of(words), List.of(), "");
    }
}
