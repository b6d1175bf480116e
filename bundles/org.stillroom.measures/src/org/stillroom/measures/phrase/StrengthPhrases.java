package org.stillroom.measures.phrase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.measures.phrase.PhraseAnswer.Strength;
import org.stillroom.measures.phrase.PhraseAnswer.StrengthReading;
import org.stillroom.measures.physics.Proof;
import org.stillroom.measures.physics.Traps;
import org.stillroom.measures.place.Gazetteer;
import org.stillroom.measures.place.Locality;
import org.stillroom.measures.rows.Row;
import org.stillroom.measures.rows.Rows;
import org.stillroom.measures.system.Where;
import org.stillroom.measures.system.YearRange;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.text.Folding;

/** Reads phrases about the strength of spirits; a bare “proof” is never settled silently. */
final class StrengthPhrases {

    private static final String NUMBER = "(\\d{1,5}(?:[.,]\\d{1,2})?)";
    private static final String DEGREE = "\\s*(?:°|º|deg\\.?|degrees?)?\\s*";

    private static final Pattern OVER =
            Pattern.compile(NUMBER + DEGREE + "(?:o\\.? ?p\\.?|over[ -]?proof)");
    private static final Pattern UNDER =
            Pattern.compile(NUMBER + DEGREE + "(?:u\\.? ?p\\.?|under[ -]?proof)");
    private static final Pattern ONE_TO =
            Pattern.compile("(?:1|one) to " + NUMBER + "(?: over(?:[ -]?proof)?)?");
    private static final Pattern ONE_IN =
            Pattern.compile("(?:1|one) in " + NUMBER + " under(?:[ -]?proof)?.*");
    private static final Pattern PROOF =
            Pattern.compile("(?:" + NUMBER + DEGREE + ")?proof(?: spirits?)?");
    private static final Pattern GAY_LUSSAC =
            Pattern.compile(NUMBER + DEGREE + "(?:g\\.? ?l\\.?|gay[ -]?lussac)");
    private static final Pattern TRALLES = Pattern.compile(NUMBER + DEGREE + "tralles?");
    private static final Pattern SIKES = Pattern.compile(NUMBER + DEGREE + "s[iy]kes");
    private static final Pattern VOLUME =
            Pattern.compile(
                    NUMBER
                            + "\\s*(?:%|per ?cent)\\s*(?:vol\\.?|abv|a\\.b\\.v\\.|by"
                            + " volume|alcohol)?");

    /** Scales of spirit that old books name and for which no table was at hand. */
    private static final Pattern OTHER_SCALE =
            Pattern.compile(NUMBER + DEGREE + "(?:cartier|beck|richter|stoppani|dicas|clarke).*");

    private static final String SIKES_SCALE = "British proof (Sikes)";

    /**
     * A scale of strength with one reading.
     *
     * @param words what is said in it, the number in the first group
     * @param name its name for a reader
     * @param source who defines it
     * @param strength from its degrees to alcohol by volume at 20 °C, 0 to 1
     */
    private record Scale(Pattern words, String name, String source, DoubleUnaryOperator strength) {}

    private static final List<Scale> SCALES =
            List.of(
                    new Scale(
                            OVER,
                            SIKES_SCALE + ", over proof",
                            "Nicholson 1912",
                            Proof::fromOverProof),
                    new Scale(
                            UNDER,
                            SIKES_SCALE + ", under proof",
                            "Nicholson 1912",
                            Proof::fromUnderProof),
                    new Scale(
                            ONE_IN,
                            SIKES_SCALE + ", one in so many",
                            "Accum 1820",
                            Proof::fromOneIn),
                    new Scale(
                            ONE_TO,
                            SIKES_SCALE + ", one to so many",
                            "Accum 1820",
                            Proof::fromOneTo),
                    new Scale(
                            GAY_LUSSAC,
                            "Gay-Lussac, 15 °C",
                            "Encyclopaedia Britannica 1911",
                            Proof::fromGayLussac),
                    new Scale(
                            TRALLES,
                            "Tralles, 60 °F",
                            "Encyclopaedia Britannica 1911",
                            Proof::fromTralles),
                    new Scale(SIKES, SIKES_SCALE, "Nicholson 1912", Proof::fromSikes),
                    new Scale(
                            VOLUME,
                            "per cent by volume, 20 °C",
                            "Directive 76/766/EEC",
                            v -> v / 100));

    private final List<Row> proofs;
    private final Traps traps = Traps.shipped();

