package org.stillroom.inquiry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.lineage.Drink;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.Span;
import org.stillroom.reading.idiom.IdiomLearner;

/**
 * The doubtful readings of a library, first those whose correction would change most.
 *
 * <p>The expected gain of looking at a line is the chance that it is wrong times its share of the
 * drink, more for a drink of many versions (their root, so that none outweighs the doubt itself).
 * What a book prints often in one way is answered together, because corrections of one sort become a
 * rule: the first lines of a habit, as many as make a rule, share the gain of all its lines. A word
 * of measure that is read right, but may hold twice as much as it holds at least, is asked
 * about on as many lines as make a rule.
 */
public final class Review {

    private Review() {}

    /**
     * A doubtful reading.
     *
     * @param version the recipe
     * @param words where the words stand
     * @param printed the words as printed, in one line
     * @param read how they are read, or empty where they are not
     * @param reason what is doubtful, a sentence
     * @param sure the chance that the reading is right, 0 to 1
     * @param gain how much looking at it is expected to change, in parts of one drink
     * @param alike how many lines of its book the answer would hold for, itself among them
     */
    public record Item(
            Version version,
            Span words,
            String printed,
            String read,
            String reason,
            double sure,
            double gain,
            int alike) {}

    /** Says what the gain is, for the faces. */
    public static final String GAIN =
            "Gain: what part of a drink the look is expected to put right; where a book prints many"
                    + " lines alike, the first "
                    + IdiomLearner.LEAST
                    + " share the gain of all, because so many corrections make a rule.";

    /** Returns the doubtful readings of a library, greatest gain first. */
    public static List<Item> of(Study study, Progress progress) {
        Map<String, Integer> versions = new HashMap<>();
        for (Drink drink : study.drinks(progress).drinks()) {
            drink.versions().forEach(v -> versions.put(v.id(), drink.versions().size()));
        }
        OpenQuestions asking = new OpenQuestions(study.knowledge().thesaurus());
        List<Item> items = new ArrayList<>();
        for (BookStudy book : study.books()) {
            progress.check();
            items.addAll(
                    together(asking.of(book, v -> Math.sqrt(versions.getOrDefault(v.id(), 1)))));
        }
        items.sort(
                Comparator.comparingDouble(Item::gain)
                        .reversed()
                        .thenComparing(i -> i.version().id())
                        .thenComparing(Item::words));
        return List.copyOf(items);
    }

    /** Gives the questions of a book their gain, those answered alike together. */
    private static List<Item> together(List<OpenQuestion> questions) {
        Map<String, List<OpenQuestion>> habits = new LinkedHashMap<>();
        List<Item> items = new ArrayList<>();
        for (OpenQuestion q : questions) {
            if (q.habit().isEmpty()) {
                items.add(item(q, q.gain(), 1));
            } else {
                habits.computeIfAbsent(q.shared(), h -> new ArrayList<>()).add(q);
            }
        }
        habits.values().forEach(habit -> share(habit, items));
        return items;
    }

    private static void share(List<OpenQuestion> habit, List<Item> items) {
        List<OpenQuestion> sorted = new ArrayList<>(habit);
        sorted.sort(Comparator.comparingDouble(OpenQuestion::gain).reversed());
        double all = habit.stream().mapToDouble(OpenQuestion::gain).sum();
        for (int i = 0; i < sorted.size(); i++) {
            OpenQuestion q = sorted.get(i);
            boolean first = i < IdiomLearner.LEAST;
            boolean rule = habit.size() > IdiomLearner.LEAST;
            if (first || !q.sample()) {
                double gain = first && rule ? all / IdiomLearner.LEAST : q.gain();
                items.add(item(q, gain, habit.size()));
            }
        }
    }

    private static Item item(OpenQuestion q, double gain, int alike) {
        String more = alike > 1 ? "; " + alike + " lines of this book alike" : "";
        return new Item(
                q.version(),
                q.words(),
                oneLine(q.version(), q.words()),
                q.read(),
                q.reason() + more,
                q.sure(),
                gain,
                alike);
    }

    private static String oneLine(Version version, Span span) {
        String words = version.source().text().slice(span).strip().replaceAll("\\s+", " ");
        return words.length() > 120 ? words.substring(0, 119) + "…" : words;
    }
}
