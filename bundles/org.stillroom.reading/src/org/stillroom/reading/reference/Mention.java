package org.stillroom.reading.reference;

import java.util.Optional;

/**
 * Words that send the reader to another recipe.
 *
 * @param kind how the other recipe is named
 * @param name the title or number, or empty
 * @param back how many recipes back, for {@link Kind#BEFORE}
 * @param start where the words start, by folded characters of the body
 * @param end where they end
 * @param whole whether the other recipe is taken over whole, not in one of its steps alone
 */
record Mention(Kind kind, Optional<String> name, int back, int start, int end, boolean whole) {

    /** How the other recipe is named. */
    enum Kind {
        TITLE,
        NUMBER,
        BEFORE,
        SEVERAL
    }
}
