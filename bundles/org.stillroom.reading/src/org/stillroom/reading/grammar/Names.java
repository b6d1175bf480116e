package org.stillroom.reading.grammar;

import java.util.List;
import java.util.Optional;

/** Knows the names of ingredients: the grammar’s view of a thesaurus. */
interface Names {

    /**
     * A name that the thesaurus knows.
     *
     * @param next the token after it
     * @param senses what it may mean, likeliest first
     */
    record Known(int next, List<String> senses) {}

    /** A thesaurus that knows nothing. */
    Names NONE =
            new Names() {
                @Override
                public Optional<Known> longest(Passage passage, int index) {
                    return Optional.empty();
                }

                @Override
                public boolean knowsWord(String word) {
                    return false;
                }
            };

    /** Returns the longest known name that starts at a token. */
    Optional<Known> longest(Passage passage, int index);

    /** Tells whether a word is part of any name. */
    boolean knowsWord(String word);
}
