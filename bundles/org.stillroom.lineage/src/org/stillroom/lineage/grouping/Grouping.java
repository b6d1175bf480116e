package org.stillroom.lineage.grouping;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.stillroom.lineage.Drink;
import org.stillroom.lineage.Drinks;
import org.stillroom.lineage.VersionOrder;
import org.stillroom.lineage.reuse.Names;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.spec.Version;

/** Makes drinks out of versions. */
public final class Grouping {

    private final Links links;

    /** Makes a grouping that respects these decisions. */
    public Grouping(List<Assertion> decisions) {
        this.links = Links.of(decisions);
    }

    /** Returns the drinks, by name. */
    public Drinks group(List<Version> versions, Progress progress) {
        progress.begin("Grouping versions", versions.size());
        List<Version> ordered = new ArrayList<>(versions);
        ordered.sort(VersionOrder.BY_DATE);
        Set<String> authors = new TreeSet<>();
        ordered.forEach(v -> Names.author(v.source()).ifPresent(authors::add));
        Map<String, Call> calls = new HashMap<>();
        List<Traits> traits = ordered.stream().map(v -> Traits.of(v, authors, calls)).toList();
        Likeness likeness = new Likeness(Traits.frequencies(traits), traits.size());
        List<Drink> drinks = new ArrayList<>();
        for (Groups.Group group : new Groups(likeness, links).group(traits, progress)) {
            drinks.add(drink(group.members()));
        }
        drinks.sort(
                Comparator.comparing(Drink::name, String.CASE_INSENSITIVE_ORDER)
                        .thenComparing(Drink::id));
        return new Drinks(drinks);
    }

    private Drink drink(List<Traits> members) {
        List<Version> versions =
                members.stream().map(Traits::version).sorted(VersionOrder.BY_DATE).toList();
        List<String> names = new ArrayList<>();
        for (Version version : versions) {
            String title = version.witness().title();
            if (names.stream().noneMatch(title::equalsIgnoreCase)) {
                names.add(title);
            }
        }
        return new Drink(versions.get(0).id(), name(members, versions), names, versions);
    }

    /** Returns the name that a person gave, else the one that most versions bear. */
    private String name(List<Traits> members, List<Version> versions) {
        Optional<String> given =
                versions.stream()
                        .map(v -> links.names().get(v.id()))
                        .filter(n -> n != null && !n.isEmpty())
                        .findFirst();
        if (given.isPresent()) {
            return given.get();
        }
        Map<String, Integer> counts = new TreeMap<>();
        members.forEach(m -> counts.merge(m.name().key(), 1, Integer::sum));
        int most = counts.values().stream().max(Integer::compare).orElse(0);
        List<String> forms =
                members.stream()
                        .sorted(Comparator.comparing(Traits::version, VersionOrder.BY_DATE))
                        .filter(m -> counts.get(m.name().key()) == most)
                        .map(m -> m.version().witness().title())
                        .toList();
        return forms.stream().filter(Grouping::isMixed).findFirst().orElse(forms.get(0));
    }

    private static boolean isMixed(String title) {
        return title.chars().anyMatch(Character::isLowerCase);
    }
}
