package org.stillroom.workbench.library;

import java.util.Optional;
import org.stillroom.inquiry.BookStudy;
import org.stillroom.inquiry.Study;
import org.stillroom.model.spec.Version;

/** Finds the page that an id names: of a recipe, or of a source at its first recipe. */
final class PageFinder {
    private PageFinder() {}

    static Optional<MarkedPage> find(Study study, String id) {
        Optional<Version> version = study.version(id);
        Optional<BookStudy> book =
                version.map(v -> v.source().id()).or(() -> Optional.of(id)).flatMap(study::book);
        return book.map(
                b ->
                        MarkedPage.of(
                                b.source(),
                                version.or(() -> b.versions().stream().findFirst()),
                                b.versions()));
    }
}
