package org.stillroom.lineage.collation;

import java.util.List;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/**
 * How one text became another, at the least cost.
 *
 * <p>Needleman–Wunsch alignment (1970) with affine gaps (Gotoh 1982): opening a gap costs a little
 * more than lengthening it, so that a dropped phrase is one change and not ten. Costs are in edits: a
 * changed or added ingredient is about one, a changed amount a little less, a common word little.
 *
 * @param cost the cost of all changes, in edits
 * @param substantive the part of it that is not in common words
 * @param alike how many tokens stand unchanged
 */
public record Collation(double cost, double substantive, int alike) {

    private static final double OPEN = 0.1;
    private static final double OTHER_KIND = 0.3;
    private static final double NEAR_WORD = 0.9;
    private static final JaroWinklerSimilarity LETTERS = new JaroWinklerSimilarity();

    /** Returns how a later text came out of an earlier one. */
    public static Collation of(List<Token> earlier, List<Token> later) {
        return new Aligner(earlier, later).align();
    }

    /** Returns what it costs to put one word in the place of another. */
    static double change(Token a, Token b) {
        if (a.equals(b)) {
            return 0;
        }
        double both = Math.max(a.kind().weight(), b.kind().weight());
        if (a.kind() != b.kind()) {
            return both + OTHER_KIND;
        }
        boolean near =
                a.kind() == Token.Kind.WORD && LETTERS.apply(a.value(), b.value()) >= NEAR_WORD;
        return near ? both / 3 : both;
    }

    /** Fills the three tables of Gotoh's method. */
    private static final class Aligner {
        private static final double FAR = 1e9;
        private final List<Token> a;
        private final List<Token> b;
        private final double[][] match;
        private final double[][] drop;
        private final double[][] add;

        Aligner(List<Token> a, List<Token> b) {
            this.a = a;
            this.b = b;
            match = new double[a.size() + 1][b.size() + 1];
            drop = new double[a.size() + 1][b.size() + 1];
            add = new double[a.size() + 1][b.size() + 1];
        }

        Collation align() {
            for (int i = 0; i <= a.size(); i++) {
                for (int j = 0; j <= b.size(); j++) {
                    fill(i, j);
                }
            }
            return trace();
        }

        private void fill(int i, int j) {
            if (i == 0 && j == 0) {
                drop[0][0] = FAR;
                add[0][0] = FAR;
                return;
            }
            match[i][j] =
                    i > 0 && j > 0
                            ? best(i - 1, j - 1) + change(a.get(i - 1), b.get(j - 1))
                            : FAR;
            drop[i][j] =
                    i > 0
                            ? Math.min(best(i - 1, j) + OPEN, drop[i - 1][j])
                                    + a.get(i - 1).kind().weight()
                            : FAR;
            add[i][j] =
                    j > 0
                            ? Math.min(best(i, j - 1) + OPEN, add[i][j - 1])
                                    + b.get(j - 1).kind().weight()
                            : FAR;
        }

        private double best(int i, int j) {
            return Math.min(match[i][j], Math.min(drop[i][j], add[i][j]));
        }

        private Collation trace() {
            int i = a.size();
            int j = b.size();
            int alike = 0;
            double substantive = 0;
            while (i > 0 || j > 0) {
                double least = best(i, j);
                if (match[i][j] == least) {
                    Token x = a.get(--i);
                    Token y = b.get(--j);
                    alike += x.equals(y) ? 1 : 0;
                    boolean words =
                            x.kind() == Token.Kind.WORD && y.kind() == Token.Kind.WORD;
                    substantive += words ? 0 : change(x, y);
                } else if (drop[i][j] == least) {
                    substantive += weight(a.get(--i));
                } else {
                    substantive += weight(b.get(--j));
                }
            }
            return new Collation(best(a.size(), b.size()), substantive, alike);
        }

        private static double weight(Token t) {
            return t.kind() == Token.Kind.WORD ? 0 : t.kind().weight();
        }
    }
}
