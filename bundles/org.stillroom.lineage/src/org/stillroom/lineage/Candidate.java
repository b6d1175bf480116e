package org.stillroom.lineage;

import java.util.List;
import org.stillroom.model.spec.Version;

/**
 * An earlier version that a later one may have been taken from.
 *
 * @param parent the earlier version
 * @param support how likely it is the nearest source in this library, 0 to 1; the candidates of one
 *     version and the case of none of them sum to 1
 * @param cost edits that lead from it to the later version, weighted, in edits
 * @param copied whether the words themselves show it, not only that the later one names its source
 * @param nearVerbatim whether the later version is a reprint but for accidentals
 * @param reasons what speaks for it and against it, in words
 */
public record Candidate(
        Version parent,
        double support,
        double cost,
        boolean copied,
        boolean nearVerbatim,
        List<String> reasons) {

    /** Keeps the reasons as an unchangeable list. */
    public Candidate {
        reasons = List.copyOf(reasons);
    }
}
