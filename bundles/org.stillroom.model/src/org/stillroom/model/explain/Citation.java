package org.stillroom.model.explain;

/**
 * Where a figure or a statement was published.
 *
 * @param key short key of the work, or empty where there is none
 * @param work the work in words: author, title, place, year
 * @param status how well the figure is known
 */
public record Citation(String key, String work, Status status) {

    /** How a figure came to us. */
    public enum Status {
        /** Read in the primary text. */
        PRIMARY("read in the primary text"),
        /** Seen only in a secondary text. */
        SECONDARY("seen in a secondary text"),
        /** Exact arithmetic from a stated definition. */
        DERIVED("derived by exact arithmetic"),
        /** Believed right, without a text at hand. */
        MEMORY("from memory"),
        /** Said by the user of this library. */
        USER("from this library"),
        /** A known disagreement, misprint or trap. */
        DISPUTED("disputed or misprinted");

        private final String words;

        Status(String words) {
            this.words = words;
        }

        /** Returns the status in words for a reader. */
        public String words() {
            return words;
        }
    }
}
