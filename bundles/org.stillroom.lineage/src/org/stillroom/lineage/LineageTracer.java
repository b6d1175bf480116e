package org.stillroom.lineage;

import org.stillroom.lineage.parents.Tracing;
import org.stillroom.model.progress.Progress;

/**
 * Ranks for each version of a drink the earlier versions that it may have been taken from.
 *
 * <p>Typed words are aligned, the changes counted in edits, and the candidates shown with their
 * margin; where two are within one edit they are tied. The same drink gives the same lineage in any
 * order of its versions.
 */
public final class LineageTracer {

    /** Traces a drink. */
    public Lineage trace(Drink drink, Progress progress) {
        return new Tracing(drink, progress).trace();
    }
}
