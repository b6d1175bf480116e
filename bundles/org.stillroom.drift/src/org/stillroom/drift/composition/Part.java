package org.stillroom.drift.composition;

import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.spec.Role;

/**
 * One ingredient of a composition.
 *
 * @param family id of the sense that versions are compared by
 * @param label its label for display
 * @param role what it does in the drink
 * @param amount its amount, in millilitres or in shares, the same for all parts of a composition
 */
public record Part(String family, String label, Role role, Estimate amount) {

    Part plus(Part other) {
        return new Part(family, label, role, amount.plus(other.amount));
    }
}
