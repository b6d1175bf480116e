package org.stillroom.model.reading;

import java.util.List;

/**
 * How sure a reading is, and why it is not surer.
 *
 * @param probability 0 to 1
 * @param reasons what lowers it, in words; empty where nothing does
 */
public record Confidence(double probability, List<String> reasons) {

    /** Keeps the reasons as an unchangeable list and refuses a probability outside 0 to 1. */
    public Confidence {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException("A probability lies in 0–1, not " + probability);
        }
        reasons = List.copyOf(reasons);
    }

    /** Returns a confidence with nothing to lower it. */
    public static Confidence of(double probability) {
        return new Confidence(probability, List.of());
    }
}
