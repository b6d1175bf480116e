package org.stillroom.measures.phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.stillroom.measures.phrase.PhraseAnswer.Syrup;
import org.stillroom.measures.phrase.PhraseAnswer.SyrupReading;
import org.stillroom.measures.physics.SugarSolution;
import org.stillroom.measures.physics.Traps;
import org.stillroom.measures.system.YearRange;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.text.Folding;

/** Reads phrases about the strength of syrups; the constant of a Baumé degree is always shown. */
final class SyrupPhrases {

    private static final String NUMBER = "(\\d{1,4}(?:[.,]\\d{1,2})?)";
    private static final String DEGREE = "\\s*(?:°|º|deg\\.?|degrees?)?\\s*";

    private static final Pattern BAUME =
            Pattern.compile(NUMBER + DEGREE + "(?:be\\.?|b\\.|baume)(?: syrup)?");
    private static final Pattern BRIX =
            Pattern.compile(NUMBER + DEGREE + "(?:bx\\.?|brix|balling)(?: syrup)?");

    private static final Pattern GRAMS =
            Pattern.compile(
                    "(\\d{1,5}(?:[.,]\\d{1,2})?)\\s*(?:g|gr|gm|grams?|grammes?)\\.?"
                            + "\\s*(?:/|per|to the|in a|in the|a)\\s*(?:l|lit(?:re|er))\\.?"
                            + "(?: (?:of )?(?:sugar|syrup))?");

    /** Sugar to water by weight, “2 to 1 syrup”, “syrup 3:2”. */
    private static final Pattern RATIO =
            Pattern.compile(
                    "(?:(?:sugar |simple |rich )?syrup (?:of )?)?"
                            + NUMBER
                            + " ?(?::|to) ?"
                            + NUMBER
                            + "(?: (?:sugar |simple |rich )?syrup)?(?: by weight)?");

    /** So much sugar by weight in so much water by measure. */
    private static final Pattern DISSOLVED =
            Pattern.compile(
                    "(?:syrup (?:of )?)?"
                            + NUMBER
                            + " ?(lbs?\\.?|pounds?|kg|kilos?|g|grams?|grammes?|oz\\.?|ounces?)"
                            + " (?:of )?(?:[a-z]+ )?sugar (?:to|in) (?:the|an?|one|1)"
                            + " (?:(imperial|us|wine) )?(litre|liter|pint|quart)(?: (?:of )?water)?"
                            + "(?: syrup)?");

    private static final Map<String, Double> GRAMS_OF =
            Map.of("l", 453.59237, "p", 453.59237, "k", 1000.0, "g", 1.0, "o", 28.349523125);

    private static final Pattern PERCENT =
            Pattern.compile(
                    NUMBER
                            + "\\s*(?:%|per ?cent)\\s*(?:w/[vw]\\s*)?(?:sugar )?syrup(?:\\s*w/[vw])?");

    /** Until about this year the older modulus was usual; common practice, no source. */
    private static final int MODERN = 1920;

    /** Per cent of sugar by mass where the tables end. */
    private static final double THICKEST = 85;

    private static final double NEARLY_SATURATED = 62;

    private final Traps traps = Traps.shipped();

    Optional<PhraseAnswer> answer(String text, Circumstances where) {
        String folded = Folding.foldWord(text);
        Matcher baume = BAUME.matcher(folded);
        if (baume.matches()) {
            return Optional.of(baume(text, where, number(baume.group(1))));
        }
        Matcher brix = BRIX.matcher(folded);
        if (brix.matches()) {
            return Optional.of(brix(text, where, number(brix.group(1))));
        }
        Matcher grams = GRAMS.matcher(folded);
        if (grams.matches()) {
            return Optional.of(grams(text, where, number(grams.group(1))));
        }
        Matcher ratio = RATIO.matcher(folded);
        if (ratio.matches() && folded.contains("syrup")) {
            double[] parts = {number(ratio.group(1)), number(ratio.group(2))};
            return Optional.of(ratio(text, where, parts[0], parts[1]));
        }
        Matcher dissolved = DISSOLVED.matcher(folded);
        if (dissolved.matches()) {
            return Optional.of(dissolved(text, where, dissolved));
        }
        Matcher percent = PERCENT.matcher(folded);
        return percent.matches()
                ? Optional.of(percent(text, where, number(percent.group(1))))
                : Optional.empty();
    }

