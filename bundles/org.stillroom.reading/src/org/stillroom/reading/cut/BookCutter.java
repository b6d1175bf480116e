package org.stillroom.reading.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.stillroom.model.source.Source;
import org.stillroom.reading.grammar.LanguageGuess;

/**
 * Cuts a whole book into its recipes and everything else.
 *
 * <p>Goes over the book twice. The first look collects what may be titles and how each is set, what
 * its contents or index lists, and how much every paragraph reads like a recipe; it learns which
 * ways of setting a title this book uses for recipes. The second look decides, title by title, by a
 * sum of points that {@link Judge} explains. What the file itself marks as a heading or a recipe
 * outranks both. Takes time in proportion to the length of the text. Immutable and safe for use by
 * several threads.
 */
public final class BookCutter {

    private final Cues house = Cues.house();

    /** Cuts a source; a text without recipes gives sections alone. */
    public Cut cut(Source source) {
        Structure structure = new Structure(source);
        Cues cues = cues(source);
        Lines lines = new Lines(structure.text());
        Listing listing = new Listing(lines, lines.count());
        List<Unit> units = new Splitter(structure, lines, listing, cues).split();
        List<Stretch> stretches =
                structure.hasRecipes()
                        ? new MarkedBook(structure, cues).assemble(units)
                        : guess(structure, listing, units, cues);
        return new CutWriter(source, listing).write(stretches);
    }

    /** Returns the cues of English and of every other language that a part of the book is in. */
    private Cues cues(Source source) {
        Set<String> languages =
                LanguageGuess.foreign(source.text().toString(), source.bibliography().language());
        return languages.isEmpty() ? house : house.with(languages);
    }

    private List<Stretch> guess(Structure structure, Listing listing, List<Unit> units, Cues cues) {
        List<Unit> judged = new Judge(structure, listing, cues).decide(new ArrayList<>(units));
        return new Assembler(structure, cues).assemble(new Variants(structure, cues).add(judged));
    }

    /** A stretch that the cut assigns to a recipe, or to no recipe, by UTF-16 units. */
    record Stretch(
            int start,
            int end,
            Optional<Head> head,
            org.stillroom.model.source.Section.Kind kind) {}
}
