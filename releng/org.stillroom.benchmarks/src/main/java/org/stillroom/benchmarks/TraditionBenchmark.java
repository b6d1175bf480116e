package org.stillroom.benchmarks;

import java.util.List;
import java.util.Locale;
import org.stillroom.lineage.parents.Settings;
import org.stillroom.lineage.simulation.Tradition;
import org.stillroom.lineage.simulation.TraditionScores;

/**
 * Traces invented traditions of known descent and prints how often the parent is found.
 *
 * <p>{@code TraditionBenchmark [TRADITIONS]}: 40 of each sort where no number is given.
 */
public final class TraditionBenchmark {

    private static final long SEED = 1794;

    private TraditionBenchmark() {}

    /** Runs the benchmark. */
    public static void main(String[] words) {
        int traditions = words.length > 0 ? Integer.parseInt(words[0]) : 40;
        System.out.println(
                "words survivors change lost contaminated reprinted   texts  first  words  three"
                        + "  equal  tied  calibration");
        for (Tradition.Settings how : sorts()) {
            TraditionScores s = TraditionScores.of(how, Settings.PLAIN, traditions, SEED);
            System.out.printf(
                    Locale.ROOT,
                    "%5d %9d %6.2f %4.2f %12.2f %9.2f %7d %6.3f %6.3f %6.3f %6d %5d %12.3f%n",
                    how.words(),
                    how.survivors(),
                    how.change(),
                    how.lost(),
                    how.contaminated(),
                    how.reprinted(),
                    s.texts(),
                    s.topOne(),
                    s.rightWords(),
                    s.topThree(),
                    s.equal(),
                    s.tied(),
                    s.calibrationError());
        }
    }

    private static List<Tradition.Settings> sorts() {
        return List.of(
                new Tradition.Settings(40, 12, 0.08, 0, 0, 0.1),
                new Tradition.Settings(40, 12, 0.08, 0.3, 0, 0.1),
                new Tradition.Settings(40, 12, 0.08, 0.3, 0.15, 0.1),
                new Tradition.Settings(80, 12, 0.08, 0.3, 0.15, 0.1),
                new Tradition.Settings(25, 12, 0.08, 0.3, 0.15, 0.1),
                new Tradition.Settings(40, 20, 0.08, 0.3, 0.15, 0.1),
                new Tradition.Settings(40, 12, 0.03, 0.3, 0.15, 0.3));
    }
}