    /** Pharmacopoeias count the grams in 100 ml; by mass no more than stays dissolved is meant. */
    private PhraseAnswer percent(String text, Circumstances where, double percent) {
        String folded = Folding.foldWord(text);
        List<SyrupReading> readings = new ArrayList<>();
        double grams = percent * 10;
        if (!folded.contains("w/w") && grams <= SugarSolution.gramsPerLitre(85)) {
            readings.add(
                    reading(
                            "grams in 100 ml",
                            SugarSolution.brixOfGramsPerLitre(grams),
                            "USP 28 to 35, Syrup"));
        }
        if (!folded.contains("w/v") && percent <= SugarSolution.SATURATED) {
            readings.add(reading("per cent by mass", percent, "NBS Circular 440"));
        }
        List<String> warnings = new ArrayList<>();
        if (percent > SugarSolution.SATURATED) {
            warnings.addAll(traps.warnings("syrup", "85"));
        }
        return readings.isEmpty()
                ? none(text, where)
                : new Syrup(text, where, readings, warnings, sentence(text, readings));
    }

    private static SyrupReading reading(String scale, double brix, String source) {
        return new SyrupReading(
                scale,
                SugarSolution.gravity(brix),
                brix,
                SugarSolution.gramsPerLitre(brix),
                source);
    }

    private static double number(String digits) {
        return Double.parseDouble(digits.replace(',', '.'));
    }

    /** A syrup near saturation has rules of thumb of its own that mislead. */
    private List<String> warnings(SyrupReading reading) {
        List<String> warnings = new ArrayList<>();
        if (reading.brix() > SugarSolution.SATURATED) {
            warnings.add(
                    String.format(
                            Locale.ROOT,
                            "More than %.1f %% of sugar by mass does not stay dissolved at 20 °C; it"
                                    + " can stand only in a hot or a boiled, inverted syrup.",
                            SugarSolution.SATURATED));
        }
        if (reading.brix() > NEARLY_SATURATED) {
            warnings.addAll(traps.warnings("syrup", "saturated"));
        }
        return warnings;
    }

    private PhraseAnswer brix(String text, Circumstances where, double brix) {
        return brix > THICKEST
                ? none(text, where)
                : single(text, where, reading("Brix, per cent by mass", brix, "NBS Circular 440"));
    }

    private PhraseAnswer grams(String text, Circumstances where, double grams) {
        return grams > SugarSolution.gramsPerLitre(THICKEST)
                ? none(text, where)
                : single(
                        text,
                        where,
                        reading(
                                "grams of sugar in a litre",
                                SugarSolution.brixOfGramsPerLitre(grams),
                                "NBS Circular 440"));
    }

    private PhraseAnswer ratio(String text, Circumstances where, double sugar, double water) {
        if (water <= 0 || sugar < 0) {
            return none(text, where);
        }
        double brix = SugarSolution.brixOfMasses(sugar, water);
        return brix > THICKEST
                ? none(text, where)
                : single(
                        text, where, reading("sugar to water by weight", brix, "NBS Circular 440"));
    }

    /** The water by its volume, at 0.998 g/ml; a pint is both of those that it may be. */
    private PhraseAnswer dissolved(String text, Circumstances where, Matcher m) {
        double sugar = number(m.group(1)) * GRAMS_OF.get(m.group(2).substring(0, 1));
        List<SyrupReading> readings = new ArrayList<>();
        for (Water water : Water.values()) {
            double ml = water.millilitres(m.group(4), Optional.ofNullable(m.group(3)));
            double brix = ml > 0 ? SugarSolution.brixOfMasses(sugar, ml * 0.9982) : 100;
            if (brix <= THICKEST) {
                readings.add(reading(water.words(m.group(4)), brix, "NBS Circular 440"));
            }
        }
        return readings.isEmpty()
                ? none(text, where)
                : new Syrup(
                        text,
                        where,
                        readings,
                        warnings(readings.getFirst()),
                        sentence(text, readings));
    }

