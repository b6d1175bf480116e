package org.stillroom.inquiry;

import java.util.List;
import java.util.Optional;

/**
 * One thing that an inquiry wants to be told.
 *
 * <p>Declared once; the command line makes an option of it and the workbench a field.
 *
 * @param name its name, lower case, words joined by hyphens
 * @param kind what sort of value it takes
 * @param place whether it is the inquiry's object, named without an option, or an option
 * @param required whether the inquiry cannot be made without it
 * @param words what it means, a short sentence
 * @param choices the values allowed, empty where any is
 * @param usual the value that holds where none is given
 * @param many whether several values may be given; {@link Arguments#texts} returns them
 */
public record Parameter(
        String name,
        Kind kind,
        Place place,
        boolean required,
        String words,
        List<String> choices,
        Optional<String> usual,
        boolean many) {

    /** What sort of value a parameter takes. */
    public enum Kind {
        /** Any words. */
        TEXT,
        /** A whole number. */
        NUMBER,
        /** Yes or no; an option without a value. */
        FLAG,
        /** A file. */
        FILE,
        /** A date in EDTF. */
        DATE,
        /** A town, region or country. */
        PLACE,
        /** One of the choices. */
        CHOICE,
        /** A drink of the library, by name. */
        DRINK
    }

    /** Where a parameter stands in a command. */
    public enum Place {
        /** Without an option's name, after the inquiry's. */
        OBJECT,
        /** As an option. */
        OPTION
    }

    /** Keeps the choices as an unchangeable list. */
    public Parameter {
        choices = List.copyOf(choices);
    }

    /** Returns the object of an inquiry that cannot be made without it. */
    public static Parameter object(String name, Kind kind, String words) {
        return new Parameter(
                name, kind, Place.OBJECT, true, words, List.of(), Optional.empty(), false);
    }

    /** Returns an object that may be left out. */
    public static Parameter optionalObject(String name, Kind kind, String words) {
        return new Parameter(
                name, kind, Place.OBJECT, false, words, List.of(), Optional.empty(), false);
    }

    /** Returns an option that may be left out. */
    public static Parameter option(String name, Kind kind, String words) {
        return new Parameter(
                name, kind, Place.OPTION, false, words, List.of(), Optional.empty(), false);
    }

    /** Returns an option that may be left out, or be given several times. */
    public static Parameter options(String name, Kind kind, String words) {
        return new Parameter(
                name, kind, Place.OPTION, false, words, List.of(), Optional.empty(), true);
    }

    /** Returns an option that takes one of some words. */
    public static Parameter choice(String name, String words, String usual, List<String> choices) {
        return new Parameter(
                name, Kind.CHOICE, Place.OPTION, false, words, choices, Optional.of(usual), false);
    }
}