    private StrengthPhrases(List<Row> proofs) {
        this.proofs = proofs;
    }

    static StrengthPhrases shipped() {
        return new StrengthPhrases(Rows.shipped("proofs.csv"));
    }

    Optional<PhraseAnswer> answer(String text, Circumstances where, Gazetteer places) {
        String folded = Folding.foldWord(text);
        Matcher proof = PROOF.matcher(folded);
        if (proof.matches()) {
            double degrees = proof.group(1) == null ? Double.NaN : number(proof.group(1));
            return Optional.of(proof(text, where, Where.of(where, places), degrees));
        }
        if (OTHER_SCALE.matcher(folded).matches()) {
            return Optional.of(
                    new PhraseAnswer.None(
                            text,
                            where,
                            "The scale of “" + text.strip() + "” is not known here.",
                            List.of("proof", "over or under proof", "°Gay-Lussac", "°Tralles")));
        }
        return SCALES.stream()
                .flatMap(scale -> single(text, where, folded, scale).stream())
                .findFirst();
    }

    private static double number(String digits) {
        return Double.parseDouble(digits.replace(',', '.'));
    }

    private static Optional<PhraseAnswer> single(
            String text, Circumstances where, String folded, Scale scale) {
        Matcher m = scale.words().matcher(folded);
        if (!m.matches()) {
            return Optional.empty();
        }
        double value = number(m.group(1));
        Optional<Double> volume = strength(scale.strength(), value);
        if (volume.isEmpty()) {
            return Optional.of(tooStrong(text, where, ""));
        }
        StrengthReading reading =
                new StrengthReading(scale.name(), volume.get(), 1, scale.source());
        return Optional.of(
                new Strength(
                        text, where, List.of(reading), List.of(), sentence(text, reading) + "."));
    }

    /** Returns the strength unless the scale does not reach so far. */
    private static Optional<Double> strength(DoubleUnaryOperator scale, double value) {
        try {
            double volume = scale.applyAsDouble(value);
            return volume >= 0 && volume <= 1 ? Optional.of(volume) : Optional.empty();
        } catch (IllegalArgumentException beyond) {
            return Optional.empty();
        }
    }

    private static String sentence(String text, StrengthReading reading) {
        return String.format(
                Locale.ROOT,
                "“%s” is %.1f %% by volume by %s (%s)",
                text.strip(),
                100 * reading.strength(),
                reading.scale(),
                reading.source());
    }

    private static PhraseAnswer tooStrong(String text, Circumstances where, String why) {
        return new PhraseAnswer.None(
                text,
                where,
                "No spirit is as strong as “" + text.strip() + "”." + why,
                List.of("70 o.p.", "30 u.p.", "100 proof", "90 °Tralles"));
    }

    private PhraseAnswer proof(String text, Circumstances asked, Where where, double degrees) {
        Row row = row(where);
        double american = row.number("us").orElseThrow().toDouble();
        double value = Double.isNaN(degrees) ? 100 : degrees;
        List<StrengthReading> readings = new ArrayList<>();
        readings.add(
                new StrengthReading(
                        "United States proof", Proof.fromUs(value), american, "27 CFR 19.1"));
        readings.add(
                new StrengthReading(
                        SIKES_SCALE, Proof.fromSikes(value), 1 - american, "Nicholson 1912"));
        readings.removeIf(r -> r.strength() > 1);
        if (readings.isEmpty()) {
            return tooStrong(
                    text,
                    asked,
                    " Pure alcohol is 200 degrees of United States proof, about 175 of British.");
        }
        readings.sort(Comparator.comparingDouble(r -> -r.share()));
        StringBuilder reason = new StringBuilder();
        for (StrengthReading reading : readings) {
            reason.append(reason.isEmpty() ? "" : "; or ").append(sentence(text, reading));
        }
        reason.append(". ").append(capital(row.get("statement"))).append('.');
        if (where.place().isEmpty()) {
            reason.append(" The place is not known, so both are shown.");
        }
        return new Strength(
                text, asked, readings, traps.warnings("strength", "proof"), reason.toString());
    }

    private Row row(Where where) {
        String country = where.place().flatMap(Locality::country).orElse("");
        int year = where.years().map(YearRange::to).orElse(1900);
        return proofs.stream()
                .filter(r -> r.get("country").equals(country))
                .filter(r -> r.year("from").orElse(0) <= year && r.year("to").orElse(9999) >= year)
                .findFirst()
                .orElse(proofs.getLast());
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
