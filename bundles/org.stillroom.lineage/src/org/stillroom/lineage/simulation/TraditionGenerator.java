package org.stillroom.lineage.simulation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.stillroom.lineage.collation.Token;
import org.stillroom.lineage.parents.Text;
import org.stillroom.model.date.UncertainDate;

/**
 * Invents traditions with a known descent, to see how often the right parent is found and how far
 * its support can be trusted.
 *
 * <p>Each text is copied from an earlier one, later ones oftener; its words are changed (0.55),
 * dropped (0.25) and added (0.20) at the rate of change; some have a passage moved, some take their
 * second half from another text, some are reprints; a share of all is lost.
 */
public final class TraditionGenerator {

    private static final int VOCABULARY = 120;
    private static final int FIRST_YEAR = 1800;
    private static final double MOVED = 0.15;
    private static final double CHANGED = 0.55;
    private static final double DROPPED = 0.80;

    private final Tradition.Settings settings;
    private final SplittableRandom random;

    /** One copy, surviving or not. */
    private record Copy(List<Integer> words, int parent, int second, int year) {}

    /** Makes a generator; the same seed gives the same traditions. */
    public TraditionGenerator(Tradition.Settings settings, long seed) {
        this.settings = settings;
        this.random = new SplittableRandom(seed);
    }

    /** Returns the next tradition. */
    public Tradition next() {
        List<Copy> copies = copies();
        boolean[] kept = new boolean[copies.size()];
        for (int i = 0; i < kept.length; i++) {
            kept[i] = i == 0 || random.nextDouble() >= settings.lost();
        }
        List<Text> texts = new ArrayList<>();
        Map<String, String> parents = new HashMap<>();
        Map<String, String> second = new HashMap<>();
        for (int i = 0; i < kept.length; i++) {
            if (kept[i]) {
                texts.add(text(i, copies.get(i)));
                if (i > 0) {
                    parents.put(id(i), id(survivor(copies, kept, copies.get(i).parent())));
                }
                if (copies.get(i).second() >= 0) {
                    second.put(id(i), id(survivor(copies, kept, copies.get(i).second())));
                }
            }
        }
        return new Tradition(texts, parents, second);
    }

    private List<Copy> copies() {
        List<Copy> copies = new ArrayList<>();
        List<Integer> first = new ArrayList<>();
        for (int i = 0; i < settings.words(); i++) {
            first.add(random.nextInt(VOCABULARY));
        }
        copies.add(new Copy(first, -1, -1, FIRST_YEAR));
        int count = (int) Math.round(settings.survivors() / (1 - settings.lost()));
        for (int i = 1; i < count; i++) {
            copies.add(copy(copies, i));
        }
        return copies;
    }

    private Copy copy(List<Copy> copies, int i) {
        int parent = exemplar(i);
        int year = FIRST_YEAR + 3 * i + random.nextInt(3);
        List<Integer> words = new ArrayList<>(copies.get(parent).words());
        if (random.nextDouble() < settings.reprinted()) {
            return new Copy(words, parent, -1, year);
        }
        int second = -1;
        if (i > 1 && random.nextDouble() < settings.contaminated()) {
            second = random.nextInt(i - 1);
            second += second >= parent ? 1 : 0;
            List<Integer> other = copies.get(second).words();
            words = new ArrayList<>(words.subList(0, words.size() / 2));
            words.addAll(other.subList(other.size() / 2, other.size()));
        }
        return new Copy(moved(changed(words)), parent, second, year);
    }

    /** Returns the number of an earlier text; the k-th of i has the weight 1 + 2k/i. */
    private int exemplar(int i) {
        double total = 0;
        for (int k = 0; k < i; k++) {
            total += 1 + 2.0 * k / i;
        }
        double at = random.nextDouble() * total;
        int k = 0;
        while (k < i - 1 && at >= 1 + 2.0 * k / i) {
            at -= 1 + 2.0 * k / i;
            k++;
        }
        return k;
    }

    private List<Integer> changed(List<Integer> words) {
        List<Integer> changed = new ArrayList<>();
        for (int word : words) {
            double at = random.nextDouble() / settings.change();
            if (at >= DROPPED) {
                changed.add(word);
            }
            if (at < CHANGED || at >= DROPPED && at < 1) {
                changed.add(random.nextInt(VOCABULARY));
            }
        }
        return changed;
    }

    private List<Integer> moved(List<Integer> words) {
        if (words.size() < 4 || random.nextDouble() >= MOVED) {
            return words;
        }
        int from = random.nextInt(words.size() - 1);
        List<Integer> block = List.copyOf(words.subList(from, from + 2));
        List<Integer> rest = new ArrayList<>(words.subList(0, from));
        rest.addAll(words.subList(from + 2, words.size()));
        rest.addAll(random.nextInt(rest.size() + 1), block);
        return rest;
    }

    private static int survivor(List<Copy> copies, boolean[] kept, int from) {
        int at = from;
        while (!kept[at]) {
            at = copies.get(at).parent();
        }
        return at;
    }

    private static Text text(int i, Copy copy) {
        List<Token> tokens =
                copy.words().stream().map(w -> Token.word(Vocabulary.word(w))).toList();
        return Text.of(id(i), UncertainDate.of(copy.year()), tokens);
    }

    private static String id(int i) {
        return String.format(java.util.Locale.ROOT, "copy %03d", i);
    }

    /** Invented words of two or three syllables, unlike one another. */
    private static final class Vocabulary {
        private static final String[] START = {
            "ba", "de", "fi", "go", "hu", "ka", "le", "mi", "no", "pu"
        };
        private static final String[] MIDDLE = {
            "rrask", "llom", "ndrin", "stev", "qup", "zzod", "mben", "rthy", "ckil", "ffu", "gwan",
            "xo"
        };

        private Vocabulary() {}

        static String word(int number) {
            return START[number % START.length] + MIDDLE[number / START.length];
        }
    }
}
