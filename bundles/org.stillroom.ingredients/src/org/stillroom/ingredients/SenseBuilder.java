package org.stillroom.ingredients;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.stillroom.ingredients.Properties.Figure;
import org.stillroom.ingredients.Properties.Quantity;
import org.stillroom.ingredients.knowledge.AllergenRow;
import org.stillroom.ingredients.knowledge.AllergenRow.Presence;
import org.stillroom.ingredients.knowledge.FigureRow;
import org.stillroom.ingredients.knowledge.Knowledge;
import org.stillroom.ingredients.knowledge.SenseRow;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.estimate.Origin;

/** Works the rows out into senses: figures, allergens and hazards are taken over from broader ones. */
final class SenseBuilder {

    private final Knowledge rows;
    private final Map<String, Map<Quantity, FigureRow>> figures = new HashMap<>();
    private final Map<String, List<AllergenRow>> allergens = new HashMap<>();
    private final Map<String, List<Hazard>> hazards = new HashMap<>();

    SenseBuilder(Knowledge rows) {
        this.rows = rows;
        rows.figures()
                .forEach(
                        f ->
                                figures.computeIfAbsent(
                                                rows.current(f.sense()),
                                                s -> new EnumMap<>(Quantity.class))
                                        .put(f.quantity(), f));
        rows.allergens()
                .forEach(
                        a ->
                                allergens
                                        .computeIfAbsent(
                                                rows.current(a.sense()), s -> new ArrayList<>())
                                        .add(a));
        Map<String, Hazard> byId = new LinkedHashMap<>();
        rows.hazards().forEach(h -> byId.put(h.id(), h));
        byId.values()
                .forEach(
                        h ->
                                h.senses().stream()
                                        .map(rows::current)
                                        .distinct()
                                        .forEach(
                                                s ->
                                                        hazards.computeIfAbsent(
                                                                        s, k -> new ArrayList<>())
                                                                .add(h)));
    }

    TreeMap<String, Sense> build() {
        TreeMap<String, Sense> senses = new TreeMap<>();
        rows.senses().values().forEach(row -> senses.put(row.id(), sense(row)));
        return senses;
    }

    private Sense sense(SenseRow row) {
        List<String> lineage = lineage(row.id());
        return new Sense(
                row.id(),
                row.label(),
                row.kind(),
                row.broader(),
                row.close(),
                row.validity(),
                row.scope(),
                properties(row, lineage),
                allergens(lineage),
                hazards(lineage),
                row.source());
    }

    /** Returns the sense and its broader ones, nearest first. */
    private List<String> lineage(String id) {
        Set<String> seen = new LinkedHashSet<>();
        ArrayDeque<String> open = new ArrayDeque<>(List.of(id));
        while (!open.isEmpty()) {
            String next = open.poll();
            if (rows.senses().containsKey(next) && seen.add(next)) {
                open.addAll(rows.senses().get(next).broader());
            }
        }
        return List.copyOf(seen);
    }

    private Properties properties(SenseRow row, List<String> lineage) {
        Map<Quantity, Figure> found = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            for (String id : lineage) {
                FigureRow figure = figures.getOrDefault(id, Map.of()).get(quantity);
                if (figure != null) {
                    found.put(quantity, figure(row, figure));
                    break;
                }
            }
        }
        return found.isEmpty() ? Properties.NONE : new Properties(found);
    }

    /**
     * The unknown is named after the sense that has it, not after the broader one that it was stated
     * for: two spirits of one recipe do not rise and fall together.
     */
    private static Figure figure(SenseRow row, FigureRow figure) {
        Estimate value =
                figure.low() == figure.high()
                        ? Estimate.exact(figure.likely())
                        : Estimate.of(
                                Origin.pert(
                                        figure.quantity().word() + " of " + row.label(),
                                        figure.low(),
                                        figure.likely(),
                                        figure.high()));
        return new Figure(value, figure.sense(), figure.source());
    }

    /**
     * What a broader sense holds its narrower ones hold too; that somebody looked and found nothing
     * more counts only for the sense itself.
     */
    private Allergens allergens(List<String> lineage) {
        TreeSet<Allergen> contains = new TreeSet<>();
        TreeSet<Allergen> possible = new TreeSet<>();
        boolean assessed = false;
        for (int i = 0; i < lineage.size(); i++) {
            List<AllergenRow> statements = allergens.getOrDefault(lineage.get(i), List.of());
            for (AllergenRow row : statements) {
                boolean there = row.presence() == Presence.CONTAINS;
                row.allergen().ifPresent(a -> (there ? contains : possible).add(a));
            }
            boolean stop = statements.stream().anyMatch(a -> a.allergen().isEmpty());
            assessed |= i == 0 && isComplete(statements);
            if (stop) {
                break;
            }
        }
        return new Allergens(contains, possible, assessed);
    }

    private static boolean isComplete(List<AllergenRow> statements) {
        return !statements.isEmpty()
                && statements.stream().noneMatch(a -> a.presence() == Presence.UNKNOWN);
    }

    private List<Hazard> hazards(List<String> lineage) {
        Set<Hazard> all = new LinkedHashSet<>();
        lineage.forEach(id -> all.addAll(hazards.getOrDefault(id, List.of())));
        return List.copyOf(all);
    }
}
