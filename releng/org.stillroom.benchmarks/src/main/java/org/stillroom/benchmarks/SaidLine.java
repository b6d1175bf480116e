package org.stillroom.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Reference;

/**
 * A line that was read in a recipe's own words.
 *
 * @param line what was read
 * @param probability how sure its reader was, from 0 to 1
 * @param inherited the line taken over from another recipe in which it stands for an ingredient; it
 *     says the amount where the recipe's own words state one
 */
record SaidLine(TruthLine line, double probability, Optional<TruthLine> inherited) {

    /**
     * Returns what the recipe's own words say, alternatives left out: its lines, and what the words
     * that lean on another recipe add or put in the place of an ingredient.
     */
    static List<SaidLine> of(Reading reading) {
        List<SaidLine> said = new ArrayList<>();
        reading.lines().forEach(l -> said.add(of(l)));
        reading.reference().ifPresent(r -> edits(r, reading.inherited(), said));
        said.removeIf(s -> s.line().isAlternative());
        return said;
    }

    private static SaidLine of(ReadingLine line) {
        return new SaidLine(TruthLine.of(line), line.confidence().probability(), Optional.empty());
    }

    private static void edits(
            Reference reference, List<ReadingLine> inherited, List<SaidLine> said) {
        for (Reference.Edit edit : reference.edits()) {
            Optional<SaidLine> more =
                    switch (edit) {
                        case Reference.Edit.Add add -> Optional.of(of(add.line()));
                        case Reference.Edit.Replace swap ->
                                Optional.of(
                                        swapped(
                                                swap.to(),
                                                reference.confidence().probability(),
                                                inherited));
                        case Reference.Edit.Remove gone -> Optional.empty();
                        case Reference.Edit.Change change -> change.line().map(SaidLine::of);
                    };
            more.filter(m -> said.stream().noneMatch(m::isAlike)).ifPresent(said::add);
        }
    }

    private static SaidLine swapped(
            String ingredient, double probability, List<ReadingLine> inherited) {
        return new SaidLine(
                new TruthLine("measured", "", "", "unstated", "", ingredient),
                probability,
                inherited.stream()
                        .filter(l -> l.ingredientName().equals(ingredient))
                        .map(TruthLine::of)
                        .findFirst());
    }

    private boolean isAlike(SaidLine other) {
        return LinePairs.overlap(line.ingredient(), other.line.ingredient()) > LinePairs.ENOUGH;
    }

    /** Returns what to compare with a line of the truth. */
    TruthLine against(TruthLine truth) {
        return truth.measure().equals("unstated") ? line : inherited.orElse(line);
    }
}
