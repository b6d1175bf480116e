package org.stillroom.reading.idiom;

import java.util.List;
import org.stillroom.model.assertion.Assertion;

/**
 * A habit that corrections of a book point to and that no rule covers yet.
 *
 * @param idiom the habit
 * @param evidence the corrections that say so
 * @param against how many decided lines say otherwise
 */
public record Proposal(Idiom idiom, List<Assertion> evidence, int against) {

    /** Keeps the evidence as an unchangeable list. */
    public Proposal {
        evidence = List.copyOf(evidence);
    }
}
