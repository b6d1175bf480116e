package org.stillroom.lineage.grouping;

import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.lineage.names.NameForm;
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
    static final double THRESHOLD = 0.66;

    private static final double NAME = 0.62;
    private static final double INGREDIENTS = 0.4;
    private static final double WORDING = 0.5;

    /** A book repeats its own phrases, and gives two names to two drinks. */
    private static final double TWO_NAMES = 0.3;

    private static final double SAME_NAME = 0.8;
    private static final double SAME_BASE = 0.05;
    private static final double OTHER_BASE = -0.1;
    private static final double OTHER_CLASS = 0.6;
    private static final double GENERIC = 0.6;
    private static final double REFERS = 0.4;
    private static final double NAMES = 0.1;
    private static final double CONTAINED = 0.95;

    /** Fewer stretches than this are no wording of its own. */
    private static final int FEWEST = 20;

    private static final double UNREAD = 0.4;
    private static final double COMMONEST = 0.3;

    /** Character runs shared by recipes of one stock of phrases: no evidence below this. */
    private static final double CHANCE = 0.12;

    /** From here on the one text was before the writer of the other. */
    private static final double COPIED = 0.45;

    private final NameLikeness names = new NameLikeness();
    private final Map<String, Double> rarity = new HashMap<>();
    private final Map<Call, Map<Call, Double>> known = new IdentityHashMap<>();

    /** Makes a comparison in a library where ingredients occur so often. */
    Likeness(Map<String, Integer> frequencies, int versions) {
        frequencies.forEach(
                (i, n) -> rarity.put(i, COMMONEST + Math.log(Math.max(2.0, versions) / n)));
    }

    /** Returns how alike two versions are by name and ingredients alone. */
    double rough(Traits a, Traits b) {
        return NAME * name(a, b) + INGREDIENTS * ingredients(a.ingredients(), b.ingredients());
    }

    double between(Traits a, Traits b) {
        boolean oneBook = a.version().source().id().equals(b.version().source().id());
        double name = name(a, b);
        double wording = oneBook ? 0 : (reuse(a, b) - CHANCE) / (COPIED - CHANCE);
        return NAME * name
                - (oneBook && name < SAME_NAME ? TWO_NAMES : 0)
                + INGREDIENTS * ingredients(a.ingredients(), b.ingredients())
                + WORDING * Math.clamp(wording, 0, 1)
                + base(a.bases(), b.bases())
                + (refers(a, b) || refers(b, a) ? REFERS : 0)
                + (names(a, b) || names(b, a) ? NAMES : 0);
    }

    /** Returns how much of their wording two versions share, formulas of the trade left out. */
    private static double reuse(Traits a, Traits b) {
        boolean few = Math.min(a.wording().size(), b.wording().size()) < FEWEST;
        return few ? 0 : a.wording().jaccard(b.wording());
    }

    /** Tells whether one text has the wording of the other. */
    static boolean isCopied(Traits a, Traits b) {
        return reuse(a, b) >= COPIED;
    }

    /**
     * “Another, with arrack” sends the reader to the recipe before, and so does “golden” to the plain
     * drink; a gin fizz that is made like a brandy fizz is not therefore the same drink.
     */
    private static boolean refers(Traits a, Traits b) {
        boolean sent =
                a.version().reading().reference().stream()
                        .anyMatch(r -> r.chain().contains(b.version().id()));
        if (!sent) {
            return false;
        }
        boolean generic = a.call().generic() && !b.call().generic();
        return generic
                || a.name().words().stream()
                        .anyMatch(w -> NameForm.weight(w) >= 1 && b.name().words().contains(w));
    }

    /** A text that names the author of another one, whose name is not the drink’s, had read it. */
    private static boolean names(Traits a, Traits b) {
        return b.author().filter(n -> a.named().contains(n) && !b.named().contains(n)).isPresent()
                && !a.author().equals(b.author());
    }

    /** A drink seldom changes what it is made of; where nothing is read nothing is said. */
    private static double base(Set<String> a, Set<String> b) {
        if (a.isEmpty() || b.isEmpty()) {
            return 0;
        }
        return a.stream().anyMatch(b::contains) ? SAME_BASE : OTHER_BASE;
    }

    /** Names are few and comparisons many, so that each pair is worked out once. */
    private double name(Traits a, Traits b) {
        return known.computeIfAbsent(a.call(), c -> new IdentityHashMap<>())
                .computeIfAbsent(b.call(), c -> name(a.call(), c));
    }

    private double name(Call a, Call b) {
        double likeness =
                Math.max(
                        names.between(a.name(), b.name()),
                        Math.max(names.between(a.head(), b.head()), contained(a, b)));
        boolean apart =
                !a.classes().isEmpty()
                        && !b.classes().isEmpty()
                        && Collections.disjoint(a.classes(), b.classes());
        boolean generic = a.generic() || b.generic();
        double square = likeness * likeness;
        return square * (apart ? OTHER_CLASS : 1) * (generic ? GENERIC : 1);
    }

    /** A name that stands whole in a longer one, such as “The Widow” in “Widow’s Cup”. */
    private double contained(Call a, Call b) {
        double in = a.head().isGeneric() ? 0 : names.covered(a.head(), b.name());
        double back = b.head().isGeneric() ? 0 : names.covered(b.head(), a.name());
        return CONTAINED * Math.max(in, back);
    }

    /** Returns the Jaccard index weighted by rarity; neither for nor against where none is read. */
    private double ingredients(List<String> a, List<String> b) {
        if (a.isEmpty() || b.isEmpty()) {
            return UNREAD;
        }
        double common = 0;
        double all = 0;
        int i = 0;
        int j = 0;
        while (i < a.size() || j < b.size()) {
            int order = i == a.size() ? 1 : j == b.size() ? -1 : a.get(i).compareTo(b.get(j));
            double weight = rarity.get(order <= 0 ? a.get(i) : b.get(j));
            all += weight;
            common += order == 0 ? weight : 0;
            i += order <= 0 ? 1 : 0;
            j += order >= 0 ? 1 : 0;
        }
        return common / all;
    }
}
