package org.stillroom.ingredients;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.source.Circumstances;

/** Compares what a source names with when it began. */
public final class Anachronisms {

    /** Years by which the shipped years of a sense, which are loose, may be wrong. */
    private static final int LOOSE = 15;

    private Anachronisms() {}

    /**
     * Returns what is named before its time; nothing where the source has no date.
     *
     * @param senses what its ingredients are
     * @param words its words, searched for units, techniques and tools
     * @param where when and where it was written
     * @param thesaurus where the first dates stand
     */
    public static List<Anachronism> check(
            Collection<Sense> senses, String words, Circumstances where, Thesaurus thesaurus) {
        if (where.date().flatMap(UncertainDate::earliest).isEmpty()) {
            return List.of();
        }
        Map<String, Anachronism> found = new LinkedHashMap<>();
        for (Sense sense : senses) {
            ofSense(sense, where, thesaurus).ifPresent(a -> found.putIfAbsent(sense.id(), a));
        }
        Phrases<Milestone> phrases = new Phrases<>();
        thesaurus.milestones().stream()
                .filter(
                        m ->
                                m.kind() == Milestone.Kind.UNIT
                                        || m.kind() == Milestone.Kind.TECHNIQUE)
                .forEach(m -> m.subjects().forEach(s -> phrases.add(s, m)));
        for (Phrases.Found<Milestone> one : phrases.in(words)) {
            early(one.words(), one.what(), where)
                    .ifPresent(a -> found.putIfAbsent(one.what().id(), a));
        }
        return List.copyOf(found.values());
    }

    private static Optional<Anachronism> ofSense(
            Sense sense, Circumstances where, Thesaurus thesaurus) {
        Collection<String> ids = thesaurus.withBroader(sense.id());
        Optional<Milestone> latest =
                thesaurus.milestones().stream()
                        .filter(m -> m.kind() == Milestone.Kind.INGREDIENT)
                        .filter(m -> m.first().isPresent() && isFor(m, where))
                        .filter(m -> m.subjects().stream().anyMatch(ids::contains))
                        .max(Comparator.comparingInt(m -> m.first().getAsInt()));
        return latest.or(() -> ofYears(sense)).flatMap(m -> early(sense.label(), m, where));
    }

    private static Optional<Milestone> ofYears(Sense sense) {
        if (sense.validity().from().isEmpty()) {
            return Optional.empty();
        }
        boolean own = sense.source().status() == Citation.Status.USER;
        int from = sense.validity().from().getAsInt() - (own ? 0 : LOOSE);
        return Optional.of(
                new Milestone(
                        sense.id() + "-years",
                        Milestone.Kind.INGREDIENT,
                        List.of(sense.id()),
                        OptionalInt.of(from),
                        OptionalInt.empty(),
                        "",
                        "The thesaurus has " + sense.label() + ' ' + sense.validity().years() + '.',
                        sense.source()));
    }

    private static boolean isFor(Milestone milestone, Circumstances where) {
        return milestone.place().isEmpty()
                || where.place()
                        .flatMap(p -> p.country())
                        .map(c -> c.equals(milestone.place()))
                        .orElse(false);
    }

    private static Optional<Anachronism> early(
            String subject, Milestone milestone, Circumstances where) {
        UncertainDate date = where.date().orElseThrow();
        int first = milestone.first().orElse(Integer.MIN_VALUE);
        int earliest = date.earliestYear().orElse(Integer.MAX_VALUE);
        if (earliest >= first || !isFor(milestone, where)) {
            return Optional.empty();
        }
        boolean certain =
                date.latestYear().isPresent()
                        && date.latestYear().getAsInt() < first
                        && !date.isUncertain();
        Explanation why =
                Explanation.of(
                        subject
                                + (certain
                                        ? " comes before its time: "
                                        : " may come before its time: ")
                                + "the source is of "
                                + date.toText()
                                + ", and it is known from "
                                + first
                                + " on.",
                        Explanation.cited(milestone.statement(), milestone.source()));
        return Optional.of(new Anachronism(subject, milestone, certain, why));
    }
}
