package org.stillroom.reading.cut;

import java.util.List;
import org.stillroom.model.source.Section;
import org.stillroom.model.source.Witness;

/**
 * A source cut into its recipes and the rest.
 *
 * <p>Every code point that is not white space lies in exactly one witness or section.
 *
 * @param witnesses the recipes, in the order of the text
 * @param sections everything else, in the order of the text
 */
public record Cut(List<Witness> witnesses, List<Section> sections) {

    /** Keeps the lists unchangeable. */
    public Cut {
        witnesses = List.copyOf(witnesses);
        sections = List.copyOf(sections);
    }
}
