package org.stillroom.measures.knowledge;

/** What an amount is an amount of. */
public enum Dimension {
    /** A volume, given in millilitres. */
    VOLUME("ml"),
    /** A mass, given in grams. */
    MASS("g");

    private final String symbol;

    Dimension(String symbol) {
        this.symbol = symbol;
    }

    /** Returns the symbol of the unit in which amounts are given: ml or g. */
    public String symbol() {
        return symbol;
    }
}
