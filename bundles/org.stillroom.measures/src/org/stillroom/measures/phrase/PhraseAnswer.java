package org.stillroom.measures.phrase;

import java.util.List;
import java.util.Optional;
import org.stillroom.measures.MeasureMeaning;
import org.stillroom.measures.knowledge.Dimension;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.source.Circumstances;

/** What a phrase of measure comes to in given circumstances. */
public sealed interface PhraseAnswer {

    /** Returns the phrase as it was asked. */
    String text();

    /** Returns the circumstances it was asked for. */
    Circumstances where();

    /** Returns why, one or two sentences. */
    String reason();

    /**
     * A number of measures.
     *
     * @param text the phrase
     * @param where the circumstances
     * @param phrase the phrase taken apart
     * @param meaning what one such measure meant, with its authorities
     * @param amount the whole amount in millilitres or grams, where there is one
     * @param reason why
     */
    record Quantity(
            String text,
            Circumstances where,
            MeasurePhrase phrase,
            MeasureMeaning meaning,
            Optional<Estimate> amount,
            String reason)
            implements PhraseAnswer {

        /** Returns volume or mass, where there is an amount. */
        public Optional<Dimension> dimension() {
            return meaning instanceof MeasureMeaning.Measured m
                    ? Optional.of(m.dimension())
                    : Optional.empty();
        }
    }

    /**
     * A strength; a degree of proof always has more than one reading.
     *
     * @param text the phrase
     * @param where the circumstances
     * @param readings what it may mean, the likeliest first
     * @param warnings misprints and disagreements that a reader must know of
     * @param reason why
     */
    record Strength(
            String text,
            Circumstances where,
            List<StrengthReading> readings,
            List<String> warnings,
            String reason)
            implements PhraseAnswer {

        /** Keeps the lists unchangeable. */
        public Strength {
            readings = List.copyOf(readings);
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * One reading of a strength.
     *
     * @param scale the scale (“British proof (Sikes)”)
     * @param strength by volume at 20 °C, 0 to 1
     * @param share its probability, 0 to 1
     * @param source who defines the scale
     */
    record StrengthReading(String scale, double strength, double share, String source) {}

    /**
     * The strength of a syrup.
     *
     * @param text the phrase
     * @param where the circumstances
     * @param readings what it may mean, the likeliest first
     * @param warnings misprints and disagreements that a reader must know of
     * @param reason why
     */
    record Syrup(
            String text,
            Circumstances where,
            List<SyrupReading> readings,
            List<String> warnings,
            String reason)
            implements PhraseAnswer {

        /** Keeps the lists unchangeable. */
        public Syrup {
            readings = List.copyOf(readings);
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * One reading of a syrup's strength.
     *
     * @param scale the scale with its constant (“Baumé, modulus 144”)
     * @param gravity specific gravity
     * @param brix per cent of sugar by mass
     * @param gramsPerLitre sugar in a litre
     * @param source who defines the scale
     */
    record SyrupReading(
            String scale, double gravity, double brix, double gramsPerLitre, String source) {}

    /**
     * No answer.
     *
     * @param text the phrase
     * @param where the circumstances
     * @param reason why there is none
     * @param nearest what would have been understood, the nearest first
     */
    record None(String text, Circumstances where, String reason, List<String> nearest)
            implements PhraseAnswer {

        /** Keeps the list unchangeable. */
        public None {
            nearest = List.copyOf(nearest);
        }
    }
}
