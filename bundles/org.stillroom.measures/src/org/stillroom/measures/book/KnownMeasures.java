package org.stillroom.measures.book;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.stillroom.measures.knowledge.Authority;
import org.stillroom.measures.knowledge.Authority.Content;
import org.stillroom.measures.knowledge.Dimension;
import org.stillroom.measures.knowledge.LegalUnit;
import org.stillroom.measures.knowledge.MeasureWord;
import org.stillroom.measures.knowledge.MeasureWords;
import org.stillroom.measures.knowledge.UnitTable;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.number.Rational;

/**
 * What is known of measures elsewhere, as far as a book's own table needs it.
 *
 * @param words the vocabulary
 * @param units the legal units
 * @param told tells whether an authority states an amount of a word
 */
public record KnownMeasures(MeasureWords words, UnitTable units, Predicate<String> told) {

    /** Which of several known measures a book's system is hung on, the surest first. */
    private static final List<String> SUREST =
            List.of(
                    "ml",
                    "cl",
                    "dl",
                    "litre",
                    "pint",
                    "fluid ounce",
                    "gallon",
                    "quart",
                    "gill",
                    "drachm",
                    "minim");

    /** Weights of kitchens, which were avoirdupois. */
    private static final Map<String, String> WEIGHTS =
            Map.of("lb", "lb", "oz", "oz-av", "grain", "grain", "g", "g", "kg", "kg");

    /** Tells whether an amount of a measure is known without the book. */
    boolean isKnown(String name) {
        return words.canonical(name)
                .filter(w -> w.base().isPresent() || isLegal(name) || told.test(name))
                .isPresent();
    }

    private boolean isLegal(String word) {
        return units.ofWord(word).stream().anyMatch(u -> u.dimension() == Dimension.VOLUME);
    }

    /** Returns how little a measure is to be relied on: the smaller the better. */
    double rank(String name) {
        int place = SUREST.indexOf(name);
        if (place >= 0) {
            return place;
        }
        double scatter = words.canonical(name).map(MeasureWord::scatter).orElse(1.0);
        return SUREST.size() + (isLegal(name) ? 0 : 1) + scatter;
    }

    /** Tells whether both sides of a statement are volumes. */
    boolean isVolume(Equation e) {
        return Stream.of(e.one(), e.other()).allMatch(s -> dimension(s) == Dimension.VOLUME);
    }

    private Dimension dimension(Side side) {
        return words.canonical(side.word())
                .flatMap(MeasureWord::dimension)
                .orElse(Dimension.VOLUME);
    }

    /** Returns a statement that weighs a measure of some stuff, where it is one. */
    Optional<Authority> weight(Equation e) {
        Optional<LegalUnit> unit =
                Optional.ofNullable(WEIGHTS.get(e.other().word())).flatMap(units::find);
        if (unit.isEmpty() || e.of().isEmpty() || dimension(e.one()) != Dimension.VOLUME) {
            return Optional.empty();
        }
        Ratio ratio = Ratio.of(e);
        Rational grams = unit.get().amount();
        Content content =
                new Content(
                        ratio.low().times(grams),
                        ratio.middle().times(grams),
                        ratio.high().times(grams));
        return Optional.of(
                authority(e, e.one(), e.of(), Dimension.MASS, Optional.of(content), e.words()));
    }

    /** Returns a statement of a book as an authority. */
    public static Authority authority(
            Equation e,
            Side side,
            String of,
            Dimension dimension,
            Optional<Content> content,
            String unitWords) {
        return new Authority(
                e.file() + ":" + e.line(),
                side.word(),
                side.size(),
                of,
                dimension,
                content,
                unitWords,
                "",
                OptionalInt.empty(),
                OptionalInt.empty(),
                "",
                new Citation("", "the book itself, " + e.where(), Citation.Status.PRIMARY),
                "the book's own table",
                Authority.Role.OWN_TABLE,
                "",
                "“" + e.words() + "” (" + e.where() + ")",
                e.file());
    }
}
