package org.stillroom.inquiry;

import org.stillroom.model.spec.Version;
import org.stillroom.model.text.Span;

/**
 * Something in one recipe that a person would have to look at.
 *
 * @param version the recipe
 * @param words where the words stand
 * @param read how they are read, or empty where they are not
 * @param reason what is doubtful
 * @param sure the chance that the reading is right, 0 to 1
 * @param gain what an answer to this one alone is expected to put right, in parts of a drink
 * @param habit what other questions of the book would be answered alike; empty for none
 * @param sample whether only as many are asked as make a rule, because each is read right as far as
 *     its words go
 */
record OpenQuestion(
        Version version,
        Span words,
        String read,
        String reason,
        double sure,
        double gain,
        String habit,
        boolean sample) {

    /** Returns what answers are shared by: the book and the habit. */
    String shared() {
        return habit.isEmpty() ? "" : version.source().id() + '\n' + habit;
    }
}
