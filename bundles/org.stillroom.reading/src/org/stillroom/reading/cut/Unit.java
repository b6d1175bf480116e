package org.stillroom.reading.cut;

import java.util.Optional;

/**
 * A stretch of a text that is dealt with as a whole, given by UTF-16 units.
 *
 * @param kind what it is
 * @param start the first unit inside
 * @param end the first unit after it
 * @param blankBefore whether an empty line stands before it
 * @param indent by how many blanks its lines are set in
 * @param score how much it reads like a recipe's body
 * @param head the title that it is or starts with
 */
record Unit(
        Kind kind,
        int start,
        int end,
        boolean blankBefore,
        int indent,
        BodyScore score,
        Optional<Head> head) {

    /** What a stretch of a text is by its looks. */
    enum Kind {
        /** A line that may be a title. */
        HEAD,
        /** A paragraph or list. */
        BODY,
        /** A page number, running head, rule or picture. */
        NOISE,
        /** A line of a table of contents or an index. */
        LISTING
    }
}