    /** Whose pint or quart the water may be measured in. */
    private enum Water {
        AMERICAN(473.176473, "United States or wine", List.of("us", "wine")),
        BRITISH(568.26125, "imperial", List.of("imperial"));

        private final double pint;
        private final String words;
        private final List<String> named;

        Water(double pint, String words, List<String> named) {
            this.pint = pint;
            this.words = words;
            this.named = named;
        }

        double millilitres(String measure, Optional<String> name) {
            if (measure.startsWith("lit")) {
                return this == AMERICAN ? 1000 : 0;
            }
            boolean other = name.isPresent() && !named.contains(name.get());
            return other ? 0 : measure.equals("quart") ? 2 * pint : pint;
        }

        String words(String measure) {
            return measure.startsWith("lit")
                    ? "sugar in a litre of water"
                    : "sugar in "
                            + (this == BRITISH ? "an " : "a ")
                            + words
                            + " "
                            + measure
                            + " of water";
        }
    }

    private PhraseAnswer single(String text, Circumstances where, SyrupReading reading) {
        return new Syrup(
                text, where, List.of(reading), warnings(reading), sentence(text, List.of(reading)));
    }

    private PhraseAnswer baume(String text, Circumstances where, double degrees) {
        boolean period =
                where.date().flatMap(YearRange::of).map(y -> y.to() < MODERN).orElse(false);
        double first = period ? SugarSolution.PERIOD_MODULUS : SugarSolution.MODULUS;
        double second = period ? SugarSolution.MODULUS : SugarSolution.PERIOD_MODULUS;
        List<SyrupReading> readings = new ArrayList<>();
        for (double modulus : new double[] {first, second}) {
            reading(degrees, modulus).ifPresent(readings::add);
        }
        return readings.isEmpty()
                ? none(text, where)
                : new Syrup(
                        text,
                        where,
                        readings,
                        warnings(readings.getFirst()),
                        sentence(text, readings));
    }

    private static Optional<SyrupReading> reading(double degrees, double modulus) {
        double gravity = SugarSolution.gravityOfBaume(degrees, modulus);
        if (gravity > SugarSolution.gravity(85)) {
            return Optional.empty();
        }
        double brix = SugarSolution.brix(gravity * SugarSolution.density(0));
        String source =
                modulus == SugarSolution.MODULUS ? "NBS Circular 440" : "Stammer, in Rixford 1883";
        return Optional.of(
                new SyrupReading(
                        String.format(Locale.ROOT, "Baumé, modulus %.0f", modulus),
                        gravity,
                        brix,
                        SugarSolution.gramsPerLitre(brix),
                        source));
    }

    private static String sentence(String text, List<SyrupReading> readings) {
        String all =
                readings.stream()
                        .map(
                                r ->
                                        String.format(
                                                Locale.ROOT,
                                                "%.3f specific gravity, %.1f %% sugar by mass,"
                                                        + " %.0f g/l (%s, %s)",
                                                r.gravity(),
                                                r.brix(),
                                                r.gramsPerLitre(),
                                                r.scale(),
                                                r.source()))
                        .collect(Collectors.joining("; or "));
        return "“" + text.strip() + "” is " + all + ".";
    }

    private static PhraseAnswer none(String text, Circumstances where) {
        return new PhraseAnswer.None(
                text,
                where,
                "No sugar solution is as heavy as “"
                        + text.strip()
                        + "”: syrup saturated at 20 °C holds two thirds of its weight in sugar.",
                List.of("30 °Bé", "66 °Bx", "800 g per litre", "2 to 1 syrup"));
    }
}
