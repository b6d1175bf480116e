package org.stillroom.inquiry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.lineage.Drink;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.Doubt;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.spec.Spec;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.Span;

/**
 * The doubtful readings of a library, first those whose correction would change most.
 *
 * <p>The expected gain of looking at a line is the chance that it is wrong times what hangs on it:
 * its share of the drink, how many versions the drink has, and how many lines of the book are read
 * in the same doubtful way, because corrections of one sort become a rule. The three weights are
 * roots and logarithms of our own, so that none of them outweighs the doubt itself.
 */
public final class Review {

    /** Readings that are surer than this are not listed: nobody would find a mistake in ten. */
    private static final double SURE = 0.9;

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
     * @param gain how much looking at it is expected to change, in lines of one drink
     */
    public record Item(
            Version version,
            Span words,
            String printed,
            String read,
            String reason,
            double sure,
            double gain) {}

    /** Returns the doubtful readings of a library, greatest gain first. */
    public static List<Item> of(Study study, Progress progress) {
        Map<String, Integer> versions = new HashMap<>();
        for (Drink drink : study.drinks(progress).drinks()) {
            drink.versions().forEach(v -> versions.put(v.id(), drink.versions().size()));
        }
        List<Item> items = new ArrayList<>();
        for (BookStudy book : study.books()) {
            progress.check();
            Map<String, Integer> habits = habits(book);
            for (Version version : book.versions()) {
                items.addAll(of(version, versions.getOrDefault(version.id(), 1), habits));
            }
        }
        items.sort(
                Comparator.comparingDouble(Item::gain)
                        .reversed()
                        .thenComparing(i -> i.version().id())
                        .thenComparing(Item::words));
        return List.copyOf(items);
    }

    /** Counts how often a book’s doubtful lines are read in one way. */
    private static Map<String, Integer> habits(BookStudy book) {
        Map<String, Integer> habits = new HashMap<>();
        for (Version version : book.versions()) {
            for (ReadingLine line : version.reading().lines()) {
                if (line.confidence().probability() < SURE) {
                    habits.merge(habit(line), 1, Integer::sum);
                }
            }
        }
        return habits;
    }

    private static String habit(ReadingLine line) {
        return line.measure() + '|' + line.ingredientName();
    }

    private static List<Item> of(Version version, int versions, Map<String, Integer> habits) {
        List<Item> items = new ArrayList<>();
        Set<Span> listed = new HashSet<>();
        Spec spec = version.spec();
        for (SpecLine specLine : spec.lines()) {
            ReadingLine line = specLine.line();
            boolean own = version.reading().lines().contains(line);
            double sure = line.confidence().probability();
            if (own && sure < SURE && listed.add(line.span())) {
                int same = habits.getOrDefault(habit(line), 1);
                double gain = (1 - sure) * share(specLine, spec) * weight(versions, same);
                items.add(item(version, line, gain));
            }
        }
        for (Doubt doubt : version.reading().doubts()) {
            boolean taken = listed.stream().anyMatch(s -> s.overlaps(doubt.span()));
            if (!taken) {
                listed.add(doubt.span());
                double gain = doubt.weight() * 0.5 * weight(versions, 1);
                items.add(item(version, doubt, gain));
            }
        }
        return items;
    }

    private static double weight(int versions, int same) {
        return Math.sqrt(versions) * (1 + Math.log(same));
    }

    /** Returns what part of the drink a line is, at least a tenth: even a dash is a line. */
    private static double share(SpecLine line, Spec spec) {
        if (line.line().kind() == LineKind.ICE || line.line().kind() == LineKind.GARNISH) {
            return 0.1;
        }
        double whole = spec.volume().map(v -> v.likely()).orElse(0.0);
        double part = line.millilitres().map(v -> v.likely()).orElse(0.0);
        double even = 1.0 / Math.max(1, spec.lines().size());
        return Math.max(0.1, whole > 0 && part > 0 ? Math.min(1, part / whole) : even);
    }

    private static Item item(Version version, ReadingLine line, double gain) {
        String reason =
                line.confidence().reasons().isEmpty()
                        ? "read with little certainty"
                        : String.join("; ", line.confidence().reasons());
        return new Item(
                version,
                line.span(),
                oneLine(version, line.span()),
                BookRules.words(line),
                reason,
                line.confidence().probability(),
                gain);
    }

    private static Item item(Version version, Doubt doubt, double gain) {
        return new Item(
                version,
                doubt.span(),
                oneLine(version, doubt.span()),
                "",
                doubt.reason(),
                1 - doubt.weight(),
                gain);
    }

    private static String oneLine(Version version, Span span) {
        String words = version.source().text().slice(span).strip().replaceAll("\\s+", " ");
        return words.length() > 120 ? words.substring(0, 119) + "…" : words;
    }
}
