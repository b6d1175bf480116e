package org.stillroom.lineage.names;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/**
 * How alike two names are.
 *
 * <p>Each word is held against the likest word of the other name by the Jaro–Winkler similarity
 * (Winkler 1990), and the words are averaged by what they say, both ways round (Monge and Elkan,
 * 1996). Initials stand for words.
 */
public final class NameLikeness {

    /** Below this two words are different words. */
    private static final double SAME_WORD = 0.88;

    private static final double SAME_LETTERS = 0.96;
    private static final double INITIALS = 0.9;
    private static final int LONGEST_ABBREVIATION = 3;

    private final ToDoubleFunction<String> weights;
    private final JaroWinklerSimilarity words = new JaroWinklerSimilarity();

    /** Makes a comparison in which words weigh what the list of common words says. */
    public NameLikeness() {
        this(NameForm::weight);
    }

    /** Makes a comparison with weights of its own, each greater than 0. */
    public NameLikeness(ToDoubleFunction<String> weights) {
        this.weights = weights;
    }

    /** Returns how alike two names are, 0 to 1. */
    public double between(NameForm a, NameForm b) {
        if (a.words().isEmpty() || b.words().isEmpty()) {
            return 0;
        }
        if (a.words().equals(b.words()) || a.joined().equals(b.joined())) {
            return 1;
        }
        double byWords = (covered(a.words(), b.words()) + covered(b.words(), a.words())) / 2;
        double byLetters = words.apply(a.joined(), b.joined());
        double best = byLetters >= SAME_LETTERS ? Math.max(byWords, byLetters) : byWords;
        return initials(a.words(), b.words()) || initials(b.words(), a.words())
                ? Math.max(best, INITIALS)
                : best;
    }

    /** Returns how much of the first name stands in the second, 0 to 1. */
    public double covered(NameForm a, NameForm b) {
        return a.words().isEmpty() ? 0 : covered(a.words(), b.words());
    }

    private double covered(List<String> from, List<String> in) {
        double sum = 0;
        double total = 0;
        for (String word : from) {
            double weight = weights.applyAsDouble(word);
            total += weight;
            sum += weight * likest(word, in);
        }
        return total > 0 ? sum / total : 0;
    }

    private double likest(String word, List<String> in) {
        double best = 0;
        for (String other : in) {
            best = Math.max(best, likeness(word, other));
        }
        return best >= SAME_WORD ? best : 0;
    }

    private double likeness(String word, String other) {
        if (word.equals(other)) {
            return 1;
        }
        boolean shortened =
                Math.min(word.length(), other.length()) <= LONGEST_ABBREVIATION
                        && (word.startsWith(other) || other.startsWith(word));
        return Math.max(shortened ? SAME_WORD : 0, words.apply(word, other));
    }

    /** Tells whether single letters of one name stand for the words of the other, in order. */
    private static boolean initials(List<String> brief, List<String> full) {
        if (brief.size() != full.size() || brief.stream().noneMatch(w -> w.length() == 1)) {
            return false;
        }
        for (int i = 0; i < brief.size(); i++) {
            String b = brief.get(i);
            boolean fits = b.length() == 1 ? full.get(i).startsWith(b) : b.equals(full.get(i));
            if (!fits || full.get(i).length() == 1) {
                return false;
            }
        }
        return true;
    }
}
