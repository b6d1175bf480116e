package org.stillroom.reading.grammar;

/**
 * The smallest piece of a recipe's words that the grammar looks at.
 *
 * @param type what sort of piece it is
 * @param text its folded form, without hyphens
 * @param from first unit in the folded text
 * @param to first unit after it
 * @param glued whether a hyphen ties it to the token before
 * @param spaced whether white space stands before it
 * @param capital whether it is printed with a capital
 */
record Token(
        Type type, String text, int from, int to, boolean glued, boolean spaced, boolean capital) {

    /** Sorts of tokens. */
    enum Type {
        /** Letters, perhaps with digits among them. */
        WORD,
        /** Digits, perhaps with a decimal point. */
        NUMBER,
        /** A single character that is a fraction. */
        FRACTION,
        /** An apothecaries' sign. */
        SIGN,
        /** A mark of punctuation. */
        MARK,
        /** The end of a printed line that ends a phrase. */
        BREAK,
        /** After the last token. */
        END
    }

    boolean is(String word) {
        return text.equals(word);
    }

    boolean isWord() {
        return type == Type.WORD;
    }

    boolean isMark(char mark) {
        return type == Type.MARK && text.charAt(0) == mark;
    }

    /** Tells whether a sentence or a printed line certainly ends here. */
    boolean ends() {
        return type == Type.BREAK || type == Type.END;
    }

    /** Tells whether it is a figure or a fraction. */
    boolean isNumber() {
        return type == Type.NUMBER || type == Type.FRACTION;
    }
}
