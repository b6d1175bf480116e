package org.stillroom.lineage.reuse;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.stillroom.model.text.Folding;

/**
 * The short stretches that a text is made of, as sorted hash values.
 *
 * <p>Recipes are too short for the usual five-word stretches: runs of five characters keep related
 * recipes apart from unrelated ones even where one letter in thirty is wrong.
 *
 * @param values the hash values, sorted, each once
 */
public record Shingles(int[] values) {

    private static final int CHARACTERS = 5;

    /** Returns the runs of five letters or digits, blanks between words counted as one. */
    public static Shingles ofCharacters(String text) {
        String plain = plain(text);
        int count = Math.max(0, plain.length() - CHARACTERS + 1);
        return of(IntStream.range(0, count).map(i -> hash(plain, i, i + CHARACTERS)));
    }

    /** Returns the runs of so many words. */
    public static Shingles ofWords(String text, int length) {
        String[] words = plain(text).split(" ");
        int count = Math.max(0, words.length - length + 1);
        return of(
                IntStream.range(0, count)
                        .map(
                                i ->
                                        String.join(" ", Arrays.copyOfRange(words, i, i + length))
                                                .hashCode()));
    }

    private static Shingles of(IntStream values) {
        return new Shingles(values.sorted().distinct().toArray());
    }

    private static String plain(String text) {
        return Folding.foldWord(text)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
    }

    private static int hash(String text, int from, int to) {
        int hash = 7;
        for (int i = from; i < to; i++) {
            hash = 1_000_003 * hash + text.charAt(i);
        }
        return hash;
    }

    /** Returns those that pass a test. */
    public Shingles where(IntPredicate test) {
        return new Shingles(Arrays.stream(values).filter(test).toArray());
    }

    /** Returns how many there are. */
    public int size() {
        return values.length;
    }

    /** Returns how many both have. */
    public int common(Shingles other) {
        int common = 0;
        int i = 0;
        int j = 0;
        while (i < values.length && j < other.values.length) {
            if (values[i] == other.values[j]) {
                common++;
                i++;
                j++;
            } else if (values[i] < other.values[j]) {
                i++;
            } else {
                j++;
            }
        }
        return common;
    }

    /** Returns the Jaccard index: what both have over what either has, 0 to 1. */
    public double jaccard(Shingles other) {
        int common = common(other);
        int either = size() + other.size() - common;
        return either == 0 ? 0 : (double) common / either;
    }

    /** Returns how much of these the other has, 0 to 1. */
    public double contained(Shingles other) {
        return size() == 0 ? 0 : (double) common(other) / size();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Shingles that && Arrays.equals(values, that.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return size() + " stretches";
    }
}
