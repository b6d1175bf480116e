package org.stillroom.ingredients.knowledge;

import java.util.List;
import org.stillroom.ingredients.IngredientKind;
import org.stillroom.ingredients.Validity;
import org.stillroom.model.explain.Citation;

/**
 * A sense as a row states it, before anything is taken over from broader senses.
 *
 * @param id slug
 * @param label preferred label
 * @param kind what sort of thing it is
 * @param broader ids of broader senses
 * @param close ids of senses easily taken for it
 * @param validity when and where it existed
 * @param scope what it was
 * @param source who says so
 */
public record SenseRow(
        String id,
        String label,
        IngredientKind kind,
        List<String> broader,
        List<String> close,
        Validity validity,
        String scope,
        Citation source) {

    /** Keeps the lists unchangeable. */
    public SenseRow {
        broader = List.copyOf(broader);
        close = List.copyOf(close);
    }

    /** Returns the row with other broader senses. */
    public SenseRow withBroader(List<String> others) {
        return new SenseRow(id, label, kind, others, close, validity, scope, source);
    }

    /** Returns the row with other close senses. */
    public SenseRow withClose(List<String> others) {
        return new SenseRow(id, label, kind, broader, others, validity, scope, source);
    }

    /** Returns the row with another preferred label. */
    public SenseRow withLabel(String other) {
        return new SenseRow(id, other, kind, broader, close, validity, scope, source);
    }
}
