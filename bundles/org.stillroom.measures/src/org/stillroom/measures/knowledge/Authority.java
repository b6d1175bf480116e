package org.stillroom.measures.knowledge;

import java.util.Optional;
import java.util.OptionalInt;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.Size;

/**
 * One published statement about what a word of measure held.
 *
 * @param id its number in our tables, or file and line in the user's
 * @param word the canonical word
 * @param size a word about size that it speaks of
 * @param of what is measured (“powdered sugar”), or empty for any liquid
 * @param dimension volume or mass
 * @param content how much, if the statement gives a number
 * @param unitWords the amount as stated, in words (“1/2 us-fl-oz”)
 * @param place code of the place it holds for, or empty
 * @param from first year it speaks for
 * @param to last year it speaks for
 * @param trade bar, kitchen, pharmacy, distilling, law, reference, or empty
 * @param citation where it was published
 * @param shortName the work's short name for tables
 * @param role what it may be used for
 * @param group statements of one group are one witness
 * @param statement what it says, in our words or the user's
 * @param book id of the one source that it speaks for, or empty
 */
public record Authority(
        String id,
        String word,
        Optional<Size> size,
        String of,
        Dimension dimension,
        Optional<Content> content,
        String unitWords,
        String place,
        OptionalInt from,
        OptionalInt to,
        String trade,
        Citation citation,
        String shortName,
        Role role,
        String group,
        String statement,
        String book) {

    /**
     * An amount in millilitres or grams.
     *
     * @param low the least stated
     * @param likely the usual
     * @param high the most stated
     */
    public record Content(Rational low, Rational likely, Rational high) {

        /** Returns these times a number. */
        public Content times(Rational factor) {
            return new Content(low.times(factor), likely.times(factor), high.times(factor));
        }
    }

    /** What a statement may be used for. */
    public enum Role {
        /** Says what a measure held. */
        STATEMENT,
        /** Says so, but stands far from the others; it counts little. */
        OUTLIER,
        /** Was replaced by a later figure of the same authority; it is shown and does not count. */
        SUPERSEDED,
        /** Gives no number; it is shown. */
        NOTE,
        /** A known misprint or trap; it is shown as a warning and never used as a number. */
        WARNING,
        /** The user's own word that sets ours aside where it holds. */
        OVERRULE,
        /** A table of measures that one book prints; for that book it outranks everything. */
        OWN_TABLE
    }

    /** Tells whether the statement takes part in finding an amount, whatever the book. */
    public boolean counts() {
        return content.isPresent()
                && switch (role) {
                    case STATEMENT, OUTLIER, OVERRULE -> true;
                    case SUPERSEDED, NOTE, WARNING, OWN_TABLE -> false;
                };
    }

    /**
     * Returns this statement about a mass as one about a volume.
     *
     * @param density g/ml, more than 0
     */
    public Authority poured(Rational density) {
        return new Authority(
                id,
                word,
                size,
                of,
                Dimension.VOLUME,
                content.map(c -> c.times(Rational.ONE.dividedBy(density))),
                unitWords + " at " + density.toDouble() + " g/ml",
                place,
                from,
                to,
                trade,
                citation,
                shortName,
                role,
                group,
                statement,
                book);
    }

    /** Tells whether it speaks of a stuff, of a kind of it or of what it is a kind of. */
    public boolean isAbout(String thing) {
        return !of.isEmpty()
                && !thing.isEmpty()
                && ((" " + thing + " ").contains(" " + of + " ")
                        || (" " + of + " ").contains(" " + thing + " "));
    }
}
