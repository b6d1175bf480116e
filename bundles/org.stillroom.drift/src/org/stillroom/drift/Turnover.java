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
 * not looked at. An ingredient that a version merely allows (“or”, “if desired”) says nothing either
 * way there. An ingredient of one version alone makes no event, and ice, garnish and rinses are left
 * aside.
 */
final class Turnover {

    private static final Set<LineKind> COUNTED = EnumSet.of(LineKind.MEASURED, LineKind.TOP);

    private final List<Observation> versions;
    private final Map<String, String> labels = new TreeMap<>();
    private final List<Map<String, Boolean>> presences = new ArrayList<>();

    /** Prepares dated versions in their order; copies and undated ones are passed over. */
    Turnover(List<Observation> ordered) {
        Set<String> roots = new HashSet<>();
        versions =
                ordered.stream()
                        .filter(o -> !Double.isNaN(DriftAnalysis.year(o)))
                        .filter(o -> o.version().reading().genre() == Reading.Genre.RECIPE)
                        .filter(o -> !o.version().spec().lines().isEmpty())
                        .filter(o -> roots.add(o.root()))
                        .toList();
        versions.forEach(o -> presences.add(presence(o.version())));
    }

    private Map<String, Boolean> presence(Version version) {
        Map<String, Boolean> presence = new HashMap<>();
        for (SpecLine line : version.spec().lines()) {
            String family = line.ingredient().family();
            boolean ice = line.ingredient().role() == Role.ICE;
            if (COUNTED.contains(line.line().kind()) && !ice) {
                presence.put(family, true);
                labels.putIfAbsent(family, line.ingredient().label());
            } else if (line.line().kind() == LineKind.ALTERNATIVE) {
                presence.putIfAbsent(family, false);
            }
        }
        return presence;
    }

    /** Returns the events, by the time of their second limit, then by ingredient. */
    List<Drift.Event> events() {
        record Dated(int at, Drift.Event event) {}
        List<Dated> events = new ArrayList<>();
        for (Map.Entry<String, String> ingredient : labels.entrySet()) {
            List<Integer> with = places(ingredient.getKey(), true);
            if (with.size() < 2) {
                continue;
            }
            int before = -1;
            for (int i = 0; i < versions.size(); i++) {
                Optional<Boolean> now = state(i, ingredient.getKey());
                if (now.isEmpty()) {
                    continue;
                }
                if (before >= 0 && !state(before, ingredient.getKey()).equals(now)) {
                    events.add(new Dated(i, event(ingredient.getValue(), now.get(), before, i)));
                }
                before = i;
            }
        }
        events.sort(
                Comparator.comparingInt(Dated::at).thenComparing(d -> d.event().ingredient()));
        return events.stream().map(Dated::event).toList();
    }

    /** Returns whether a version has an ingredient, or nothing where it is left to the maker. */
    private Optional<Boolean> state(int version, String family) {
        Boolean presence = presences.get(version).get(family);
        if (presence == null) {
            return Optional.of(false);
        }
        return presence ? Optional.of(true) : Optional.empty();
    }

    private List<Integer> places(String family, boolean present) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < versions.size(); i++) {
            if (state(i, family).filter(s -> s == present).isPresent()) {
                places.add(i);
            }
        }
        return places;
    }

    private Drift.Event event(String ingredient, boolean enters, int after, int by) {
        String last = versions.get(after).version().source().shortName();
        String first = versions.get(by).version().source().shortName();
        String words =
                enters
                        ? ingredient + " comes in between " + last + " and " + first
                        : ingredient + " drops out between " + last + " and " + first;
        return new Drift.Event(ingredient, enters, last, first, words + doubt(after, by) + ".");
    }

    private String doubt(int after, int by) {
        Certainty order = date(after).before(date(by));
        return order == Certainty.CERTAIN ? "" : "; which of the two is earlier is not certain";
    }

    private UncertainDate date(int version) {
        return versions.get(version).version().source().bibliography().date().orElseThrow();
    }
}
