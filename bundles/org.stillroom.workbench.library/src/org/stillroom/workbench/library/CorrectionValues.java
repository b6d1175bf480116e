package org.stillroom.workbench.library;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Size;

/**
 * What the form says of a line; empty where it says nothing.
 *
 * @param is what the words are: the word of a kind of line, {@code vessel} or {@code step}
 * @param quantity the number, or the lower one
 * @param most the upper number
 * @param measure the word of measure
 * @param size the word about size
 * @param name the ingredient, the vessel or the verb
 * @param sense what the name means, an id of the thesaurus; empty for what it usually means there
 */
record CorrectionValues(
        String is,
        String quantity,
        String most,
        String measure,
        String size,
        String name,
        String sense) {

    /** Returns what was read, or the words themselves where nothing was. */
    static CorrectionValues of(Optional<ReadingLine> read, String words) {
        String plain = words.strip().replaceAll("\\s+", " ");
        return read.map(CorrectionValues::of)
                .orElseGet(() -> new CorrectionValues("measured", "", "", "", "", plain, ""));
    }

    private static CorrectionValues of(ReadingLine line) {
        boolean stated = !line.measure().equals("unstated");
        return new CorrectionValues(
                line.kind().word(),
                line.amount().quantity().map(Rational::toString).orElse(""),
                line.amount().quantityMax().map(Rational::toString).orElse(""),
                stated ? line.measure() : "",
                line.size().map(Size::word).orElse(""),
                line.ingredientName(),
                "");
    }

    boolean isPart() {
        return is.equals("vessel") || is.equals("step");
    }

    /** Returns what was changed against what was read, as values of a decision. */
    Map<String, String> since(CorrectionValues before) {
        Map<String, String> values = new TreeMap<>();
        if (isPart()) {
            values.put("part", is);
            values.put("word", name.strip());
            return values;
        }
        put(values, "kind", is, before.is);
        put(values, "measure", measure, before.measure);
        put(values, "size", size, before.size);
        put(values, "ingredient", name, before.name);
        put(values, "sense", sense, before.sense);
        boolean amount = !quantity.equals(before.quantity) || !most.equals(before.most);
        if (amount) {
            values.put("quantity", quantity.strip());
            values.put("quantityMax", most.strip());
        }
        if (values.isEmpty()) {
            values.put("action", "right");
        }
        return values;
    }

    private static void put(Map<String, String> values, String name, String now, String before) {
        if (!now.strip().equals(before)) {
            values.put(name, now.strip());
        }
    }

    /** Returns what keeps the form from being saved, a sentence. */
    Optional<String> wrong() {
        for (String number : new String[] {quantity, most}) {
            if (!number.isBlank() && Rational.parse(number).isEmpty()) {
                return Optional.of("“" + number + "” is no number. Write 2, 1/2 or 1 1/2.");
            }
        }
        return isPart() && name.isBlank() ? Optional.of("Name the " + is + ".") : Optional.empty();
    }
}
