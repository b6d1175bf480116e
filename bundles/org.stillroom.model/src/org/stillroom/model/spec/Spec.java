package org.stillroom.model.spec;

import java.util.List;
import java.util.Optional;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.reading.Reading;

/**
 * A reading with its measures resolved for its place, date and trade.
 *
 * @param reading what the words say
 * @param lines every line that makes the drink, inherited ones first
 * @param system the system of measures, in words (“US customary”)
 * @param systemReason why that system, a sentence
 * @param volume volume of the liquid lines together in millilitres, ice not counted, where it can be
 *     given
 * @param strength alcohol by volume before ice, as a fraction 0 to 1, where it can be given
 * @param sugar sugar in grams in the whole, where it can be given
 * @param cautions warnings, gravest first
 */
public record Spec(
        Reading reading,
        List<SpecLine> lines,
        String system,
        String systemReason,
        Optional<Estimate> volume,
        Optional<Estimate> strength,
        Optional<Estimate> sugar,
        List<Caution> cautions) {

    /** Keeps the lists unchangeable. */
    public Spec {
        lines = List.copyOf(lines);
        cautions = List.copyOf(cautions);
    }
}
