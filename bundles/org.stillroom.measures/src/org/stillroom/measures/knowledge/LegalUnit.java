package org.stillroom.measures.knowledge;

import java.util.List;
import java.util.OptionalInt;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.number.Rational;

/**
 * A unit that a law or a standard defines exactly.
 *
 * @param code its own short name (“us-gill”)
 * @param word the word of measure that it defines (“gill”), or empty
 * @param system the system that it belongs to
 * @param dimension volume or mass
 * @param amount exactly how much, in millilitres or grams
 * @param places codes of the places where it held; empty for everywhere
 * @param from first year, if it is known
 * @param to last year, if it ended
 * @param id the statement's number in our tables, or empty
 * @param citation where it is published
 * @param statement the definition in our words
 */
public record LegalUnit(
        String code,
        String word,
        MeasureSystem system,
        Dimension dimension,
        Rational amount,
        List<String> places,
        OptionalInt from,
        OptionalInt to,
        String id,
        Citation citation,
        String statement) {

    /** Keeps the places unchangeable. */
    public LegalUnit {
        places = List.copyOf(places);
    }
}
