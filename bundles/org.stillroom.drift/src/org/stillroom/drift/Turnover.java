package org.stillroom.drift;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.stillroom.drift.composition.Stuff;
import org.stillroom.model.date.Certainty;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.spec.Role;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;

/**
 * Finds the ingredients that enter or leave, each between two versions.
 *
 * <p>Amounts are not needed, so that “sugar to taste” counts as sugar. A copy tells nothing new and is
 * not looked at, nor is a second recipe of one source. An ingredient that a version merely allows (“or”, “if desired”) says nothing either
 * way there. An ingredient of one version alone makes no event, and ice, garnish and rinses are left
 * aside.
 */
final class Turnover {

    private static final int FEWEST = 2;

    private static final Set<LineKind> COUNTED = EnumSet.of(LineKind.MEASURED, LineKind.TOP);

    private final List<Observation> versions;
    private final Map<String, String> labels = new TreeMap<>();
    private final Map<String, Role> roles = new HashMap<>();
    private final List<Map<String, Boolean>> presences = new ArrayList<>();

    /** Prepares dated versions in their order; copies and undated ones are passed over. */
    Turnover(List<Observation> ordered) {
        Set<String> roots = new HashSet<>();
        Set<String> sources = new HashSet<>();
        versions =
                ordered.stream()
                        .filter(o -> !Double.isNaN(DriftAnalysis.year(o)))
                        .filter(o -> o.version().reading().genre() == Reading.Genre.RECIPE)
                        .filter(o -> !o.version().spec().lines().isEmpty())
                        .filter(o -> roots.add(o.root()))
                        .filter(o -> sources.add(o.version().source().id()))
                        .toList();
        versions.forEach(o -> presences.add(presence(o.version())));
    }

    private Map<String, Boolean> presence(Version version) {
        Map<String, Boolean> presence = new HashMap<>();
        for (SpecLine line : version.spec().lines()) {
            Stuff stuff = Stuff.of(line);
            String family = stuff.family();
            boolean ice = stuff.role() == Role.ICE;
            if (COUNTED.contains(line.line().kind()) && !ice) {
                presence.put(family, true);
                labels.putIfAbsent(family, stuff.label());
                roles.putIfAbsent(family, stuff.role());
            } else if (line.line().kind() == LineKind.ALTERNATIVE) {
                presence.putIfAbsent(family, false);
            }
        }
        return presence;
    }

    /** A change of one ingredient between two versions, by their places. */
    private record Change(String family, boolean enters, int after, int by) {}

    /** Returns the events, by the time of their second limit, then by ingredient. */
    List<Drift.Event> events() {
        List<Change> changes = new ArrayList<>();
        for (String family : labels.keySet()) {
            if (places(family) >= FEWEST) {
                changes.addAll(changes(family));
            }
        }
        changes.sort(
                Comparator.comparingInt(Change::by)
                        .thenComparing(c -> labels.get(c.family()))
                        .thenComparing(Change::family));
        return changes.stream().map(c -> event(c, partner(c, changes))).toList();
    }

    private List<Change> changes(String family) {
        List<Change> changes = new ArrayList<>();
        int before = -1;
        for (int i = 0; i < versions.size(); i++) {
            Optional<Boolean> now = state(i, family);
            if (now.isPresent()) {
                if (before >= 0 && !state(before, family).equals(now)) {
                    changes.add(new Change(family, now.get(), before, i));
                }
                before = i;
            }
        }
        return changes;
    }

    /** Returns the ingredient of the same role that goes the other way between the same versions. */
    private Optional<Change> partner(Change change, List<Change> all) {
        return all.stream()
                .filter(c -> c.enters() != change.enters())
                .filter(c -> c.after() == change.after() && c.by() == change.by())
                .filter(c -> roles.get(c.family()) == roles.get(change.family()))
                .findFirst();
    }

    /** Returns whether a version has an ingredient, or nothing where it is left to the maker. */
    private Optional<Boolean> state(int version, String family) {
        Boolean presence = presences.get(version).get(family);
        if (presence == null) {
            return Optional.of(false);
        }
        return presence ? Optional.of(true) : Optional.empty();
    }

    private long places(String family) {
        return presences.stream().filter(p -> Boolean.TRUE.equals(p.get(family))).count();
    }

    private Drift.Event event(Change change, Optional<Change> partner) {
        String last = versions.get(change.after()).version().source().shortName();
        String first = versions.get(change.by()).version().source().shortName();
        String name = labels.get(change.family());
        String what =
                partner.map(p -> labels.get(p.family()))
                        .map(other -> change.enters() ? taken(name, other) : taken(other, name))
                        .orElse(name + (change.enters() ? " comes in" : " drops out"));
        String words = what + " between " + last + " and " + first;
        return new Drift.Event(
                name,
                change.enters(),
                last,
                first,
                words + doubt(change.after(), change.by()) + ".");
    }

    private static String taken(String enters, String leaves) {
        return enters + " takes the place of " + leaves;
    }

    private String doubt(int after, int by) {
        Certainty order = date(after).before(date(by));
        return order == Certainty.CERTAIN ? "" : "; which of the two is earlier is not certain";
    }

    private UncertainDate date(int version) {
        return versions.get(version).version().source().bibliography().date().orElseThrow();
    }
}
