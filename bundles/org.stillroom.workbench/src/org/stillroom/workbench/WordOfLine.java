package org.stillroom.workbench;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.stillroom.inquiry.Arguments;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Size;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;
import org.stillroom.model.source.Trade;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;

/** Finds the word of measure that a line's amount hangs on, as the inquiry “word” wants it. */
final class WordOfLine {
    private WordOfLine() {}

    /** Returns the word with place, date and trade of its source, where the line has an amount. */
    static Optional<Arguments> of(Version version, SpecLine line) {
        if (line.millilitres().isEmpty() && line.grams().isEmpty()) {
            return Optional.empty();
        }
        Circumstances where = version.source().bibliography().circumstances();
        Map<String, String> values = new TreeMap<>();
        values.put("word", words(line.line()));
        where.place().map(Place::toText).ifPresent(p -> values.put("place", p));
        where.date().ifPresent(d -> values.put("date", d.toString()));
        where.trade().map(Trade::word).ifPresent(t -> values.put("trade", t));
        return Optional.of(new Arguments(values));
    }

    private static String words(ReadingLine line) {
        String size = line.size().map(Size::word).map(w -> w + " ").orElse("");
        String thing = line.ingredientName();
        return size + line.measure() + (thing.isBlank() ? "" : " of " + thing);
    }
}
