package org.stillroom.ingredients.spelling;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Letters that type or a scanner takes for others, from {@code misprints.csv}.
 *
 * @param pairs what was printed, and what was meant
 */
public record Misprints(List<Pair> pairs) {

    private static final int MOST = 60;

    /** Keeps the list unchangeable. */
    public Misprints {
        pairs = List.copyOf(pairs);
    }

    /**
     * Letters and those that were meant.
     *
     * @param printed what stands there
     * @param meant what was meant
     */
    public record Pair(String printed, String meant) {}

    /** Returns keys that may have been meant: one slip mended, or every slip of one sort. */
    public Set<String> mended(String key) {
        Set<String> mended = new LinkedHashSet<>();
        for (Pair pair : pairs) {
            int at = key.indexOf(pair.printed());
            int last = -1;
            while (at >= 0 && mended.size() < MOST) {
                last = at;
                mended.add(
                        key.substring(0, at)
                                + pair.meant()
                                + key.substring(at + pair.printed().length()));
                at = key.indexOf(pair.printed(), at + 1);
            }
            if (last >= 0) {
                mended.add(key.replace(pair.printed(), pair.meant()));
            }
        }
        mended.remove(key);
        return mended;
    }
}
