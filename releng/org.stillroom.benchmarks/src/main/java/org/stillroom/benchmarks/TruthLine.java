package org.stillroom.benchmarks;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Size;
import org.stillroom.model.text.Folding;

/**
 * One ingredient of a recipe as the reading truth has it; what is not stated is an empty string.
 *
 * @param kind measured, ice, garnish, top, rinse or alternative
 * @param quantity the number, or the lower one of a range
 * @param quantityMax the upper number of a range
 * @param measure the singular word of measure
 * @param size a word about size
 * @param ingredient the name, in lower case
 */
record TruthLine(
        String kind,
        String quantity,
        String quantityMax,
        String measure,
        String size,
        String ingredient) {

    /** Returns the lines of a recipe whose fields have the short names of the prose truth. */
    static List<TruthLine> ofProse(JsonNode recipe) {
        return lines(recipe, List.of("k", "q", "qmax", "m", "size", "i"));
    }

    /** Returns the lines of a recipe whose fields are spelt out. */
    static List<TruthLine> of(JsonNode recipe) {
        return lines(
                recipe,
                List.of("kind", "quantity", "quantityMax", "measure", "size", "ingredient"));
    }

    private static List<TruthLine> lines(JsonNode recipe, List<String> fields) {
        List<TruthLine> lines = new ArrayList<>();
        for (JsonNode n : recipe.get("lines")) {
            List<String> f = fields.stream().map(name -> text(n, name)).toList();
            lines.add(new TruthLine(f.get(0), f.get(1), f.get(2), f.get(3), f.get(4), f.get(5)));
        }
        return lines;
    }

    /** Returns a line that was read in the same form. */
    static TruthLine of(ReadingLine line) {
        return new TruthLine(
                line.kind().word(),
                line.amount().quantity().map(Rational::toString).orElse(""),
                line.amount().quantityMax().map(Rational::toString).orElse(""),
                line.measure(),
                line.size().map(Size::word).orElse(""),
                line.ingredientName());
    }

    /** Returns a field of a row of truth, folded, or an empty string. */
    static String text(JsonNode node, String field) {
        JsonNode value = node.get(field);
        return value == null || value.isNull() ? "" : Folding.foldWord(value.asText());
    }

    boolean isAlternative() {
        return kind.equals("alternative");
    }

    /** Returns number and measure, comparable as one string. */
    String amount() {
        return quantity + "–" + quantityMax + " " + measure;
    }

    @Override
    public String toString() {
        String number = quantityMax.isEmpty() ? quantity : quantity + " to " + quantityMax;
        return String.join(" ", number, size, measure, "of", ingredient).strip().replace("  ", " ")
                + " ("
                + kind
                + ")";
    }
}
