package org.stillroom.model.reading;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A word about size beside a measure or a counted thing. */
public enum Size {
    /** Small, little. */
    SMALL,
    /** Medium, middling, moderate. */
    MEDIUM,
    /** Large, big, great. */
    LARGE,
    /** Heaped, heaping, rounded. */
    HEAPING,
    /** Level, even. */
    LEVEL,
    /** Scant, not quite full. */
    SCANT,
    /** Full, good, ample. */
    FULL;

    /** Returns the size of this canonical word. */
    public static Optional<Size> of(String word) {
        return Stream.of(values()).filter(s -> s.word().equals(word)).findFirst();
    }

    /** Returns the word that files and commands use. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
