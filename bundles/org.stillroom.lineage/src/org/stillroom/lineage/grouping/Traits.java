package org.stillroom.lineage.grouping;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.stillroom.lineage.names.NameForm;
import org.stillroom.lineage.names.NameKeys;
import org.stillroom.lineage.reuse.Shingles;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.spec.Role;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;

/**
 * What versions are grouped by.
 *
 * @param version the version
 * @param name its name, folded
 * @param ingredients families of its ingredients, ice and garnish left out
 * @param wording its words as short stretches
 * @param keys keys under which it meets versions that may be the same drink
 */
record Traits(
        Version version,
        NameForm name,
        Set<String> ingredients,
        Shingles wording,
        Set<String> keys) {

    static Traits of(Version version) {
        NameForm name = NameForm.of(version.witness().title());
        Set<String> ingredients = new TreeSet<>();
        for (SpecLine line : version.spec().lines()) {
            LineKind kind = line.line().kind();
            boolean counts = kind == LineKind.MEASURED || kind == LineKind.TOP;
            if (counts && line.ingredient().role() != Role.ICE && line.ingredient().known()) {
                ingredients.add(line.ingredient().family());
            }
        }
        String body = version.source().text().slice(version.witness().body());
        return new Traits(
                version, name, ingredients, Shingles.ofCharacters(body), NameKeys.of(name));
    }

    /** Returns how often each family of ingredients occurs. */
    static Map<String, Integer> frequencies(Iterable<Traits> all) {
        Map<String, Integer> counts = new TreeMap<>();
        for (Traits t : all) {
            t.ingredients.forEach(i -> counts.merge(i, 1, Integer::sum));
        }
        return counts;
    }
}
