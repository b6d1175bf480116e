package org.stillroom.lineage.collation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Several texts laid word by word under one another.
 *
 * <p>Progressive: the two texts that score best are aligned first, then each time the text that fits
 * the table best, every word held against all words of a column. The texts are put in an order of
 * their own first, so that the order in which they are given changes nothing.
 *
 * @param texts the texts, in the order given
 * @param columns for each column the place in each text, or −1
 */
public record Collation(List<List<Token>> texts, List<List<Integer>> columns) {

    private static final double GAP = 1.2;

    /** Keeps the lists unchangeable. */
    public Collation {
        texts = texts.stream().map(List::copyOf).toList();
        columns = columns.stream().map(List::copyOf).toList();
    }

    /** Collates texts. */
    public static Collation of(List<List<Token>> texts) {
        List<Integer> order = order(texts);
        List<int[]> table = new ArrayList<>();
        List<Integer> placed = new ArrayList<>();
        for (int text : order) {
            table = join(texts, table, placed, text);
            placed.add(text);
        }
        List<List<Integer>> columns = new ArrayList<>();
        for (int[] column : table) {
            columns.add(Arrays.stream(column).boxed().toList());
        }
        return new Collation(texts, columns);
    }

    /** Returns the word of a text in a column. */
    public Optional<Token> at(int column, int text) {
        int place = columns.get(column).get(text);
        return place < 0 ? Optional.empty() : Optional.of(texts.get(text).get(place));
    }

    /** Tells whether every text has the same word in a column. */
    public boolean isAgreed(int column) {
        Optional<Token> first = at(column, 0);
        return first.isPresent()
                && IntStream.range(1, texts.size()).allMatch(t -> at(column, t).equals(first));
    }

    /**
     * Returns the order in which texts join: the one that fits all others best, then always the one
     * that fits those already there best; equal ones by their words, so that the order given does
     * not matter.
     */
    private static List<Integer> order(List<List<Token>> texts) {
        int n = texts.size();
        double[][] fit = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                fit[i][j] = fit(texts.get(i), texts.get(j));
                fit[j][i] = fit[i][j];
            }
        }
        List<Integer> left = new ArrayList<>(IntStream.range(0, n).boxed().toList());
        Comparator<Integer> byWords = Comparator.comparing(i -> key(texts.get(i)));
        left.sort(
                Comparator.comparingDouble(
                                (Integer i) -> -Math.round(1e6 * Arrays.stream(fit[i]).sum()))
                        .thenComparing(byWords));
        List<Integer> order = new ArrayList<>();
        while (!left.isEmpty()) {
            int next =
                    order.isEmpty()
                            ? left.get(0)
                            : left.stream()
                                    .min(
                                            Comparator.comparingDouble(
                                                            (Integer i) ->
                                                                    -order.stream()
                                                                            .mapToDouble(
                                                                                    o -> fit[i][o])
                                                                            .max()
                                                                            .orElse(0))
                                                    .thenComparing(byWords))
                                    .orElseThrow();
            order.add(next);
            left.remove((Integer) next);
        }
        return order;
    }

    /** Returns the words alike in two texts; the texts are held in one order for equal results. */
    private static double fit(List<Token> a, List<Token> b) {
        boolean turned = key(a).compareTo(key(b)) > 0;
        List<Token> x = turned ? b : a;
        List<Token> y = turned ? a : b;
        return Alignment.of(x, y).pairs().stream()
                .filter(Alignment.Pair::isBoth)
                .mapToDouble(p -> Math.max(0, Alignment.score(x.get(p.first()), y.get(p.second()))))
                .sum();
    }

    private static String key(List<Token> text) {
        StringBuilder key = new StringBuilder();
        text.forEach(t -> key.append(t.kind().ordinal()).append(t.value()).append(' '));
        return key.toString();
    }

    /** Aligns a text with the columns so far, a word’s score being its mean over the column. */
    private static List<int[]> join(
            List<List<Token>> texts, List<int[]> table, List<Integer> placed, int text) {
        List<Token> words = texts.get(text);
        int rows = table.size();
        double[][] best = new double[rows + 1][words.size() + 1];
        for (int i = 0; i <= rows; i++) {
            for (int j = 0; j <= words.size(); j++) {
                if (i + j > 0) {
                    best[i][j] = step(texts, table, placed, words, best, i, j);
                }
            }
        }
        List<int[]> joined = new ArrayList<>();
        int i = rows;
        int j = words.size();
        while (i > 0 || j > 0) {
            double here = best[i][j];
            int[] column = new int[texts.size()];
            Arrays.fill(column, -1);
            boolean both =
                    i > 0
                            && j > 0
                            && here
                                    == best[i - 1][j - 1]
                                            + score(
                                                    texts,
                                                    table.get(i - 1),
                                                    placed,
                                                    words.get(j - 1));
            if (both) {
                column = table.get(--i).clone();
                column[text] = --j;
            } else if (i > 0 && here == best[i - 1][j] - gap(table.get(i - 1), placed)) {
                column = table.get(--i).clone();
            } else {
                column[text] = --j;
            }
            joined.add(0, column);
        }
        return joined;
    }

    private static double step(
            List<List<Token>> texts,
            List<int[]> table,
            List<Integer> placed,
            List<Token> words,
            double[][] best,
            int i,
            int j) {
        double value = Double.NEGATIVE_INFINITY;
        if (i > 0 && j > 0) {
            value = best[i - 1][j - 1] + score(texts, table.get(i - 1), placed, words.get(j - 1));
        }
        if (i > 0) {
            value = Math.max(value, best[i - 1][j] - gap(table.get(i - 1), placed));
        }
        return j > 0 ? Math.max(value, best[i][j - 1] - GAP) : value;
    }

    /** Passing over a column costs the more, the more texts have a word there. */
    private static double gap(int[] column, List<Integer> placed) {
        long words = placed.stream().filter(t -> column[t] >= 0).count();
        return GAP * words / placed.size();
    }

    private static double score(
            List<List<Token>> texts, int[] column, List<Integer> placed, Token word) {
        double sum = 0;
        for (int t : placed) {
            sum += column[t] < 0 ? -0.2 : Alignment.score(texts.get(t).get(column[t]), word);
        }
        return sum / placed.size();
    }
}
