package org.stillroom.workbench.library;

import java.util.Optional;
import org.stillroom.inquiry.BookStudy;
import org.stillroom.inquiry.Study;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.Span;
import org.stillroom.workbench.Navigator;

/** Finds the page that an id names: of a recipe, or of a source at its first recipe. */
final class PageFinder {
    private PageFinder() {}

    static Optional<MarkedPage> find(Study study, String id) {
        Optional<Version> version = study.version(id);
        Optional<BookStudy> book =
                version.map(v -> v.source().id()).or(() -> Optional.of(id)).flatMap(study::book);
        return book.map(b -> MarkedPage.of(b, version.or(() -> b.versions().stream().findFirst())));
    }

    /** Finds the page that shows words of a source: at their recipe, or around them. */
    static Optional<MarkedPage> find(Study study, Navigator.Words words) {
        Optional<Version> named = study.version(words.page());
        String id = named.map(v -> v.source().id()).orElse(words.page());
        return study.book(id).map(book -> find(book, named, words.span()));
    }

    private static MarkedPage find(BookStudy book, Optional<Version> named, Span words) {
        int length = book.source().text().length();
        Span inside = new Span(Math.min(words.start(), length), Math.min(words.end(), length));
        Optional<Version> recipe =
                named.filter(v -> v.witness().span().contains(inside))
                        .or(
                                () ->
                                        book.versions().stream()
                                                .filter(v -> v.witness().span().contains(inside))
                                                .findFirst());
        return recipe.isPresent() ? MarkedPage.of(book, recipe) : MarkedPage.around(book, inside);
    }
}
