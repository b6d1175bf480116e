package org.stillroom.model.spec;

import java.util.List;
import java.util.Optional;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.ReadingLine;

/**
 * A line with its measure resolved.
 *
 * @param line what the words say
 * @param ingredient what the name meant there and then
 * @param millilitres its volume in millilitres, where one can be given
 * @param grams its mass in grams, where the words give a mass or one can be given
 * @param share its share of the whole as an exact number, where the words give shares
 * @param candidates other senses that the name may have, likeliest first
 * @param why how the amount came about
 */
public record SpecLine(
        ReadingLine line,
        Concept ingredient,
        Optional<Estimate> millilitres,
        Optional<Estimate> grams,
        Optional<Rational> share,
        List<Concept> candidates,
        Explanation why) {

    /** Keeps the candidates as an unchangeable list. */
    public SpecLine {
        candidates = List.copyOf(candidates);
    }
}
