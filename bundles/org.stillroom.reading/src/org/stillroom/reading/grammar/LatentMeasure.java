package org.stillroom.reading.grammar;

import java.util.List;

/**
 * Finds a measure that was taken for the first words of a name: “1 pitcher ice water”, “half a hot
 * whiskey-glass of water”.
 *
 * <p>Words of measure that need “of” after them are left to the name at first; what the name turns
 * out to be then decides.
 */
final class LatentMeasure {

    private final Vocabulary words;
    private final Passage p;
    private final NameParser names;

    LatentMeasure(Vocabulary words, Passage passage, NameParser names) {
        this.words = words;
        this.p = passage;
        this.names = names;
    }

    /** Takes the measure out of a draft's name, if it is there; tells whether it was. */
    boolean find(Draft d, Name name) {
        return beforeOf(d, name) || first(d, name);
    }

    /** A vessel before “of” measures what comes after it. */
    private boolean beforeOf(Draft d, Name name) {
        for (int j = name.first() + 1; j < name.last(); j++) {
            String vessel = p.word(j - 1);
            boolean measures =
                    words.has("vessel", vessel)
                            || words.has("vessel-end", vessel)
                            || words.has("measure", vessel);
            if (words.has("of", p.word(j)) && measures) {
                int from = name.first();
                while (from < j - 1 && isAdjective(from)) {
                    from++;
                }
                take(d, p.name(from, j), new Name.Piece(j + 1, name.last() + 1));
                d.hints.add(Hint.OPEN_MEASURE);
                return true;
            }
        }
        return false;
    }

    private boolean isAdjective(int i) {
        return words.has("vessel-adj", p.word(i))
                || words.has("size", p.word(i))
                || words.has("hot", p.word(i))
                || words.has("cold", p.word(i));
    }

    /** A word of measure before a known name of something poured or heaped measures it. */
    private boolean first(Draft d, Name name) {
        int from = name.first();
        boolean counted = words.has("countable", p.word(name.last())) || p.at(from + 1).glued();
        if (counted || name.last() <= from || !d.amount.quantity().isPresent()) {
            return false;
        }
        PhraseTable.Match match = words.at("measure", p, from).orElse(null);
        if (match == null || match.next() > name.last()) {
            return false;
        }
        boolean rest = names.knownEnd(match.next(), name.last() + 1).isPresent();
        if (rest) {
            take(d, match.value(), new Name.Piece(match.next(), name.last() + 1));
        }
        return rest;
    }

    private static void take(Draft d, String measure, Name.Piece rest) {
        d.measure = measure.replace('-', ' ');
        d.pieces.clear();
        d.pieces.addAll(List.of(rest));
    }
}
