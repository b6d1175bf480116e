package org.stillroom.model.reading;

import java.util.List;
import java.util.Optional;
import org.stillroom.model.source.Witness;

/**
 * What a witness says, line by line, before anything is converted.
 *
 * @param witness the recipe’s text
 * @param genre what sort of text it is
 * @param lines its own lines, in order, as printed
 * @param inherited lines taken over from a recipe that it refers to, edits applied; their spans lie
 *     in that recipe’s source
 * @param steps what is done, in order
 * @param vessels vessels named, in order
 * @param serves for how many, if it says so
 * @param reference another recipe that it sends the reader to
 * @param temperature hot, cold or frozen where the words say so
 * @param doubts what could not be read, weightiest first
 * @param confidence how sure the reading is as a whole
 */
public record Reading(
        Witness witness,
        Genre genre,
        List<ReadingLine> lines,
        List<ReadingLine> inherited,
        List<Step> steps,
        List<Vessel> vessels,
        Optional<Serves> serves,
        Optional<Reference> reference,
        Optional<String> temperature,
        List<Doubt> doubts,
        Confidence confidence) {

    /** What sort of text a recipe is. */
    public enum Genre {
        /** A recipe to be made. */
        RECIPE,
        /** A joke in the form of a recipe. */
        PARODY,
        /** A remedy. */
        MEDICAL,
        /** Praise of something for sale. */
        ADVERTISEMENT
    }

    /** Keeps the lists unchangeable. */
    public Reading {
        lines = List.copyOf(lines);
        inherited = List.copyOf(inherited);
        steps = List.copyOf(steps);
        vessels = List.copyOf(vessels);
        doubts = List.copyOf(doubts);
    }

    /** Returns all lines that make the drink: inherited ones first, then its own. */
    public List<ReadingLine> allLines() {
        if (inherited.isEmpty()) {
            return lines;
        }
        List<ReadingLine> all = new java.util.ArrayList<>(inherited);
        all.addAll(lines);
        return List.copyOf(all);
    }

    /** Returns the vessel that the drink is served in, else the last one named. */
    public Optional<Vessel> vessel() {
        Optional<Vessel> last = Optional.empty();
        for (Vessel v : vessels) {
            if (v.use() == Vessel.Use.SERVING || last.isEmpty()) {
                last = Optional.of(v);
            }
        }
        return last;
    }
}
