package org.stillroom.reading.anchor;

import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.explain.Problem;

/**
 * A decision that stands but could not be carried out on the text as it is now.
 *
 * @param decision the decision
 * @param problem why, and what would help
 */
public record Unplaced(Assertion decision, Problem problem) {}
