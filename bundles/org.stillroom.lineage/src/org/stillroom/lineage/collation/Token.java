package org.stillroom.lineage.collation;

/**
 * A word of a recipe with what sort of word it is.
 *
 * @param kind its sort
 * @param value what is compared: the number, the canonical measure, the family of the ingredient,
 *     the verb’s base form, or the folded word
 */
public record Token(Kind kind, String value) {

    /** Sorts of words, with what it costs to add or drop one, in edits. */
    public enum Kind {
        /** An amount. */
        NUMBER(0.6),
        /** A word of measure. */
        MEASURE(0.4),
        /** An ingredient. */
        INGREDIENT(1.2),
        /** Something that is done. */
        VERB(0.4),
        /** A vessel. */
        VESSEL(0.5),
        /** Any other word. */
        WORD(0.15);

        private final double weight;

        Kind(double weight) {
            this.weight = weight;
        }

        /** Returns what it costs to add or drop such a word, in edits. */
        public double weight() {
            return weight;
        }
    }
}
