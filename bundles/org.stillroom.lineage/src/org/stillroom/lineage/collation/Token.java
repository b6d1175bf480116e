package org.stillroom.lineage.collation;

/**
 * A word of a recipe with what sort of word it is.
 *
 * @param kind its sort
 * @param value what is compared: the number, the canonical measure, the family of the ingredient,
 *     the verb’s base form, or the folded word
 */
public record Token(Kind kind, String value) {

    /** Sorts of words. */
    public enum Kind {
        /** An amount. */
        NUMBER(0.6, 0.35),
        /** A word of measure. */
        MEASURE(0.4, 0.4),
        /** An ingredient. */
        INGREDIENT(1.2, 0.6),
        /** Something that is done. */
        VERB(0.4, 0.5),
        /** A vessel. */
        VESSEL(0.5, 0.45),
        /** Ice. */
        ICE(0.3, 0.5),
        /** What is put on top or beside. */
        GARNISH(0.6, 0.45),
        /** Any other word. */
        WORD(0.15, 0.3),
        /** A mark between words. */
        MARK(0, 0.5);

        private final double weight;
        private final double usual;

        Kind(double weight, double usual) {
            this.weight = weight;
            this.usual = usual;
        }

        /** Returns what it costs to change, add or drop such a word, in edits. */
        public double weight() {
            return weight;
        }

        /**
         * Returns how often two independent recipes of one drink have the same such word at one
         * place, 0 to 1, as long as nothing is known of the drink.
         */
        public double usual() {
            return usual;
        }
    }

    /** Returns a common word. */
    public static Token word(String value) {
        return new Token(Kind.WORD, value);
    }
}
