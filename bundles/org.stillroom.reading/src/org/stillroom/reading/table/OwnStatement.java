package org.stillroom.reading.table;

import org.stillroom.measures.book.Equation;
import org.stillroom.model.text.Span;

/**
 * What a book says of one of its measures, with the place where it says so.
 *
 * @param equation so many of one are so many of another
 * @param span where it stands: the whole row of a table, or the words of a sentence
 * @param row whether it is a row of a table
 */
public record OwnStatement(Equation equation, Span span, boolean row) {}
