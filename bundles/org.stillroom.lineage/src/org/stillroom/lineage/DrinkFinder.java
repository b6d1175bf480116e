package org.stillroom.lineage;

import java.util.Comparator;
import java.util.List;
import org.stillroom.lineage.names.NameForm;
import org.stillroom.lineage.names.NameLikeness;

/** Finds drinks by any of their names, however spelt. */
public final class DrinkFinder {

    /** Below this a name does not resemble another. */
    private static final double LEAST = 0.62;

    /** A drink with how well one of its names fits. */
    private record Fit(Drink drink, double likeness) {}

    /** Returns the drinks whose names resemble some words, likeliest first; none where none does. */
    public List<Drink> find(Drinks drinks, String name) {
        NameForm wanted = NameForm.of(name);
        NameLikeness likeness = new NameLikeness();
        return drinks.drinks().stream()
                .map(d -> new Fit(d, fit(d, name, wanted, likeness)))
                .filter(f -> f.likeness() >= LEAST)
                .sorted(
                        Comparator.comparingDouble(Fit::likeness)
                                .reversed()
                                .thenComparing(f -> -f.drink().versions().size())
                                .thenComparing(f -> f.drink().id()))
                .map(Fit::drink)
                .toList();
    }

    private static double fit(Drink drink, String printed, NameForm wanted, NameLikeness likeness) {
        double best = 0;
        for (String name : drink.names()) {
            double fit = likeness.between(wanted, NameForm.of(name));
            best =
                    Math.max(
                            best,
                            name.equalsIgnoreCase(printed.strip()) ? 1 : Math.min(fit, 0.999));
        }
        return best;
    }
}
