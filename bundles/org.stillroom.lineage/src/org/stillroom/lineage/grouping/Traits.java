package org.stillroom.lineage.grouping;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.stillroom.lineage.names.NameForm;
import org.stillroom.lineage.names.NameKeys;
import org.stillroom.lineage.reuse.Names;
import org.stillroom.lineage.reuse.Shingles;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.spec.Role;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;

/**
 * What versions are grouped by.
 *
 * @param version the version
 * @param call what it is called
 * @param ingredients families of its ingredients, sorted, ice and garnish left out
 * @param bases families of its spirits, wines and beers
 * @param wording its words as short stretches
 * @param named surnames of authors of this library that its words name
 * @param author surname of its source’s author, folded
 * @param keys keys under which it meets versions that may be the same drink
 */
record Traits(
        Version version,
        Call call,
        List<String> ingredients,
        Set<String> bases,
        Shingles wording,
        Set<String> named,
        Optional<String> author,
        Set<String> keys) {

    private static final Set<Role> STRONG = Set.of(Role.SPIRIT, Role.WINE, Role.BEER);

    /**
     * Returns the traits of a version in a library of these authors.
     *
     * @param calls what versions so far are called, so that equal names are one object
     */
    static Traits of(Version version, Set<String> authors, Map<String, Call> calls) {
        Call call = calls.computeIfAbsent(version.witness().title(), Call::of);
        Set<String> ingredients = new TreeSet<>();
        Set<String> bases = new TreeSet<>();
        for (SpecLine line : version.spec().lines()) {
            LineKind kind = line.line().kind();
            boolean counts = kind == LineKind.MEASURED || kind == LineKind.TOP;
            if (counts && line.ingredient().role() != Role.ICE && line.ingredient().known()) {
                ingredients.add(line.ingredient().family());
                if (STRONG.contains(line.ingredient().role())) {
                    bases.add(line.ingredient().family());
                }
            }
        }
        String body = version.source().text().slice(version.witness().body());
        return new Traits(
                version,
                call,
                List.copyOf(ingredients),
                bases,
                Shingles.ofCharacters(body),
                Names.named(version.wordsPutRight(), authors),
                Names.author(version.source()),
                keys(version, call));
    }

    private static Set<String> keys(Version version, Call call) {
        Set<String> keys = new TreeSet<>(NameKeys.of(call.name()));
        keys.add("=" + version.id());
        version.reading().reference().ifPresent(r -> r.chain().forEach(c -> keys.add("=" + c)));
        keys.addAll(NameKeys.of(call.head()));
        return keys;
    }

    /** Returns the same traits with other wording. */
    Traits with(Shingles other) {
        return new Traits(version, call, ingredients, bases, other, named, author, keys);
    }

    /** Returns the name, folded. */
    NameForm name() {
        return call.name();
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
