package org.stillroom.benchmarks;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.stillroom.inquiry.BookStudy;
import org.stillroom.inquiry.Study;
import org.stillroom.inquiry.StudyDesk;
import org.stillroom.model.estimate.Distribution;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.estimate.MonteCarlo;
import org.stillroom.model.estimate.Origin;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.Reading;
import org.stillroom.reading.spec.SpecResolver;

/**
 * Compares the limits of uncertain amounts with ten million independent draws, and counts specs.
 *
 * <p>The reference draws by its own sampler (gamma variates after Marsaglia and Tsang 2000) and
 * takes its limits from a histogram, so that it shares nothing with the program but the formula.
 */
public final class UncertaintyBenchmark {

    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();
    private static final int REFERENCE = 10_000_000;
    private static final int BINS = 200_000;

    private UncertaintyBenchmark() {}

    /** Runs the benchmark. */
    public static void main(String[] args) throws IOException {
        limits();
        specs();
    }

    /** The drink of the worked example: spirit, sour and sweet by the glass, with dilution. */
    private static void limits() {
        Estimate spirit = Estimate.of(Origin.pert("v1", 50, 57, 71));
        Estimate sour = Estimate.of(Origin.pert("v2", 12, 20, 30));
        Estimate sweet = Estimate.of(Origin.pert("v3", 10, 15, 20));
        Estimate strength = Estimate.of(new Origin("a", .40, .45, .50, Origin.Shape.RECTANGULAR));
        Estimate dilution = Estimate.of(Origin.pert("d", .15, .25, .35));
        Estimate whole = spirit.plus(sour).plus(sweet);
        Estimate diluted = whole.times(Estimate.exact(1).plus(dilution));
        Distribution usual =
                MonteCarlo.usual().propagate(spirit.times(strength).dividedBy(diluted));
        double[] reference = reference();
        Figures.print("strength: lower limit, usual draws", 100 * usual.low(), "%");
        Figures.print("strength: lower limit, 10^7 draws", 100 * reference[0], "%");
        Figures.print("strength: upper limit, usual draws", 100 * usual.high(), "%");
        Figures.print("strength: upper limit, 10^7 draws", 100 * reference[1], "%");
        double off =
                Math.max(
                        Math.abs(usual.low() / reference[0] - 1),
                        Math.abs(usual.high() / reference[1] - 1));
        Figures.print("largest difference of a limit", 100 * off, "%");
    }

    private static double[] reference() {
        Random random = new Random(20_240_501);
        int[] bins = new int[BINS];
        for (int i = 0; i < REFERENCE; i++) {
            double v1 = pert(random, 50, 57, 71);
            double all = v1 + pert(random, 12, 20, 30) + pert(random, 10, 15, 20);
            double a = .40 + .10 * random.nextDouble();
            double value = v1 * a / (all * (1 + pert(random, .15, .25, .35)));
            bins[(int) (value * BINS)]++;
        }
        return new double[] {quantile(bins, 0.025), quantile(bins, 0.975)};
    }

    private static double quantile(int[] bins, double share) {
        long wanted = Math.round(share * REFERENCE);
        long seen = 0;
        int bin = 0;
        while (seen < wanted) {
            seen += bins[bin++];
        }
        return (bin - 0.5) / BINS;
    }

    private static double pert(Random random, double low, double likely, double high) {
        double a = gamma(random, 1 + 4 * (likely - low) / (high - low));
        double b = gamma(random, 1 + 4 * (high - likely) / (high - low));
        return low + (high - low) * a / (a + b);
    }

    private static double gamma(Random random, double shape) {
        double d = shape - 1.0 / 3;
        double c = 1 / Math.sqrt(9 * d);
        while (true) {
            double x = random.nextGaussian();
            double v = 1 + c * x;
            v = v * v * v;
            if (v > 0
                    && Math.log(random.nextDouble()) < 0.5 * x * x + d - d * v + d * Math.log(v)) {
                return d * v;
            }
        }
    }

    /** Resolves the recipes of the example library again and again, caches of no use after one. */
    private static void specs() throws IOException {
        Path root = Path.of(System.getProperty("stillroom.root", "."));
        try (StudyDesk desk = new StudyDesk(Files.createTempDirectory("stillroom-caches"))) {
            desk.lay(root.resolve("corpus-example"));
            Study study = desk.study(Progress.SILENT);
            List<Double> rates = new ArrayList<>();
            for (int round = 0; round < 12; round++) {
                long begin = CLOCK.getCurrentThreadCpuTime();
                int specs = resolve(study);
                rates.add(specs / ((CLOCK.getCurrentThreadCpuTime() - begin) / 1e9));
            }
            double[] all = rates.stream().skip(2).mapToDouble(Double::doubleValue).toArray();
            Figures.print(
                    "specs a second of one core, slowest of ten", Figures.percentile(all, 0.1), "");
            Figures.print("specs a second of one core, median", Figures.percentile(all, 0.5), "");
        }
    }

    private static int resolve(Study study) {
        int specs = 0;
        for (BookStudy book : study.books()) {
            SpecResolver resolver =
                    SpecResolver.forBook(
                            study.knowledge().measures(),
                            study.knowledge().thesaurus(),
                            book.reading().readings(),
                            book.source().bibliography().circumstances(),
                            book.measures());
            for (Reading reading : book.reading().readings()) {
                resolver.resolve(reading, book.source().text().slice(reading.witness().span()));
                specs++;
            }
        }
        return specs;
    }
}
