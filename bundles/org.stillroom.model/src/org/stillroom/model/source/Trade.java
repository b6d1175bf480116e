package org.stillroom.model.source;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** For whose work a source was written. */
public enum Trade {
    /** Bartenders and hotels. */
    BAR,
    /** Households and cooks. */
    KITCHEN,
    /** Pharmacists and physicians. */
    PHARMACY,
    /** Distillers, cordial makers and vintners. */
    DISTILLING;

    /** Returns the trade of this word, in any case. */
    public static Optional<Trade> of(String word) {
        return Stream.of(values())
                .filter(t -> t.word().equals(word.strip().toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    /** Returns the word that files and commands use: bar, kitchen, pharmacy, distilling. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
