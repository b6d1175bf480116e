package org.stillroom.measures.knowledge;

import java.util.Optional;
import org.stillroom.model.number.Rational;

/**
 * A word of measure in its canonical, singular form.
 *
 * @param word the word (“wineglass”)
 * @param dimension volume or mass; nothing for a share or an open amount
 * @param kind what sort of thing it is
 * @param scatter how far one such thing differs from the next, as a fraction, common practice
 * @param base another word whose unknown it shares, such as pint for quart
 * @param factor how many of the base it is
 * @param meaning a sentence for a reader, or empty
 */
public record MeasureWord(
        String word,
        Optional<Dimension> dimension,
        Kind kind,
        double scatter,
        Optional<String> base,
        Rational factor,
        String meaning) {

    /** What sort of thing a measure is. */
    public enum Kind {
        /** Defined by law or standard. */
        LEGAL,
        /** Fixed by the custom of a trade. */
        CUSTOMARY,
        /** A glass, cup or bottle. */
        VESSEL,
        /** A spoon. */
        SPOON,
        /** Drops, dashes, splashes. */
        DROP,
        /** A natural or counted thing. */
        THING,
        /** What goes into the drink, counted: an egg, its white, a clove. */
        STUFF,
        /** What a fruit gives. */
        FRUIT,
        /** A share of the whole. */
        SHARE,
        /** As much as fills, tops or pleases. */
        OPEN
    }
}
