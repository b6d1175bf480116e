package org.stillroom.reading.idiom;

import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.stillroom.model.assertion.Assertion;

/**
 * A habit of one book that its readings are to go by: a decision of the kind {@code idiom}.
 *
 * @param on what the habit is about
 * @param printed the words that show it, lower case; of a measure, without ending of the plural
 * @param values what follows: {@code from} and {@code measure} of a measure; {@code ingredient},
 *     {@code sense}, {@code kind} or {@code action} of an ingredient; {@code reads} of words; {@code
 *     action} of a heading
 */
public record Idiom(On on, String printed, SortedMap<String, String> values) {

    /** The kind of decision that makes a habit a rule. */
    public static final String KIND = "idiom";

    /** The kind of decision that a habit is none. */
    public static final String DECLINED = "idiom-declined";

    /** What a habit is about. */
    public enum On {
        /** A printed word of measure, read as another measure. */
        MEASURE,
        /** A printed name, read as another ingredient, another part, or nothing. */
        INGREDIENT,
        /** Printed words, such as an abbreviation, that stand for others. */
        WORDS,
        /** A way of printing headings. */
        HEADING;

        /** Returns the word that files use. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Keeps the values in a map of its own. */
    public Idiom {
        values = Collections.unmodifiableSortedMap(new TreeMap<>(values));
    }

    /** Returns the idiom that a decision makes a rule or declines. */
    public static Optional<Idiom> of(Assertion decision) {
        if (!decision.kind().equals(KIND) && !decision.kind().equals(DECLINED)) {
            return Optional.empty();
        }
        SortedMap<String, String> values = new TreeMap<>(decision.values());
        String on = values.containsKey("on") ? values.remove("on") : "";
        String printed = values.containsKey("printed") ? values.remove("printed") : "";
        return Stream.of(On.values())
                .filter(o -> o.word().equals(on) && !printed.isBlank())
                .map(o -> new Idiom(o, printed, values))
                .findFirst();
    }

    /** Returns the values of the decision that makes it a rule. */
    public Map<String, String> decision() {
        Map<String, String> all = new TreeMap<>(values);
        all.put("on", on.word());
        all.put("printed", printed);
        return all;
    }

    /** Returns a value by name, or an empty string. */
    public String value(String name) {
        return values.containsKey(name) ? values.get(name) : "";
    }

    /** Returns what it says, a sentence without “in this book”. */
    public String sentence() {
        String quoted = "“" + printed + "” ";
        return switch (on) {
            case MEASURE -> quoted + "as a measure is the " + value("measure") + ".";
            case WORDS -> quoted + "stands for “" + value("reads") + "”.";
            case INGREDIENT -> quoted + ingredient();
            case HEADING -> HeadingHabit.sentence(printed, value("action"));
        };
    }

    private String ingredient() {
        if (value("action").equals("remove")) {
            return "is no ingredient.";
        }
        String name = value("ingredient").isEmpty() ? value("sense") : value("ingredient");
        String kind = value("kind").isEmpty() ? "" : " (" + value("kind") + ")";
        return name.isEmpty() ? "plays the part" + kind + "." : "is " + name + kind + ".";
    }
}
