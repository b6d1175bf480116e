package org.stillroom.ingredients;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.spec.Caution;

/**
 * What to beware of in a drink: for a reader of old books, never advice.
 *
 * @param hazards dangers and legal limits, the gravest first
 * @param allergens allergens that must be declared somewhere
 * @param together what is known of the allergens of the whole drink
 * @param unknown ingredients whose allergens are not known, in words
 */
public record Cautions(
        List<Caution> hazards, List<Caution> allergens, Allergens together, List<String> unknown) {

    private static final Set<String> UNION =
            Set.of(
                    "AT", "BE", "BG", "CY", "CZ", "DE", "DK", "EE", "ES", "FI", "FR", "GR", "HR",
                    "HU", "IE", "IT", "LT", "LU", "LV", "MT", "NL", "PL", "PT", "RO", "SE", "SI",
                    "SK");

    private static final Citation EUROPEAN =
            new Citation("R1169", "Regulation (EU) No 1169/2011, annex II", Citation.Status.MEMORY);

    private static final Citation AMERICAN =
            new Citation(
                    "",
                    "Food Allergen Labeling and Consumer Protection Act of 2004",
                    Citation.Status.MEMORY);

    /** Keeps the lists unchangeable. */
    public Cautions {
        hazards = List.copyOf(hazards);
        allergens = List.copyOf(allergens);
        unknown = List.copyOf(unknown);
    }

    /**
     * Returns what to beware of in a drink.
     *
     * @param senses what its ingredients are
     * @param unresolved words of ingredients that could not be resolved: they leave the allergens
     *     unknown, never “free from”
     * @param where where it would be served: rules of that place come first
     */
    public static Cautions of(
            Collection<Sense> senses, Collection<String> unresolved, Circumstances where) {
        Map<String, Caution> hazards = new LinkedHashMap<>();
        Map<String, Caution> declared = new LinkedHashMap<>();
        Allergens together =
                new Allergens(
                        new java.util.TreeSet<>(), new java.util.TreeSet<>(), unresolved.isEmpty());
        Set<String> unknown = new LinkedHashSet<>(unresolved);
        String region = region(where);
        for (Sense sense : senses) {
            sense.hazards().stream()
                    .sorted(Comparator.comparing((Hazard h) -> !h.region().equals(region)))
                    .forEach(
                            h ->
                                    hazards.putIfAbsent(
                                            h.id() + '/' + sense.id(), caution(h, sense.label())));
            together = together.and(sense.allergens());
            declare(sense, declared);
            if (!sense.allergens().assessed()) {
                unknown.add(sense.label());
            }
        }
        List<Caution> gravest = new ArrayList<>(hazards.values());
        gravest.sort(Comparator.comparing(Caution::level));
        return new Cautions(
                gravest, List.copyOf(declared.values()), together, List.copyOf(unknown));
    }

    private static String region(Circumstances where) {
        String country = where.place().flatMap(p -> p.country()).orElse("");
        return UNION.contains(country) ? "EU" : country;
    }

    private static Caution caution(Hazard hazard, String subject) {
        return new Caution(hazard.level(), subject, hazard.words(), hazard.source());
    }

    private static void declare(Sense sense, Map<String, Caution> declared) {
        sense.allergens()
                .contains()
                .forEach(a -> declared.put(sense.id() + a, allergen(sense, a, "It holds ")));
        sense.allergens()
                .possible()
                .forEach(
                        a ->
                                declared.put(
                                        sense.id() + a,
                                        allergen(sense, a, "Some makings of it hold ")));
    }

    private static Caution allergen(Sense sense, Allergen allergen, String begin) {
        String lists =
                allergen.isEuropean() && allergen.isAmerican()
                        ? "the European Union and the United States"
                        : allergen.isEuropean() ? "the European Union" : "the United States";
        return new Caution(
                Caution.Level.CARE,
                sense.label(),
                begin
                        + allergen.words()
                        + ", an allergen that "
                        + lists
                        + " want declared. Check current local law and the label of the product.",
                allergen.isEuropean() ? EUROPEAN : AMERICAN);
    }

    /** Returns what to beware of in a recipe’s words beyond its ingredients: fire, children. */
    public static List<Caution> inWords(String text, Thesaurus thesaurus) {
        Phrases<Hazard> phrases = new Phrases<>();
        thesaurus.hazards().forEach(h -> h.triggers().forEach(w -> phrases.add(w, h)));
        Map<String, Caution> found = new LinkedHashMap<>();
        phrases.in(text)
                .forEach(f -> found.putIfAbsent(f.what().id(), caution(f.what(), f.words())));
        return List.copyOf(found.values());
    }

    /** Returns hazards and allergens together, the gravest first. */
    public List<Caution> all() {
        List<Caution> all = new ArrayList<>(hazards);
        all.addAll(allergens);
        all.sort(Comparator.comparing(Caution::level));
        return all;
    }

    /** Tells whether a card of the drink must not be printed before someone has read these. */
    public boolean needAcknowledgement() {
        return hazards.stream().anyMatch(c -> c.level() != Caution.Level.CARE);
    }
}
