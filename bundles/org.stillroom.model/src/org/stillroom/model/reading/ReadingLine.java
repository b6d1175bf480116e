package org.stillroom.model.reading;

import java.util.List;
import java.util.Optional;
import org.stillroom.model.text.Span;

/**
 * One ingredient of a recipe with its amount, as the words give it.
 *
 * @param text the words as printed
 * @param span where they stand
 * @param kind what part it plays
 * @param amount how much
 * @param measure the canonical singular word of measure (“jigger”), or the word as printed
 * @param size a word about size
 * @param ingredient the ingredient, unless the words name none
 * @param amountSpan where number and measure stand, if they are stated
 * @param confidence how sure the reading is
 * @param alternatives other readings of the same words, likeliest first
 */
public record ReadingLine(
        String text,
        Span span,
        LineKind kind,
        Amount amount,
        String measure,
        Optional<Size> size,
        Optional<Ingredient> ingredient,
        Optional<Span> amountSpan,
        Confidence confidence,
        List<ReadingLine> alternatives) {

    /** Keeps the alternatives as an unchangeable list. */
    public ReadingLine {
        alternatives = List.copyOf(alternatives);
    }

    /** Returns the ingredient’s name, or an empty string. */
    public String ingredientName() {
        return ingredient.map(Ingredient::name).orElse("");
    }
}
