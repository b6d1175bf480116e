package org.stillroom.drift.composition;

import java.util.Set;
import org.stillroom.model.spec.Concept;
import org.stillroom.model.spec.Role;
import org.stillroom.model.spec.SpecLine;

/**
 * What a line puts into the drink: “the juice of a lemon” is lemon juice, though it names a lemon.
 *
 * @param family id that versions are compared by
 * @param label its label for display
 * @param role what it does
 */
public record Stuff(String family, String label, Role role) {

    private static final String JUICE = "juice-of";
    private static final String ENDING = "-juice";

    /** Fruits whose juice is sour, by family. */
    private static final Set<String> SOUR = Set.of("lemon", "lime", "seville-orange", "citron");

    /** Returns what a line puts into the drink. */
    public static Stuff of(SpecLine line) {
        Concept c = line.ingredient();
        if (!line.line().measure().equals(JUICE) || c.family().endsWith(ENDING)) {
            return new Stuff(c.family(), c.label(), c.role());
        }
        Role role = SOUR.contains(c.family()) ? Role.SOUR : c.role();
        String label = c.label().endsWith("juice") ? c.label() : c.label() + " juice";
        return new Stuff(c.family() + ENDING, label, role);
    }
}
