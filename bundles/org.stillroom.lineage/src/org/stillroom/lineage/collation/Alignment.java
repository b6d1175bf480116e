package org.stillroom.lineage.collation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/**
 * Which words of two texts stand for one another.
 *
 * <p>The best alignment by Needleman and Wunsch (Journal of Molecular Biology 48, 1970) with affine
 * gaps (Gotoh, Journal of Molecular Biology 162, 1982): the same word scores 4, a word of the same
 * sort 1, a word spelt nearly alike twice its Jaro–Winkler similarity, two marks nothing, words of
 * different sorts −3; opening a gap costs 3 and each further place 0.5. So words outweigh marks.
 *
 * @param pairs the places that stand for one another, in order; −1 where the other text has nothing
 */
public record Alignment(List<Pair> pairs) {

    /**
     * A place in each text.
     *
     * @param first place in the first text, or −1
     * @param second place in the second text, or −1
     */
    public record Pair(int first, int second) {
        /** Tells whether both texts have something there. */
        public boolean isBoth() {
            return first >= 0 && second >= 0;
        }
    }

    private static final double SAME = 4;
    private static final double SAME_KIND = 1;
    private static final double NEAR = 0.8;
    private static final double OTHER_KIND = -3;
    private static final double OPEN = 3;
    private static final double EXTEND = 0.5;
    private static final double NEVER = -1e9;

    /** Keeps the pairs as an unchangeable list. */
    public Alignment {
        pairs = List.copyOf(pairs);
    }

    /** Returns the best alignment of two texts; of equally good ones always the same. */
    public static Alignment of(List<Token> first, List<Token> second) {
        return new Tables(first, second).traced();
    }

    /** Returns how well two words fit, as described above. */
    static double score(Token a, Token b) {
        if (a.kind() == Token.Kind.MARK && b.kind() == Token.Kind.MARK) {
            return a.equals(b) ? 0.1 : 0;
        }
        if (a.equals(b)) {
            return SAME;
        }
        if (a.kind() != b.kind()) {
            return OTHER_KIND;
        }
        double letters = a.kind() == Token.Kind.WORD ? Letters.likeness(a.value(), b.value()) : 0;
        if (letters >= NEAR) {
            return 2 * letters;
        }
        return a.kind() == Token.Kind.WORD ? -SAME_KIND : SAME_KIND;
    }

    /** Jaro–Winkler likeness of words that may be one word spelt two ways. */
    private static final class Letters {
        private static final JaroWinklerSimilarity MEASURE = new JaroWinklerSimilarity();

        private Letters() {}

        static double likeness(String a, String b) {
            boolean far = Math.abs(a.length() - b.length()) > 4 || a.charAt(0) != b.charAt(0);
            return far ? 0 : MEASURE.apply(a, b);
        }
    }

    /** The three tables of Gotoh’s method: both have a word, only the first, only the second. */
    private static final class Tables {
        private final List<Token> a;
        private final List<Token> b;
        private final double[][] both;
        private final double[][] first;
        private final double[][] second;

        Tables(List<Token> a, List<Token> b) {
            this.a = a;
            this.b = b;
            both = new double[a.size() + 1][b.size() + 1];
            first = new double[a.size() + 1][b.size() + 1];
            second = new double[a.size() + 1][b.size() + 1];
            for (int i = 0; i <= a.size(); i++) {
                for (int j = 0; j <= b.size(); j++) {
                    fill(i, j);
                }
            }
        }

        private void fill(int i, int j) {
            if (i == 0 && j == 0) {
                first[0][0] = NEVER;
                second[0][0] = NEVER;
                return;
            }
            both[i][j] =
                    i > 0 && j > 0 ? best(i - 1, j - 1) + score(a.get(i - 1), b.get(j - 1)) : NEVER;
            first[i][j] = i > 0 ? Math.max(best(i - 1, j) - OPEN, first[i - 1][j] - EXTEND) : NEVER;
            second[i][j] =
                    j > 0 ? Math.max(best(i, j - 1) - OPEN, second[i][j - 1] - EXTEND) : NEVER;
        }

        private double best(int i, int j) {
            return Math.max(both[i][j], Math.max(first[i][j], second[i][j]));
        }

        /** Goes back from the end, staying in a gap's table as long as the gap was lengthened. */
        Alignment traced() {
            List<Pair> pairs = new ArrayList<>();
            int i = a.size();
            int j = b.size();
            char table = start(i, j);
            while (i > 0 || j > 0) {
                if (table == 'b') {
                    pairs.add(new Pair(--i, --j));
                    table = start(i, j);
                } else if (table == 'f') {
                    boolean longer = i > 1 && first[i][j] == first[i - 1][j] - EXTEND;
                    pairs.add(new Pair(--i, -1));
                    table = longer ? 'f' : start(i, j);
                } else {
                    boolean longer = j > 1 && second[i][j] == second[i][j - 1] - EXTEND;
                    pairs.add(new Pair(-1, --j));
                    table = longer ? 's' : start(i, j);
                }
            }
            Collections.reverse(pairs);
            return new Alignment(pairs);
        }

        private char start(int i, int j) {
            double best = best(i, j);
            if (both[i][j] == best) {
                return 'b';
            }
            return first[i][j] == best ? 'f' : 's';
        }
    }
}
