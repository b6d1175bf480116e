package org.stillroom.reading.grammar;

import java.util.List;
import java.util.Set;

/**
 * A noun phrase that names an ingredient.
 *
 * @param pieces stretches of tokens that make the name, in order
 * @param start first token, with words that are left out of the name
 * @param next the token after the phrase
 * @param preparations words about preparation
 * @param senses what the thesaurus says it may mean
 * @param known whether its last words are known at all
 * @param hints what to know about how it was read
 */
record Name(
        List<Piece> pieces,
        int start,
        int next,
        List<String> preparations,
        List<String> senses,
        boolean known,
        Set<Hint> hints) {

    /** Tokens from one, to before another. */
    record Piece(int from, int to) {}

    int first() {
        return pieces.get(0).from();
    }

    int last() {
        return pieces.get(pieces.size() - 1).to() - 1;
    }

    Name with(List<Piece> newPieces, int later) {
        return new Name(newPieces, start, later, preparations, senses, known, hints);
    }
}
