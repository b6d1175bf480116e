package org.stillroom.measures.book;

import java.util.Optional;

/**
 * One statement of a book about its own measures: so many of one are so many of another.
 *
 * @param one the side that is told of
 * @param other the side that it is told by
 * @param of the stuff that it speaks of, in lower case, or empty for any liquid
 * @param file the source's id
 * @param line the line of the source, from 1
 * @param page the printed page, where it is known
 * @param words the statement as printed, white space folded
 */
public record Equation(
        Side one,
        Side other,
        String of,
        String file,
        int line,
        Optional<String> page,
        String words) {

    /** Returns where it stands, in words: “p. 12, line 340”, or “line 340”. */
    public String where() {
        return page.map(p -> "p. " + p + ", ").orElse("") + "line " + line;
    }
}
