package org.stillroom.model.spec;

import java.util.Locale;

/** What an ingredient does in a drink. */
public enum Role {
    /** A strong spirit that carries the drink. */
    SPIRIT,
    /** Wine, fortified or aromatised wine. */
    WINE,
    /** Beer or cider. */
    BEER,
    /** A sweetened spirit. */
    LIQUEUR,
    /** Sugar, syrup, honey. */
    SWEET,
    /** Sour juice or acid. */
    SOUR,
    /** Bitters and bitter extracts. */
    BITTER,
    /** Other juices and fruit. */
    FRUIT,
    /** Water, soda, tea, coffee. */
    DILUTION,
    /** Milk, cream, egg. */
    RICH,
    /** Spices, herbs, flower waters, peel. */
    AROMATIC,
    /** Ice. */
    ICE,
    /** Colour and finings. */
    COLOUR,
    /** Anything else, or unknown. */
    OTHER;

    /** Returns the role of this word, in any case. */
    public static java.util.Optional<Role> of(String word) {
        return java.util.stream.Stream.of(values())
                .filter(r -> r.word().equals(word.strip().toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    /** Returns the word that files and commands use. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
