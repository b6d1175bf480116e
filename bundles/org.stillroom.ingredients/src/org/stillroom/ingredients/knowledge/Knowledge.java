package org.stillroom.ingredients.knowledge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.stillroom.ingredients.Hazard;
import org.stillroom.ingredients.Milestone;

/**
 * Everything that the rows of knowledge files state, before it is worked out.
 *
 * @param senses senses by id
 * @param labels names, in the order of the files
 * @param figures strength, sugar, acid, density; of two for one sense the later counts
 * @param allergens statements about allergens
 * @param hazards hazards; of two with one id the later counts
 * @param milestones first and last dates; of two with one id the later counts
 * @param moved ids that were merged into others, with the id that stands for them now
 */
public record Knowledge(
        SortedMap<String, SenseRow> senses,
        List<LabelRow> labels,
        List<FigureRow> figures,
        List<AllergenRow> allergens,
        List<Hazard> hazards,
        List<Milestone> milestones,
        SortedMap<String, String> moved) {

    /** Nothing is known. */
    public static final Knowledge NONE =
            new Knowledge(
                    new TreeMap<>(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    new TreeMap<>());

    /** Keeps the collections unchangeable. */
    public Knowledge {
        senses = Collections.unmodifiableSortedMap(new TreeMap<>(senses));
        labels = List.copyOf(labels);
        figures = List.copyOf(figures);
        allergens = List.copyOf(allergens);
        hazards = List.copyOf(hazards);
        milestones = List.copyOf(milestones);
        moved = Collections.unmodifiableSortedMap(new TreeMap<>(moved));
    }

    /** Returns this with the rows of another added; its senses of the same id take the place. */
    public Knowledge plus(Knowledge other) {
        SortedMap<String, SenseRow> all = new TreeMap<>(senses);
        all.putAll(other.senses);
        SortedMap<String, String> gone = new TreeMap<>(moved);
        gone.putAll(other.moved);
        return new Knowledge(
                all,
                joined(labels, other.labels),
                joined(figures, other.figures),
                joined(allergens, other.allergens),
                joined(hazards, other.hazards),
                joined(milestones, other.milestones),
                gone);
    }

    private static <T> List<T> joined(List<T> some, List<T> others) {
        List<T> all = new ArrayList<>(some);
        all.addAll(others);
        return all;
    }

    /** Returns the id that stands for this one after merges, itself where it was not merged. */
    public String current(String id) {
        String now = id;
        for (int steps = 0; moved.containsKey(now) && steps <= moved.size(); steps++) {
            now = moved.get(now);
        }
        return now;
    }
}
