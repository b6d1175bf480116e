package org.stillroom.inquiry;

import java.util.List;
import org.stillroom.model.source.Source;
import org.stillroom.model.spec.Version;
import org.stillroom.reading.BookReading;

/**
 * One source with what was read in it.
 *
 * @param reading its recipes and other sections
 * @param versions its recipes with measures resolved, in order
 * @param digest changes whenever the source, the decisions about it or what is known changes
 */
public record BookStudy(BookReading reading, List<Version> versions, String digest) {

    /** Keeps the versions as an unchangeable list. */
    public BookStudy {
        versions = List.copyOf(versions);
    }

    /** Returns the source. */
    public Source source() {
        return reading.source();
    }
}
