package org.stillroom.reading.spec;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.stillroom.ingredients.Cautions;
import org.stillroom.ingredients.Sense;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.measures.MeasureTable;
import org.stillroom.measures.system.BookContext;
import org.stillroom.measures.system.SystemPosterior;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.spec.Spec;
import org.stillroom.model.spec.SpecLine;

/**
 * Turns readings into specs: what each word of measure and each ingredient meant there and then.
 *
 * <p>Immutable and safe on any thread. One resolver serves one book, because the measures that a
 * book uses tell which system it goes by.
 */
public final class SpecResolver {

    private final BookTables tables;
    private final Circumstances where;
    private final Concepts concepts;
    private final CautionFinder finder;

    private SpecResolver(BookTables tables, Thesaurus thesaurus, Circumstances where) {
        this.tables = tables;
        this.where = where;
        this.concepts = new Concepts(thesaurus, where);
        this.finder = new CautionFinder(thesaurus);
    }

    /**
     * Returns the resolver for a book.
     *
     * @param readings all readings of the book; the measures in them help to tell its system
     * @param where place, date and trade of the book
     */
    public static SpecResolver forBook(
            MeasureTable measures,
            Thesaurus thesaurus,
            List<Reading> readings,
            Circumstances where) {
        return forBook(measures, thesaurus, readings, where, BookMeasures.NONE);
    }

    /**
     * Returns the resolver for a book of whose measures more is known.
     *
     * @param own the book's own table of measures, and the user's decisions about its system
     */
    public static SpecResolver forBook(
            MeasureTable measures,
            Thesaurus thesaurus,
            List<Reading> readings,
            Circumstances where,
            BookMeasures own) {
        Set<String> words = new TreeSet<>();
        readings.forEach(r -> r.lines().forEach(l -> words.add(l.measure())));
        BookContext context = new BookContext(words, own.ownTable(), own.overrides());
        return new SpecResolver(new BookTables(measures, context, own.local()), thesaurus, where);
    }

    /**
     * Returns the spec of a reading.
     *
     * @param words the recipe’s words as printed, which may tell of fire or of children
     */
    public Spec resolve(Reading reading, String words) {
        List<SpecLine> resolved = new ArrayList<>();
        List<ReadingLine> all = SameAmounts.workedOut(reading.allLines());
        Shares shares = Shares.of(all);
        for (int i = 0; i < all.size(); i++) {
            MeasureTable measures = tables.of(reading, Optional.of(all.get(i)));
            resolved.add(
                    new LineResolver(measures, concepts, where, shares).resolve(all.get(i), i));
        }
        Whole whole = Whole.of(resolved, concepts);
        SystemPosterior systems = tables.of(reading, Optional.empty()).systems(where);
        List<Sense> senses = resolved.stream().flatMap(l -> concepts.sense(l).stream()).toList();
        List<String> unknown =
                resolved.stream()
                        .filter(l -> !l.ingredient().known())
                        .map(l -> l.ingredient().label())
                        .filter(l -> !l.isBlank())
                        .toList();
        Cautions cautions = Cautions.of(senses, unknown, where);
        return new Spec(
                reading,
                resolved,
                systems.likeliest().label(),
                systems.reason(),
                whole.volume(),
                whole.strength(),
                whole.sugar(),
                finder.find(cautions, reading, words, whole.alcohol()));
    }
}
