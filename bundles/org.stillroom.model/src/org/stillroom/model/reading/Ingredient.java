package org.stillroom.model.reading;

import java.util.List;
import org.stillroom.model.text.Span;

/**
 * An ingredient as a line names it.
 *
 * @param name its words as printed, lower case, white space folded (“old tom gin”)
 * @param span where they stand; for broken words, their hull
 * @param senses ids of what it may mean in the thesaurus, likeliest first; empty where unknown
 * @param preparations words about how it is prepared (“grated”, “dissolved in water”)
 */
public record Ingredient(String name, Span span, List<String> senses, List<String> preparations) {

    /** Keeps the lists unchangeable. */
    public Ingredient {
        senses = List.copyOf(senses);
        preparations = List.copyOf(preparations);
    }
}
