package org.stillroom.reading.spec;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.stillroom.ingredients.Cautions;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.Step;
import org.stillroom.model.spec.Caution;

/** Finds what in a recipe could hurt someone: its ingredients, fire, strength. */
final class CautionFinder {

    private static final Set<String> FIRE =
            Set.of("ignite", "light", "burn", "blaze", "flame", "set fire", "fire");

    private static final Citation PRACTICE =
            new Citation("", "common practice, no source", Citation.Status.MEMORY);

    /** Three United Kingdom units of 10 ml of alcohol each, in one glass. */
    private static final double STRONG_ML = 30;

    private CautionFinder() {}

    static List<Caution> find(
            Cautions ingredients, Reading reading, Optional<Estimate> alcohol) {
        List<Caution> found = new ArrayList<>(ingredients.hazards());
        found.addAll(ingredients.allergens());
        fire(reading).ifPresent(found::add);
        strength(reading, alcohol).ifPresent(found::add);
        Map<String, Caution> once = new LinkedHashMap<>();
        found.stream()
                .sorted(Comparator.comparing(Caution::level).thenComparing(Caution::subject))
                .forEach(c -> once.putIfAbsent(c.subject() + c.words(), c));
        return List.copyOf(once.values());
    }

    private static Optional<Caution> fire(Reading reading) {
        return reading.steps().stream()
                .map(Step::verb)
                .filter(FIRE::contains)
                .findFirst()
                .map(
                        verb ->
                                new Caution(
                                        Caution.Level.CARE,
                                        "fire",
                                        "The period text sets spirit alight: burns and fire are a "
                                                + "real risk. Follow local fire rules and leave it "
                                                + "to trained staff.",
                                        PRACTICE));
    }

    private static Optional<Caution> strength(Reading reading, Optional<Estimate> alcohol) {
        boolean forOne =
                reading.serves().isEmpty()
                        || reading.serves().get().low().equals(reading.serves().get().high())
                                && reading.serves().get().low().isWhole()
                                && reading.serves().get().low().toDouble() == 1;
        return alcohol.filter(a -> forOne && a.likely() > STRONG_ML && a.likely() < 200)
                .map(
                        a ->
                                new Caution(
                                        Caution.Level.CARE,
                                        "strength",
                                        "As printed it holds about " + Math.round(a.likely() / 10)
                                                + " United Kingdom units of alcohol (10 ml each), "
                                                + "an estimate. Serve responsibly and by local "
                                                + "law, never to minors.",
                                        new Citation(
                                                "G01",
                                                "United Kingdom unit of alcohol: 10 ml",
                                                Citation.Status.SECONDARY)));
    }
}
