package org.stillroom.ingredients;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.stillroom.model.explain.Citation;

/**
 * One name of a sense.
 *
 * @param text the words
 * @param kind whether it is the display name, another name or a misspelling
 * @param language language tag by BCP 47 (“en”, “la”)
 * @param validity when and where the name has this sense
 * @param source who says so
 */
public record Label(String text, Kind kind, String language, Validity validity, Citation source) {

    /** SKOS’s three sorts of label. */
    public enum Kind {
        /** The one name that is shown. */
        PREFERRED,
        /** Another right name. */
        ALTERNATIVE,
        /** A misspelling or a trade name: found, never shown. */
        HIDDEN;

        /** Returns the word that knowledge files use. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** Returns the kind of this word. */
        public static Optional<Kind> of(String word) {
            String wanted = word.strip().toLowerCase(Locale.ROOT);
            return Stream.of(values()).filter(k -> k.word().equals(wanted)).findFirst();
        }
    }
}
