package org.stillroom.lineage.simulation;

import java.util.List;
import java.util.Map;
import org.stillroom.lineage.collation.Token;
import org.stillroom.lineage.parents.Ranking;
import org.stillroom.lineage.parents.Settings;
import org.stillroom.lineage.parents.Text;

/**
 * How well parents are found in invented traditions.
 *
 * @param texts texts whose parent was sought
 * @param first how many had the right one first
 * @param words how many had the right one first, or a text with the very same words
 * @param third how many had it among three
 * @param equal how many had another candidate as near, within one edit, as the first
 * @param tied how many of those were reported as tied
 * @param calibrationError mean distance between the support of first candidates and how often they
 *     are right, over ten classes of support, weighted by their size
 */
public record TraditionScores(
        int texts, int first, int words, int third, int equal, int tied, double calibrationError) {

    private static final int CLASSES = 10;

    /** Traces so many traditions. */
    public static TraditionScores of(
            Tradition.Settings how, Settings settings, int traditions, long seed) {
        TraditionGenerator generator = new TraditionGenerator(how, seed);
        int[] counts = new int[6];
        double[][] classes = new double[CLASSES][3];
        for (int t = 0; t < traditions; t++) {
            Tradition tradition = generator.next();
            Ranking ranking = new Ranking(tradition.texts(), settings);
            for (Text text : tradition.texts()) {
                if (tradition.parents().containsKey(text.id())) {
                    count(ranking, text, tradition, counts, classes);
                }
            }
        }
        double error = 0;
        for (double[] c : classes) {
            error += c[0] > 0 ? Math.abs(c[1] - c[2]) / counts[0] : 0;
        }
        return new TraditionScores(
                counts[0], counts[1], counts[5], counts[2], counts[3], counts[4], error);
    }

    private static void count(
            Ranking ranking, Text text, Tradition tradition, int[] counts, double[][] classes) {
        String parent = tradition.parents().get(text.id());
        Map<String, Double> supports = ranking.supports(text);
        List<String> ids = List.copyOf(supports.keySet());
        double support = supports.get(ids.get(0));
        boolean right = ids.get(0).equals(parent);
        counts[0]++;
        counts[1] += right ? 1 : 0;
        counts[2] += ids.subList(0, Math.min(3, ids.size())).contains(parent) ? 1 : 0;
        boolean words = tokens(tradition, ids.get(0)).equals(tokens(tradition, parent));
        counts[5] += words ? 1 : 0;
        boolean equal = ids.size() > 1 && support - supports.get(ids.get(1)) < 1e-9;
        counts[3] += equal ? 1 : 0;
        counts[4] += equal && ranking.margin(text) < 1 ? 1 : 0;
        double[] bin = classes[Math.min(CLASSES - 1, (int) (support * CLASSES))];
        bin[0]++;
        bin[1] += support;
        bin[2] += right ? 1 : 0;
    }

    private static List<Token> tokens(Tradition tradition, String id) {
        return tradition.texts().stream()
                .filter(t -> t.id().equals(id))
                .findFirst()
                .map(Text::tokens)
                .orElse(List.of());
    }

    /** Returns the share that had the right parent first, or a text with its very words. */
    public double rightWords() {
        return (double) words / texts;
    }

    /** Returns the share that had the right parent first. */
    public double topOne() {
        return (double) first / texts;
    }

    /** Returns the share that had the right parent among three. */
    public double topThree() {
        return (double) third / texts;
    }
}
