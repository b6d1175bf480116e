package org.stillroom.measures.phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

    private static final String NUMBER = "(\\d{1,2}(?:[.,]\\d{1,2})?)";
    private static final String DEGREE = "\\s*(?:°|º|deg\\.?|degrees?)?\\s*";

    private static final Pattern BAUME =
            Pattern.compile(NUMBER + DEGREE + "(?:be\\.?|b\\.|baume)(?: syrup)?");
    private static final Pattern BRIX =
            Pattern.compile(NUMBER + DEGREE + "(?:bx\\.?|brix|balling)(?: syrup)?");

    private static final Pattern PERCENT =
            Pattern.compile(
                    NUMBER
                            + "\\s*(?:%|per ?cent)\\s*(?:w/[vw]\\s*)?(?:sugar )?syrup(?:\\s*w/[vw])?");

    /** Until about this year the older modulus was usual; common practice, no source. */
    private static final int MODERN = 1920;

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
        boolean saturated = reading.brix() > NEARLY_SATURATED;
        return saturated ? traps.warnings("syrup", "saturated") : List.of();
    }

    private PhraseAnswer brix(String text, Circumstances where, double brix) {
        if (brix > 85) {
            return none(text, where);
        }
        SyrupReading reading =
                new SyrupReading(
                        "Brix, per cent by mass",
                        SugarSolution.gravity(brix),
                        brix,
                        SugarSolution.gramsPerLitre(brix),
                        "NBS Circular 440");
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
                "No sugar solution is as heavy as “" + text.strip() + "”.",
                List.of("30 °Bé", "66 °Bx"));
    }
}
