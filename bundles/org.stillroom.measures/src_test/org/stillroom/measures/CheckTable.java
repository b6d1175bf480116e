package org.stillroom.measures;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.stillroom.measures.knowledge.Authority;
import org.stillroom.measures.physics.Densities;
import org.stillroom.measures.physics.Dilution;
import org.stillroom.measures.physics.EthanolWater;
import org.stillroom.measures.physics.Mixture;
import org.stillroom.measures.physics.Proof;
import org.stillroom.measures.physics.StandardDrinks;
import org.stillroom.measures.physics.SugarSolution;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.source.Circumstances;

/** Works out what the engine says to each kind of published check value. */
final class CheckTable {

    private static final double SIXTY = (60 - 32) / 1.8;

    private final MeasureTable table;
    private final StandardDrinks drinks = StandardDrinks.shipped();

    CheckTable(MeasureTable table) {
        this.table = table;
    }

    double answer(String kind, String args) {
        String[] a = args.split(" ");
        return switch (kind) {
            case "unit" -> unit(a[0]);
            case "statement", "more-than", "less-than" -> content(a[0]).likely().toDouble();
            case "low" -> content(a[0]).low().toDouble();
            case "high" -> content(a[0]).high().toDouble();
            case "ratio" -> amount(a[0]) / amount(a[1]);
            case "per" -> per(a);
            case "sum" -> sum(a);
            case "low-of" -> lowOf(a[0]);
            case "bulk" -> content(a[0]).likely().toDouble() / unit("us-cup");
            case "bydensity" -> unit(a[2]) * amount(a[0]) / amount(a[1]);
            case "perlitre" -> 1000 * amount(a[0]) / unit(a[1]);
            default -> physics(kind, a);
        };
    }

    private double physics(String kind, String[] a) {
        return switch (kind) {
            case "spirit" -> Densities.spirit(num(a, 0));
            case "stammer" -> SugarSolution.gravity(num(a, 0));
            case "baume144" -> SugarSolution.baume(num(a, 0), SugarSolution.PERIOD_MODULUS);
            case "ratio-gl" -> SugarSolution.brixOfGramsPerLitre(num(a, 0));
            case "syrup" -> SugarSolution.brixOfMasses(num(a, 0), num(a, 1) * num(a, 2));
            case "gl" -> SugarSolution.gramsPerLitre(num(a, 0));
            case "mixvolume" -> mix(a).millilitres();
            case "mixstrength" -> 100 * mix(a).strength();
            case "additive" -> 100 * mix(a).additiveStrength();
            case "contraction" -> 100 * mix(a).contraction();
            case "water" -> Mixture.waterToReduce(num(a, 0), num(a, 1), num(a, 2));
            case "drink" -> drink(a);
            case "drinkml" -> drinks.of(a[0]).orElseThrow().grams() / StandardDrinks.ETHANOL;
            case "ethanolg" -> num(a, 0) * num(a, 1) * StandardDrinks.ETHANOL;
            case "stirred" -> 100 * Dilution.STIRRED.ratio(num(a, 0));
            case "shaken" -> 100 * Dilution.SHAKEN.ratio(num(a, 0));
            case "afterstirred" -> 100 * Dilution.STIRRED.after(num(a, 0));
            case "aftershaken" -> 100 * Dilution.SHAKEN.after(num(a, 0));
            default -> strength(kind, a);
        };
    }

    private double strength(String kind, String[] a) {
        return switch (kind) {
            case "abw" -> 100 * EthanolWater.byMass(num(a, 0) / 100);
            case "abv" -> 100 * EthanolWater.byVolume(num(a, 0) / 100);
            case "density" -> EthanolWater.densityByVolume(num(a, 0) / 100, 20);
            case "densitymass" -> EthanolWater.density(num(a, 0) / 100, 20);
            case "tralles-mass" -> 100 * trallesMass(num(a, 0));
            case "mass-tralles" -> 100 * Proof.byVolumeAt(num(a, 0) / 100, SIXTY);
            case "tralles-gravity" -> Proof.gravityAt60(trallesMass(num(a, 0)));
            case "densitytralles" -> EthanolWater.density(trallesMass(num(a, 0)), SIXTY);
            case "massgravity" -> Proof.gravityAt60(num(a, 0) / 100);
            case "us" -> 100 * Proof.fromUs(num(a, 0));
            case "sikes" -> 100 * Proof.fromSikes(num(a, 0));
            case "overproof" -> 100 * Proof.fromOverProof(num(a, 0));
            case "underproof" -> 100 * Proof.fromUnderProof(num(a, 0));
            case "oneto" -> 100 * Proof.fromOneTo(num(a, 0));
            case "onein" -> 100 * Proof.fromOneIn(num(a, 0));
            case "statutory20" -> 100 * Proof.statutoryProof();
            case "statutory60" -> 100 * Proof.statutoryProofAt60();
            case "statutory-gravity" ->
                    Proof.gravityAt60(EthanolWater.byMass(Proof.statutoryProof()));
            case "sikestable" -> sikesTable(num(a, 0));
            default -> throw new IllegalArgumentException("No such check: " + kind);
        };
    }

    private static double trallesMass(double degrees) {
        return EthanolWater.byMass(Proof.fromTralles(degrees));
    }

    private static double sikesTable(double gravity) {
        double water = EthanolWater.density(0, SIXTY);
        double mass = EthanolWater.byDensity(gravity * water, SIXTY);
        return 100 * Proof.byVolumeAt(mass, SIXTY) / Proof.statutoryProofAt60();
    }

    private static double num(String[] a, int i) {
        return Double.parseDouble(a[i]);
    }

    private static Mixture mix(String[] a) {
        return Mixture.of(
                List.of(
                        new Mixture.Part(num(a, 0), num(a, 1)),
                        new Mixture.Part(num(a, 2), num(a, 3))));
    }

    private double drink(String[] a) {
        Estimate ethanol =
                StandardDrinks.ethanol(Estimate.exact(num(a, 1)), Estimate.exact(num(a, 2)));
        return drinks.of(a[0]).orElseThrow().count(ethanol).likely();
    }

    private double unit(String code) {
        return table.unit(code).orElseThrow().amount().toDouble();
    }

    private double amount(String codeOrId) {
        return table.unit(codeOrId)
                .map(u -> u.amount().toDouble())
                .orElseGet(() -> content(codeOrId).likely().toDouble());
    }

    private double per(String[] a) {
        double whole = num(a, 0) * unit(a[1]) / unit(a[2]);
        return a.length > 3 ? whole * num(a, 3) : whole;
    }

    private double sum(String[] a) {
        double sum = 0;
        for (int i = 0; i < a.length; i += 2) {
            sum += num(a, i) * unit(a[i + 1]);
        }
        return sum;
    }

    private double lowOf(String word) {
        return table.resolve(word, Optional.empty(), Circumstances.UNKNOWN)
                .millilitres()
                .orElseThrow()
                .low();
    }

    Authority statement(String id) {
        return table.authorities().stream()
                .filter(a -> a.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("No statement " + id));
    }

    private Authority.Content content(String id) {
        return statement(id).content().orElseThrow();
    }

    static String line(String id, String what, double printed, double ours, String source) {
        return String.format(
                Locale.ROOT,
                "%-5s %-44s %16.8g %16.8g %12.4g  %s",
                id,
                what,
                printed,
                ours,
                ours - printed,
                source);
    }
}
