package org.stillroom.reading.spec;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.stream.Collectors;
import org.stillroom.ingredients.Allergen;
import org.stillroom.ingredients.Allergens;
import org.stillroom.ingredients.Cautions;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.spec.Caution;

/** Finds what in a recipe could hurt someone: its ingredients, its words, its strength. */
final class CautionFinder {

    private static final Citation ALLERGEN_LISTS =
            new Citation(
                    "R1169",
                    "Regulation (EU) No 1169/2011, annex II, and the United States’ list of nine",
                    Citation.Status.MEMORY);

    private static final Citation UNIT =
            new Citation("G01", "United Kingdom unit: 10 ml of alcohol", Citation.Status.SECONDARY);

    /** Three United Kingdom units of 10 ml of alcohol each, in one glass. */
    private static final double STRONG_ML = 30;

    /** More than this is a bowl for a company, whatever the words say. */
    private static final double BOWL_ML = 200;

    private final Thesaurus thesaurus;
    private final NamedHazards named;

    CautionFinder(Thesaurus thesaurus) {
        this.thesaurus = thesaurus;
        this.named = new NamedHazards(thesaurus);
    }

    /**
     * Returns the cautions, gravest first.
     *
     * @param ingredients what the ingredients call for
     * @param words the recipe’s words
     * @param alcohol alcohol in the whole, in millilitres
     */
    List<Caution> find(
            Cautions ingredients, Reading reading, String words, Optional<Estimate> alcohol) {
        List<Caution> found = new ArrayList<>(ingredients.hazards());
        found.addAll(Cautions.inWords(words, thesaurus));
        Set<String> told = found.stream().map(Caution::words).collect(Collectors.toSet());
        named.in(words, reading.witness().title()).stream()
                .filter(c -> !told.contains(c.words()))
                .forEach(found::add);
        allergens(ingredients.together()).ifPresent(found::add);
        strength(reading, alcohol).ifPresent(found::add);
        Map<String, Caution> once = new LinkedHashMap<>();
        found.stream()
                .sorted(Comparator.comparing(Caution::level).thenComparing(Caution::subject))
                .forEach(c -> once.putIfAbsent(c.words(), c));
        return List.copyOf(once.values());
    }

    private static Optional<Caution> allergens(Allergens together) {
        if (together.contains().isEmpty() && together.possible().isEmpty()) {
            return Optional.empty();
        }
        String holds =
                together.contains().isEmpty() ? "" : "Holds " + list(together.contains()) + ". ";
        String may =
                together.possible().isEmpty()
                        ? ""
                        : "Some makings hold " + list(together.possible()) + ". ";
        String rest =
                together.assessed()
                        ? ""
                        : "For other parts nothing is known, which never means free from. ";
        return Optional.of(
                new Caution(
                        Caution.Level.CARE,
                        "allergens",
                        holds + may + rest + "Check the labels and local law.",
                        ALLERGEN_LISTS));
    }

    private static String list(SortedSet<Allergen> allergens) {
        return allergens.stream().map(Allergen::words).collect(Collectors.joining(", "));
    }

    private static Optional<Caution> strength(Reading reading, Optional<Estimate> alcohol) {
        boolean forOne = reading.serves().map(s -> s.high().toDouble() <= 1).orElse(true);
        return alcohol.filter(a -> forOne && a.likely() > STRONG_ML && a.likely() < BOWL_ML)
                .map(
                        a ->
                                new Caution(
                                        Caution.Level.CARE,
                                        "strength",
                                        "As printed it holds about "
                                                + Math.round(a.likely() / 10)
                                                + " United Kingdom units of alcohol, an estimate. "
                                                + "Serve by local law, never to minors.",
                                        UNIT));
    }
}
