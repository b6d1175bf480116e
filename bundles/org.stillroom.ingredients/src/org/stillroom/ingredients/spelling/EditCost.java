package org.stillroom.ingredients.spelling;

import java.util.Arrays;

/**
 * Distance between two spellings, where likely slips cost less than unlikely ones.
 *
 * <p>Damerau–Levenshtein distance in its restricted form (optimal string alignment), with the cost
 * of exchanging, dropping or doubling letters taken from {@code confusions.csv}. Source of the
 * method: F. J. Damerau, Communications of the ACM 7 (1964) 171–176; V. I. Levenshtein, Soviet
 * Physics Doklady 10 (1966) 707–710.
 */
public final class EditCost {

    /** Letters from a to z, digits, anything else, and nothing. */
    private static final int CLASSES = 38;

    private static final int NOTHING = 37;
    private static final double DOUBLED = 0.2;
    private static final double SWAPPED = 0.5;

    private final double[][] costs;

    private EditCost(double[][] costs) {
        this.costs = costs;
    }

    /** Collects the costs of single slips. */
    public static final class Builder {
        private final double[][] costs = new double[CLASSES][CLASSES];

        /** Begins with a cost of 1 for every slip. */
        public Builder() {
            for (double[] row : costs) {
                Arrays.fill(row, 1);
            }
        }

        /** Says what it costs to take one letter for another; an empty word is no letter. */
        public Builder slip(String one, String other, double cost) {
            int a = one.isEmpty() ? NOTHING : classOf(one.charAt(0));
            int b = other.isEmpty() ? NOTHING : classOf(other.charAt(0));
            costs[a][b] = cost;
            costs[b][a] = cost;
            return this;
        }

        /** Returns the distance. */
        public EditCost build() {
            double[][] copy = new double[CLASSES][];
            for (int i = 0; i < CLASSES; i++) {
                copy[i] = costs[i].clone();
            }
            return new EditCost(copy);
        }
    }

    private static int classOf(char c) {
        if (c >= 'a' && c <= 'z') {
            return c - 'a';
        }
        return c >= '0' && c <= '9' ? 26 + c - '0' : 36;
    }

    /**
     * Returns the distance between two folded words; above the limit any number above the limit.
     */
    public double between(String a, String b, double limit) {
        int n = a.length();
        int m = b.length();
        double[] before = new double[m + 1];
        double[] last = new double[m + 1];
        double[] now = new double[m + 1];
        for (int j = 1; j <= m; j++) {
            last[j] = last[j - 1] + drop(b, j - 1);
        }
        for (int i = 1; i <= n; i++) {
            now[0] = last[0] + drop(a, i - 1);
            double least = now[0];
            for (int j = 1; j <= m; j++) {
                now[j] = cell(a, b, i, j, before, last, now);
                least = Math.min(least, now[j]);
            }
            if (least > limit) {
                return least;
            }
            double[] free = before;
            before = last;
            last = now;
            now = free;
        }
        return last[m];
    }

    private double cell(
            String a, String b, int i, int j, double[] before, double[] last, double[] now) {
        char x = a.charAt(i - 1);
        char y = b.charAt(j - 1);
        double best = last[j - 1] + (x == y ? 0 : costs[classOf(x)][classOf(y)]);
        best = Math.min(best, last[j] + drop(a, i - 1));
        best = Math.min(best, now[j - 1] + drop(b, j - 1));
        boolean swapped = i > 1 && j > 1 && x == b.charAt(j - 2) && y == a.charAt(i - 2) && x != y;
        return swapped ? Math.min(best, before[j - 2] + SWAPPED) : best;
    }

    private double drop(String word, int at) {
        char c = word.charAt(at);
        boolean doubled =
                at > 0 && word.charAt(at - 1) == c
                        || at + 1 < word.length() && word.charAt(at + 1) == c;
        return doubled ? DOUBLED : costs[classOf(c)][NOTHING];
    }
}
