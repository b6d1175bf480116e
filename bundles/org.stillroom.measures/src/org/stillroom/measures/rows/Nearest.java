package org.stillroom.measures.rows;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/** Finds the words that were most likely meant; Jaro–Winkler similarity of Apache Commons Text. */
public final class Nearest {

    private static final double ENOUGH = 0.78;

    private Nearest() {}

    /** Returns at most so many candidates that resemble a word, the nearest first. */
    public static List<String> of(String word, Collection<String> candidates, int most) {
        JaroWinklerSimilarity similarity = new JaroWinklerSimilarity();
        record Scored(String candidate, double score) {}
        return candidates.stream()
                .map(c -> new Scored(c, similarity.apply(word, c)))
                .filter(s -> s.score() >= ENOUGH)
                .sorted(
                        Comparator.comparingDouble(Scored::score)
                                .reversed()
                                .thenComparing(Scored::candidate))
                .limit(most)
                .map(Scored::candidate)
                .toList();
    }

    /** Returns a sentence that names the nearest candidate, or lists a few where none is near. */
    public static String remedy(String word, Collection<String> candidates) {
        List<String> near = of(word, candidates, 1);
        if (!near.isEmpty()) {
            return "The nearest that is known is “" + near.getFirst() + "”.";
        }
        List<String> some = candidates.stream().sorted().limit(8).toList();
        return "Known are for instance " + String.join(", ", some) + ".";
    }
}
