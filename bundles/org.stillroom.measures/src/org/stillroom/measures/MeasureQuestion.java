package org.stillroom.measures;

import java.util.Optional;
import org.stillroom.model.reading.Size;
import org.stillroom.model.source.Circumstances;

/**
 * A question after one word of measure.
 *
 * @param word the word, as printed or canonical
 * @param size a word about size beside it
 * @param matter whether a liquid or a solid is measured
 * @param thing what is measured, in lower case (“powdered sugar”, “lemon”), or empty
 * @param where where, when and for whose work it was written
 */
public record MeasureQuestion(
        String word, Optional<Size> size, Matter matter, String thing, Circumstances where) {

    /** Returns a question after a word of which nothing else is said. */
    public static MeasureQuestion of(String word, Circumstances where) {
        return new MeasureQuestion(word, Optional.empty(), Matter.UNKNOWN, "", where);
    }

    /** Returns this question for a stuff. */
    public MeasureQuestion about(Matter newMatter, String newThing) {
        return new MeasureQuestion(word, size, newMatter, newThing, where);
    }

    /** Returns this question after another word. */
    MeasureQuestion withWord(String newWord) {
        return new MeasureQuestion(newWord, size, matter, thing, where);
    }

    /** Returns this question without a word about size. */
    MeasureQuestion withoutSize() {
        return new MeasureQuestion(word, Optional.empty(), matter, thing, where);
    }
}
