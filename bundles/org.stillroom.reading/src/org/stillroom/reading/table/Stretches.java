package org.stillroom.reading.table;

import java.util.List;
import org.stillroom.model.text.Span;

/** Stretches of a text that do not overlap, to be asked for a place; the time is logarithmic. */
final class Stretches {

    private final int[] starts;
    private final int[] ends;

    Stretches(List<Span> spans) {
        List<Span> sorted = spans.stream().sorted().toList();
        starts = sorted.stream().mapToInt(Span::start).toArray();
        ends = sorted.stream().mapToInt(Span::end).toArray();
    }

    /** Tells whether a place lies in one of them. */
    boolean holds(int place) {
        int found = java.util.Arrays.binarySearch(starts, place);
        int at = found >= 0 ? found : -found - 2;
        return at >= 0 && place < ends[at];
    }
}
