package org.stillroom.benchmarks;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.stillroom.ingredients.Candidate;
import org.stillroom.ingredients.Label;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.ingredients.spelling.Words;
import org.stillroom.model.source.Circumstances;

/**
 * Misspells names of every sense by rules, and prints how many are right first and within three.
 *
 * <p>Arguments: a seed, by default 1; {@code --mistakes} shows what went wrong. Right are a sense
 * that bears the name before it was misspelt, one that is a kind of it, and one that it is a kind of.
 * A misspelling that is the right name of something else is left out.
 */
public final class AlteredSpellingBenchmark {

    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();
    private static final int NAMES = 4;
    private static final int SHORTEST = 4;

    private AlteredSpellingBenchmark() {}

    private record Case(String sense, String name, String altered, String by) {}

    /** Runs the benchmark. */
    public static void main(String[] args) {
        Locale.setDefault(Locale.ROOT);
        List<String> options = List.of(args);
        long seed =
                options.stream()
                        .filter(o -> o.matches("\\d+"))
                        .map(Long::valueOf)
                        .findFirst()
                        .orElse(1L);
        Thesaurus thesaurus = Thesaurus.shipped();
        Map<String, Set<String>> bearers = bearers(thesaurus);
        Map<String, int[]> byRule = new TreeMap<>();
        int[] all = new int[3];
        List<Double> micros = new ArrayList<>();
        for (Case c : cases(thesaurus, bearers, seed)) {
            long begin = CLOCK.getCurrentThreadCpuTime();
            List<Candidate> found = thesaurus.find(c.altered(), Circumstances.UNKNOWN);
            micros.add((CLOCK.getCurrentThreadCpuTime() - begin) / 1000.0);
            int rank = rank(thesaurus, found, bearers.get(key(c.name())));
            int[] rule = byRule.computeIfAbsent(c.by(), k -> new int[3]);
            for (int[] n : List.of(all, rule)) {
                n[0]++;
                n[1] += rank == 1 ? 1 : 0;
                n[2] += rank >= 1 && rank <= 3 ? 1 : 0;
            }
            if (rank != 1 && options.contains("--mistakes")) {
                show(c, rank, found);
            }
        }
        Figures.printShare("altered: right first", all[1], all[0]);
        Figures.printShare("altered: within three", all[2], all[0]);
        byRule.forEach((rule, n) -> Figures.printShare("  " + rule, n[1], n[0]));
        double[] times = micros.stream().skip(200).mapToDouble(Double::doubleValue).toArray();
        Figures.print("median time", Figures.percentile(times, 0.5), "µs");
        Figures.print("99 % of times below", Figures.percentile(times, 0.99), "µs");
    }

    private static List<Case> cases(
            Thesaurus thesaurus, Map<String, Set<String>> bearers, long seed) {
        Random random = new Random(seed);
        Alterations alterations = new Alterations(seed);
        List<Case> cases = new ArrayList<>();
        for (String sense : thesaurus.senses().keySet()) {
            List<Label> names =
                    new ArrayList<>(
                            thesaurus.labels(sense).stream()
                                    .filter(l -> l.kind() != Label.Kind.HIDDEN)
                                    .filter(l -> l.text().length() >= SHORTEST)
                                    .filter(l -> l.text().indexOf('.') < 0)
                                    .toList());
            for (int i = 0; i < NAMES && !names.isEmpty(); i++) {
                String name = names.remove(random.nextInt(names.size())).text();
                Alterations.Altered altered = alterations.once(name);
                if (random.nextInt(10) < 3) {
                    altered =
                            new Alterations.Altered(
                                    alterations.once(altered.text()).text(), "two of them");
                }
                Set<String> others = bearers.getOrDefault(key(altered.text()), Set.of());
                if (others.isEmpty() || others.contains(sense)) {
                    cases.add(new Case(sense, name, altered.text(), altered.by()));
                }
            }
        }
        return cases;
    }

    private static Map<String, Set<String>> bearers(Thesaurus thesaurus) {
        Map<String, Set<String>> bearers = new HashMap<>();
        for (String id : thesaurus.senses().keySet()) {
            for (Label label : thesaurus.labels(id)) {
                bearers.computeIfAbsent(key(label.text()), k -> new HashSet<>()).add(id);
            }
        }
        return bearers;
    }

    private static String key(String name) {
        return Words.key(Words.of(name));
    }

    private static int rank(Thesaurus thesaurus, List<Candidate> found, Set<String> right) {
        for (int i = 0; i < found.size(); i++) {
            String id = found.get(i).sense().id();
            boolean kind = thesaurus.withBroader(id).stream().anyMatch(right::contains);
            boolean broader = right.stream().anyMatch(r -> thesaurus.withBroader(r).contains(id));
            if (kind || broader) {
                return i + 1;
            }
        }
        return 0;
    }

    private static void show(Case c, int rank, List<Candidate> found) {
        StringBuilder line = new StringBuilder();
        line.append(c.altered()).append(" ← ").append(c.name()).append(" (").append(c.by());
        line.append(", rank ").append(rank).append("): ");
        found.stream()
                .limit(3)
                .forEach(
                        f ->
                                line.append(
                                        String.format(
                                                Locale.ROOT,
                                                "%s %.3f “%s”; ",
                                                f.sense().id(),
                                                f.score(),
                                                f.label().text())));
        System.out.println(line);
    }
}
