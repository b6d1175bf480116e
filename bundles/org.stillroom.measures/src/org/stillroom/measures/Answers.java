package org.stillroom.measures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.stillroom.measures.MeasureMeaning.Answer;

/** Brings statements together that give the same amount, so that competing answers show. */
final class Answers {

    /** Amounts nearer than this are one answer: two drachms differ by four in a hundred. */
    private static final double SAME = 0.02;

    private Answers() {}

    static List<Answer> of(List<Candidate> candidates) {
        List<Candidate> sorted =
                candidates.stream()
                        .filter(c -> c.weight() > 0)
                        .sorted(Comparator.comparingDouble(Candidate::likely))
                        .toList();
        double total = sorted.stream().mapToDouble(Candidate::weight).sum();
        List<Answer> answers = new ArrayList<>();
        List<Candidate> cluster = new ArrayList<>();
        for (Candidate candidate : sorted) {
            boolean apart =
                    !cluster.isEmpty()
                            && candidate.likely() > cluster.getFirst().likely() * (1 + SAME);
            if (apart) {
                answers.add(answer(cluster, total));
                cluster = new ArrayList<>();
            }
            cluster.add(candidate);
        }
        if (!cluster.isEmpty()) {
            answers.add(answer(cluster, total));
        }
        answers.sort(
                Comparator.comparingDouble((Answer a) -> -a.share())
                        .thenComparingDouble(Answer::amount));
        return List.copyOf(answers);
    }

    private static Answer answer(List<Candidate> cluster, double total) {
        Candidate first =
                cluster.stream().max(Comparator.comparingDouble(Candidate::weight)).orElseThrow();
        double weight = cluster.stream().mapToDouble(Candidate::weight).sum();
        return new Answer(first.likely(), weight / total, first.authority().shortName());
    }
}
