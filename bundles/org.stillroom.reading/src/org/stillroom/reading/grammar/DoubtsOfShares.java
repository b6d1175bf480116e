package org.stillroom.reading.grammar;

import java.util.List;
import java.util.Optional;
import org.stillroom.model.reading.Doubt;
import org.stillroom.model.reading.ReadingLine;

/** The doubt whether the shares of a recipe add up to the whole. */
public final class DoubtsOfShares {

    private DoubtsOfShares() {}

    /** Returns the doubt about the shares of these lines, where they do not add up. */
    public static Optional<Doubt> of(List<ReadingLine> lines) {
        return ShareCheck.check(lines);
    }

    /** Tells whether a doubt is about shares. */
    public static boolean is(Doubt doubt) {
        return doubt.reason().startsWith(ShareCheck.REASON);
    }
}
