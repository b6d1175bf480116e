package org.stillroom.measures.system;

import org.stillroom.measures.knowledge.MeasureSystem;

/**
 * The user's decision that one system is meant.
 *
 * @param level for how much it was decided; the narrowest wins
 * @param system the system
 * @param who who decided, for the explanation
 */
public record SystemOverride(Level level, MeasureSystem system, String who) {

    /** For how much a decision holds, the widest first. */
    public enum Level {
        /** The whole library. */
        LIBRARY,
        /** One source. */
        SOURCE,
        /** One recipe. */
        RECIPE,
        /** One line. */
        LINE;

        /** Returns the level in words. */
        public String words() {
            return "the " + name().toLowerCase(java.util.Locale.ROOT);
        }
    }
}
