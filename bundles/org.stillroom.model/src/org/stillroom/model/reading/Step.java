package org.stillroom.model.reading;

import java.util.List;
import org.stillroom.model.text.Span;

/**
 * One thing to do.
 *
 * @param verb the verb in its base form (“shake”)
 * @param span where the verb stands
 * @param lines which lines it applies to, from 0
 * @param detail the rest of the phrase in short (“into a cocktail glass”, “two minutes”), or empty
 */
public record Step(String verb, Span span, List<Integer> lines, String detail) {

    /** Keeps the lines as an unchangeable list. */
    public Step {
        lines = List.copyOf(lines);
    }
}
