package org.stillroom.benchmarks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which line that was read stands for which line of the truth.
 *
 * <p>Lines are matched one to one by their ingredient's words, best overlap first; of equal overlaps
 * the pair whose amounts agree comes first, then the one that stands nearer.
 */
final class LinePairs {

    /** The least overlap of words at which two names may mean one thing. */
    static final double ENOUGH = 0.5;

    /**
     * Two lines that stand for each other.
     *
     * @param read place in the list of what was read
     * @param truth place in the list of the truth
     */
    record Pair(int read, int truth, double overlap) {

        int distance() {
            return Math.abs(read - truth);
        }
    }

    private LinePairs() {}

    /** Returns the pairs, best first. */
    static List<Pair> of(List<TruthLine> read, List<TruthLine> truth) {
        boolean[] readUsed = new boolean[read.size()];
        boolean[] truthUsed = new boolean[truth.size()];
        List<Pair> chosen = new ArrayList<>();
        for (Pair pair : candidates(read, truth)) {
            if (!readUsed[pair.read()] && !truthUsed[pair.truth()]) {
                readUsed[pair.read()] = true;
                truthUsed[pair.truth()] = true;
                chosen.add(pair);
            }
        }
        return chosen;
    }

    private static List<Pair> candidates(List<TruthLine> read, List<TruthLine> truth) {
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < read.size(); i++) {
            for (int j = 0; j < truth.size(); j++) {
                double overlap = overlap(read.get(i).ingredient(), truth.get(j).ingredient());
                if (overlap >= ENOUGH) {
                    boolean same = read.get(i).amount().equals(truth.get(j).amount());
                    pairs.add(new Pair(i, j, overlap + (same ? 0.01 : 0)));
                }
            }
        }
        pairs.sort(
                Comparator.comparingDouble((Pair x) -> -x.overlap())
                        .thenComparingInt(Pair::distance));
        return pairs;
    }

    /** Returns twice the shared words over all words, from 0 to 1. */
    static double overlap(String a, String b) {
        List<String> left = LineBenchmark.words(a);
        List<String> right = LineBenchmark.words(b);
        long both = left.stream().distinct().filter(right::contains).count();
        long sizes = left.stream().distinct().count() + right.stream().distinct().count();
        return sizes == 0 ? 0 : 2.0 * both / sizes;
    }
}
