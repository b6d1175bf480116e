package org.stillroom.reading.spec;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.stillroom.measures.MeasureTable;
import org.stillroom.measures.system.BookContext;
import org.stillroom.measures.system.SystemOverride;
import org.stillroom.measures.system.SystemOverride.Level;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.text.Span;

/** The tables of measures of one book: that of the book, and those of parts decided otherwise. */
final class BookTables {

    private final MeasureTable measures;
    private final BookContext context;
    private final List<BookMeasures.Local> local;
    private final MeasureTable ofBook;
    private final Map<List<SystemOverride>, MeasureTable> others = new ConcurrentHashMap<>();

    BookTables(MeasureTable measures, BookContext context, List<BookMeasures.Local> local) {
        this.measures = measures;
        this.context = context;
        this.local = List.copyOf(local);
        this.ofBook = measures.forBook(context);
    }

    /** Returns the table that holds for a recipe, or for one of its lines. */
    MeasureTable of(Reading reading, Optional<ReadingLine> line) {
        if (local.isEmpty()) {
            return ofBook;
        }
        Span recipe = reading.witness().span();
        List<SystemOverride> here =
                local.stream()
                        .filter(
                                l ->
                                        l.override().level() == Level.LINE
                                                ? line.filter(x -> x.span().overlaps(l.span()))
                                                        .isPresent()
                                                : recipe.overlaps(l.span()))
                        .map(BookMeasures.Local::override)
                        .toList();
        return here.isEmpty()
                ? ofBook
                : others.computeIfAbsent(here, o -> measures.forBook(context.with(o)));
    }
}
