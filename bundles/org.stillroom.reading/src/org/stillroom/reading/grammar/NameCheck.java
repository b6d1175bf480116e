package org.stillroom.reading.grammar;

/**
 * Notes what is odd about a line's name: a measure inside it, or a word that nobody knows.
 *
 * <p>A reading with such a name may still be right; it should not be held for certain.
 */
final class NameCheck {

    private final Vocabulary words;
    private final Passage p;
    private final Names names;

    NameCheck(Vocabulary words, Passage passage, Names names) {
        this.words = words;
        this.p = passage;
        this.names = names;
    }

    void note(Draft d) {
        for (Name.Piece piece : d.pieces) {
            int known = piece.from();
            for (int i = piece.from(); i < piece.to(); i++) {
                known = Math.max(known, names.longest(p, i).map(Names.Known::next).orElse(i));
                if (i < known) {
                    continue;
                }
                boolean measure = words.at("measure", p, i).isPresent() && i + 1 < piece.to();
                if (measure) {
                    d.hints.add(Hint.MEASURE_IN_NAME);
                }
                if (isStrange(i)) {
                    d.hints.add(Hint.STRANGE_WORD);
                }
            }
        }
    }

    /** Proper names are printed with a capital; other unknown words may be slips. */
    private boolean isStrange(int i) {
        Token t = p.at(i);
        boolean plain = t.isWord() && !t.capital() && !t.glued() && t.text().length() > 2;
        return plain
                && !p.at(i + 1).glued()
                && !words.knows(t.text())
                && !names.knowsWord(t.text())
                && !names.knowsWord(BareNames.singular(t.text()));
    }
}
