package org.stillroom.reading;

import java.util.List;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.source.Section;
import org.stillroom.model.source.Source;
import org.stillroom.reading.anchor.Unplaced;
import org.stillroom.reading.anchor.WordCorrection;
import org.stillroom.reading.table.OwnStatement;

/**
 * A source with its recipes read.
 *
 * @param source the source
 * @param sections what is no recipe, in the order of the text
 * @param readings the recipes, in the order of the text
 * @param ownMeasures what the book says itself of its measures, in the order of the text
 * @param putRight words of the transcription that a person put right, in the order of the text
 * @param unplaced decisions that could not be carried out on this text
 * @param problems those decisions, and what else is wrong, for a person to mend
 */
public record BookReading(
        Source source,
        List<Section> sections,
        List<Reading> readings,
        List<OwnStatement> ownMeasures,
        List<WordCorrection> putRight,
        List<Unplaced> unplaced,
        List<Problem> problems) {

    /** Keeps the lists unchangeable. */
    public BookReading {
        sections = List.copyOf(sections);
        readings = List.copyOf(readings);
        ownMeasures = List.copyOf(ownMeasures);
        putRight = List.copyOf(putRight);
        unplaced = List.copyOf(unplaced);
        problems = List.copyOf(problems);
    }
}
