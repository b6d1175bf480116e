package org.stillroom.measures;

import java.util.List;
import java.util.Optional;
import org.stillroom.measures.knowledge.Dimension;
import org.stillroom.measures.system.SystemPosterior;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.number.Rational;

/** What a word of measure meant in given circumstances. */
public sealed interface MeasureMeaning {

    /** Returns the canonical word, or the printed one where it is not known. */
    String word();

    /** Returns why, one sentence. */
    String reason();

    /** Returns the reason with what it rests on. */
    Explanation explanation();

    /** Returns the amount of one such measure in millilitres, where it is a volume. */
    default Optional<Estimate> millilitres() {
        return this instanceof Measured m && m.dimension() == Dimension.VOLUME
                ? Optional.of(m.one())
                : Optional.empty();
    }

    /** Returns the amount of one such measure in grams, where it is a mass. */
    default Optional<Estimate> grams() {
        return this instanceof Measured m && m.dimension() == Dimension.MASS
                ? Optional.of(m.one())
                : Optional.empty();
    }

    /**
     * A measure that holds an amount.
     *
     * @param word the canonical word
     * @param dimension volume or mass
     * @param one the amount of one, in millilitres or grams
     * @param exact the exact amount, where one legal definition alone is meant
     * @param authorities who says what, the weightiest first
     * @param answers the amounts that compete, the likeliest first
     * @param systems how likely each system of measures is
     * @param reason why, one sentence
     * @param warnings traps and disagreements that a reader must know of
     * @param explanation the reason with what it rests on
     */
    record Measured(
            String word,
            Dimension dimension,
            Estimate one,
            Optional<Rational> exact,
            List<WeightedAuthority> authorities,
            List<Answer> answers,
            SystemPosterior systems,
            String reason,
            List<String> warnings,
            Explanation explanation)
            implements MeasureMeaning {

        /** Keeps the lists unchangeable. */
        public Measured {
            authorities = List.copyOf(authorities);
            answers = List.copyOf(answers);
            warnings = List.copyOf(warnings);
        }

        /** Returns the amount of so many; all lines that share the measure share its unknown. */
        public Estimate times(Rational number) {
            return one.times(number);
        }
    }

    /**
     * A word that asks for no amount of its own: a share, as much as fills the glass.
     *
     * @param word the canonical word
     * @param reason why no amount is given, one sentence
     */
    record Open(String word, String reason) implements MeasureMeaning {
        @Override
        public Explanation explanation() {
            return Explanation.of(reason);
        }
    }

    /**
     * A measure about which there are only warnings, or nothing at all.
     *
     * @param word the canonical word
     * @param reason why no amount is given, one sentence
     * @param warnings what is known to be wrong
     * @param explanation the reason with what it rests on
     */
    record Unmeasured(String word, String reason, List<String> warnings, Explanation explanation)
            implements MeasureMeaning {

        /** Keeps the warnings unchangeable. */
        public Unmeasured {
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * A word that is no measure known here.
     *
     * @param word the word as printed
     * @param nearest known words that resemble it, the nearest first
     */
    record Unknown(String word, List<String> nearest) implements MeasureMeaning {

        /** Keeps the list unchangeable. */
        public Unknown {
            nearest = List.copyOf(nearest);
        }

        @Override
        public String reason() {
            String near =
                    nearest.isEmpty()
                            ? ""
                            : (nearest.size() > 1
                                            ? " The nearest known are "
                                            : " The nearest known is ")
                                    + String.join(", ", nearest)
                                    + ".";
            return "“"
                    + word
                    + "” is no measure known here."
                    + near
                    + " A row in knowledge/measures.csv can define it.";
        }

        @Override
        public Explanation explanation() {
            return Explanation.of(reason());
        }
    }

    /**
     * One of several amounts that compete.
     *
     * @param amount millilitres or grams
     * @param share its probability, 0 to 1
     * @param who the weightiest authority for it, or the system
     */
    record Answer(double amount, double share, String who) {}
}
