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
import org.stillroom.model.estimate.Estimate;
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

    private final MeasureTable measures;
    private final Circumstances where;
    private final Concepts concepts;
    private final LineResolver lines;
    private final CautionFinder finder;

    private SpecResolver(MeasureTable measures, Thesaurus thesaurus, Circumstances where) {
        this.measures = measures;
        this.where = where;
        this.concepts = new Concepts(thesaurus, where);
        this.lines = new LineResolver(measures, concepts, where);
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
        Set<String> words = new TreeSet<>();
        readings.forEach(r -> r.lines().forEach(l -> words.add(l.measure())));
        MeasureTable ofBook = measures.forBook(BookContext.ofWords(words));
        return new SpecResolver(ofBook, thesaurus, where);
    }

    /**
     * Returns the spec of a reading.
     *
     * @param words the recipe’s words as printed, which may tell of fire or of children
     */
    public Spec resolve(Reading reading, String words) {
        List<SpecLine> resolved = new ArrayList<>();
        List<ReadingLine> all = SameAmounts.workedOut(reading.allLines());
        for (int i = 0; i < all.size(); i++) {
            resolved.add(lines.resolve(all.get(i), i));
        }
        Whole whole = Whole.of(resolved, concepts);
        SystemPosterior systems = measures.systems(where);
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
                finder.find(cautions, reading, words, alcohol(whole)));
    }

    /** Returns the alcohol in the whole, in millilitres. */
    private static Optional<Estimate> alcohol(Whole whole) {
        return whole.volume().flatMap(v -> whole.strength().map(s -> v.times(s)));
    }
}
