package org.stillroom.ingredients;

import java.util.List;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.spec.Role;

/**
 * One meaning of an ingredient’s name, valid in a place and a period.
 *
 * @param id slug that never changes (“gum-syrup-plain”)
 * @param label the preferred label
 * @param kind what sort of thing it is
 * @param broader ids of the senses that it is a kind of, nearest first
 * @param close ids of senses that are easily taken for it
 * @param validity when and where it existed
 * @param scope what it was, in a sentence, or empty
 * @param properties strength, sugar, acid, density, each where it is known
 * @param allergens what is known of its allergens
 * @param hazards rules and dangers that go with it
 * @param source who says so
 */
public record Sense(
        String id,
        String label,
        IngredientKind kind,
        List<String> broader,
        List<String> close,
        Validity validity,
        String scope,
        Properties properties,
        Allergens allergens,
        List<Hazard> hazards,
        Citation source) {

    /** Keeps the lists unchangeable. */
    public Sense {
        broader = List.copyOf(broader);
        close = List.copyOf(close);
        hazards = List.copyOf(hazards);
    }

    /** Returns what it does in a drink. */
    public Role role() {
        return kind.role();
    }
}
