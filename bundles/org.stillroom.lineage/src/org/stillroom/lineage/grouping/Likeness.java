package org.stillroom.lineage.grouping;

import java.util.Map;
import java.util.Set;
import org.stillroom.lineage.names.NameLikeness;

/**
 * How likely two versions are of one drink, from name, ingredients and wording together.
 *
 * <p>A sum of three shares. A name alone does not reach the threshold, so that one name for two
 * drinks splits; ingredients and wording together reach it without a name, so that one drink under
 * two names joins. The weights were set by that reasoning; see the decision record.
 */
final class Likeness {

    /** From here on two versions, or the mean of two groups, are one drink. */
    static final double THRESHOLD = 0.64;

    private static final double NAME = 0.55;
    private static final double INGREDIENTS = 0.35;
    private static final double WORDING = 0.5;
    private static final double OTHER_CLASS = 0.6;
    private static final double GENERIC = 0.6;

    /** Character runs shared by recipes of one stock of phrases: no evidence below this. */
    private static final double CHANCE = 0.12;

    /** From here on the one text was before the writer of the other. */
    private static final double COPIED = 0.45;

    private final NameLikeness names = new NameLikeness();
    private final Map<String, Integer> frequencies;
    private final double versions;

    Likeness(Map<String, Integer> frequencies, int versions) {
        this.frequencies = frequencies;
        this.versions = Math.max(2, versions);
    }

    double between(Traits a, Traits b) {
        double wording = (a.wording().jaccard(b.wording()) - CHANCE) / (COPIED - CHANCE);
        return NAME * name(a, b)
                + INGREDIENTS * ingredients(a.ingredients(), b.ingredients())
                + WORDING * Math.clamp(wording, 0, 1);
    }

    private double name(Traits a, Traits b) {
        double likeness = names.between(a.name(), b.name());
        Set<String> x = a.name().classes();
        Set<String> y = b.name().classes();
        boolean apart = !x.isEmpty() && !y.isEmpty() && x.stream().noneMatch(y::contains);
        boolean generic = a.name().isGeneric() || b.name().isGeneric();
        double square = likeness * likeness;
        return square * (apart ? OTHER_CLASS : 1) * (generic ? GENERIC : 1);
    }

    /** Returns the Jaccard index weighted by rarity; neither for nor against where none is read. */
    private double ingredients(Set<String> a, Set<String> b) {
        if (a.isEmpty() || b.isEmpty()) {
            return 0.4;
        }
        double common = 0;
        double all = 0;
        for (String i : a) {
            double weight = rarity(i);
            all += weight;
            common += b.contains(i) ? weight : 0;
        }
        for (String i : b) {
            all += a.contains(i) ? 0 : rarity(i);
        }
        return common / all;
    }

    private double rarity(String ingredient) {
        int count = frequencies.getOrDefault(ingredient, 1);
        return 0.3 + Math.log(versions / count);
    }
}
