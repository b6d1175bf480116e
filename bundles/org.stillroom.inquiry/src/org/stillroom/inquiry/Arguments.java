package org.stillroom.inquiry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;
import org.stillroom.model.source.Trade;

/**
 * What an inquiry was told, by the names of its parameters.
 *
 * @param values the words given for each parameter; a flag that is set has the value “yes”
 */
public record Arguments(Map<String, String> values) {

    /** The value of a flag that is set. */
    public static final String YES = "yes";

    /** Keeps the values in a map of its own. */
    public Arguments {
        values = java.util.Collections.unmodifiableMap(new TreeMap<>(values));
    }

    /** Returns arguments of names and values in turn. */
    public static Arguments of(String... namesAndValues) {
        Map<String, String> values = new TreeMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            values.put(namesAndValues[i], namesAndValues[i + 1]);
        }
        return new Arguments(values);
    }

    /** Returns the words given for a parameter. */
    public Optional<String> text(String name) {
        return Optional.ofNullable(values.get(name)).filter(v -> !v.isBlank());
    }

    /** Returns the several values given for a parameter, set apart by semicolons. */
    public List<String> texts(String name) {
        return text(name).stream()
                .flatMap(v -> java.util.stream.Stream.of(v.split(";")))
                .map(String::strip)
                .filter(v -> !v.isEmpty())
                .toList();
    }

    /** Returns these with another value for a parameter. */
    public Arguments with(String name, String value) {
        Map<String, String> more = new TreeMap<>(values);
        more.put(name, value);
        return new Arguments(more);
    }

    /**
     * Returns the words given for a parameter.
     *
     * @throws InquiryException where none are
     */
    public String required(String name) {
        return text(name)
                .orElseThrow(
                        () ->
                                new InquiryException(
                                        "Nothing was given for “" + name + "”.",
                                        "Give a value for it."));
    }

    /** Tells whether a flag is set. */
    public boolean flag(String name) {
        return YES.equals(values.get(name));
    }

    /**
     * Returns a whole number.
     *
     * @throws InquiryException where the words are none
     */
    public OptionalInt number(String name) {
        Optional<String> words = text(name);
        if (words.isEmpty()) {
            return OptionalInt.empty();
        }
        try {
            return OptionalInt.of(Integer.parseInt(words.get().strip()));
        } catch (NumberFormatException e) {
            throw new InquiryException(
                    "“" + words.get() + "” is not a whole number (" + name + ").",
                    "Give digits alone, such as 10.");
        }
    }

    /**
     * Returns a date.
     *
     * @throws InquiryException where the words are not EDTF
     */
    public Optional<UncertainDate> date(String name) {
        return text(name)
                .map(
                        w ->
                                UncertainDate.parse(w)
                                        .orElseThrow(
                                                () ->
                                                        new InquiryException(
                                                                "“"
                                                                        + w
                                                                        + "” is not a date in EDTF ("
                                                                        + name
                                                                        + ").",
                                                                "Write 1862, 1862~ (about), 186X "
                                                                        + "(the 1860s) or "
                                                                        + "1860/1865.")));
    }

    /**
     * Returns the circumstances of the parameters date, place, trade and language.
     *
     * @throws InquiryException where one of them cannot be understood
     */
    public Circumstances circumstances() {
        Optional<Trade> trade =
                text("trade")
                        .map(
                                w ->
                                        Trade.of(w)
                                                .orElseThrow(
                                                        () ->
                                                                new InquiryException(
                                                                        "No trade is called “"
                                                                                + w
                                                                                + "”.",
                                                                        "Give bar, kitchen, "
                                                                                + "pharmacy or "
                                                                                + "distilling.")));
        return new Circumstances(
                text("place").map(Place::of), date("date"), trade, text("language"));
    }
}
