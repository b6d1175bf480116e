package org.stillroom.inquiry;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.stillroom.measures.MeasureTable;
import org.stillroom.measures.system.BookContext;
import org.stillroom.model.source.Source;
import org.stillroom.model.spec.Version;
import org.stillroom.reading.BookReading;
import org.stillroom.reading.spec.BookMeasures;

/**
 * One source with what was read in it.
 *
 * @param reading its recipes and other sections
 * @param versions its recipes with measures resolved, in order
 * @param measures its own table of measures, and what was decided about its system
 * @param digest changes whenever the source, the decisions about it or what is known changes
 */
public record BookStudy(
        BookReading reading, List<Version> versions, BookMeasures measures, String digest) {

    /** Keeps the versions as an unchangeable list. */
    public BookStudy {
        versions = List.copyOf(versions);
    }

    /** Returns what words of measure meant in this book, by its own table and the decisions. */
    public MeasureTable table(Knowledge knowledge) {
        Set<String> words = new TreeSet<>();
        reading.readings().forEach(r -> r.lines().forEach(l -> words.add(l.measure())));
        return knowledge
                .measures()
                .forBook(new BookContext(words, measures.ownTable(), measures.overrides()));
    }

    /** Returns the source. */
    public Source source() {
        return reading.source();
    }
}
