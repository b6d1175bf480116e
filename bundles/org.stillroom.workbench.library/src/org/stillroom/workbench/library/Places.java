package org.stillroom.workbench.library;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Source;
import org.stillroom.model.spec.Version;

/** Says in a line where words stand. */
final class Places {
    private Places() {}

    /** Returns author, title, place, date and page of a recipe. */
    static String of(Version version) {
        String page = version.witness().page().map(p -> ", page " + p).orElse("");
        return of(version.source()) + page;
    }

    /** Returns author, title, place and date of a source. */
    static String of(Source source) {
        Bibliography b = source.bibliography();
        List<String> parts = new ArrayList<>();
        b.author().ifPresent(parts::add);
        parts.add(b.title());
        b.place().map(p -> p.toText()).ifPresent(parts::add);
        parts.add(date(source));
        return String.join(", ", parts);
    }

    /** Returns the date in words. */
    static String date(Source source) {
        return source.bibliography().date().map(d -> d.toText()).orElse("undated");
    }

    /** Returns the place, or an empty text. */
    static String place(Source source) {
        return source.bibliography().place().map(p -> p.toText()).orElse("");
    }
}
