package org.stillroom.benchmarks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.stillroom.benchmarks.RealBookTruth.Lines;
import org.stillroom.benchmarks.RealBookTruth.Recipe;
import org.stillroom.model.reading.LineKind;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.Step;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.Folding;

/** Compares what was read in one published book with its truth, and keeps count. */
final class RealBookScore {

    private static final double SURE = 0.9;

    /**
     * One difference from the truth.
     *
     * @param weight how bad it is: a wrong amount that is held for sure weighs 2
     */
    record Mistake(double weight, Lines place, String words) {}

    /** A line that was read, how sure its reader was, and whether all of it is right. */
    private record Claim(double probability, boolean right) {}

    private final RealBookTruth truth;
    private final List<Version> versions;
    private final RealBookBoundaries boundaries;
    private final List<Mistake> mistakes = new ArrayList<>();
    private final List<Claim> claims = new ArrayList<>();
    private final Map<String, ProseBenchmark.Tally> tallies = new TreeMap<>();
    private int found;
    private int titled;
    private int titlesRight;
    private int paired;
    private int quantities;
    private int measures;
    private int kinds;
    private int sureAndWrong;
    private int surelyInvented;

    /** Compares a book. */
    RealBookScore(RealBookTruth truth, List<Version> versions) {
        this.truth = truth;
        this.versions = versions;
        this.boundaries = RealBookBoundaries.of(truth, versions);
        judge();
    }

    private void judge() {
        Map<String, String> titles = new TreeMap<>();
        versions.forEach(v -> titles.put(v.id(), v.witness().title()));
        for (Recipe recipe : truth.recipes()) {
            Optional<Version> version = RealBookBoundaries.at(recipe.place(), truth, versions);
            version.ifPresent(v -> recipe(recipe, v, titles));
            if (version.isEmpty()) {
                missed(recipe);
            }
        }
    }

    private void missed(Recipe recipe) {
        tally("ingredients").add(0, recipe.lines().size(), 0);
        tally("quantities linked").add(0, recipe.lines().size(), 0);
        tally("steps").add(0, recipe.list("steps").size(), 0);
        tally("garnish").add(0, recipe.list("garnish").size(), 0);
        tally("vessel").add(0, recipe.text("vessel").isEmpty() ? 0 : 1, 0);
        tally("ice").add(0, iced(recipe) ? 1 : 0, 0);
        tally("references").add(0, recipe.text("ref").isEmpty() ? 0 : 1, 0);
        tally("serves").add(0, recipe.text("serves").isEmpty() ? 0 : 1, 0);
    }

    private void recipe(Recipe recipe, Version version, Map<String, String> titles) {
        found++;
        title(recipe, version.witness().title());
        Reading reading = version.reading();
        lines(recipe, SaidLine.of(reading));
        reference(recipe, reading, titles);
        list(recipe, "steps", reading.steps().stream().map(Step::verb).toList(), 0.2);
        garnish(recipe, reading);
        single(recipe, "vessel", vessel(reading), 0.4);
        String serves = reading.serves().map(s -> s.low().toString()).orElse("");
        single(recipe, "serves", serves, 0.8);
        boolean ice = reading.lines().stream().anyMatch(l -> l.kind() == LineKind.ICE);
        tally("ice").add(ice ? 1 : 0, iced(recipe) ? 1 : 0, ice && iced(recipe) ? 1 : 0);
        if (ice != iced(recipe)) {
            wrong(0.5, recipe, "ice: true " + recipe.text("ice") + ", read " + ice);
        }
    }

    private void title(Recipe recipe, String read) {
        String wanted = plain(recipe.text("title"));
        if (!wanted.isEmpty()) {
            boolean right = Set.of(wanted, plain(recipe.text("otherTitle"))).contains(plain(read));
            titled++;
            titlesRight += right ? 1 : 0;
            if (!right) {
                wrong(1.5, recipe, "title: true " + wanted + ", read " + plain(read));
            }
        }
    }

    private void reference(Recipe recipe, Reading reading, Map<String, String> titles) {
        String wanted = recipe.text("ref");
        String read =
                reading.reference()
                        .map(r -> r.chain().isEmpty() ? r.target() : base(r.chain(), titles))
                        .map(target -> target.orElse("one that is not named"))
                        .orElse("");
        boolean same = !wanted.isEmpty() && sameTitle(wanted, read);
        tally("references").add(read.isEmpty() ? 0 : 1, wanted.isEmpty() ? 0 : 1, same ? 1 : 0);
        if (!same && !(wanted + read).isEmpty()) {
            wrong(1.5, recipe, "leans on: true " + wanted + ", read " + plain(read));
        }
    }

    private static Optional<String> base(List<String> chain, Map<String, String> titles) {
        return Optional.ofNullable(titles.get(chain.get(0)));
    }

    /** Tells whether all words of one title are in the other. */
    private static boolean sameTitle(String one, String other) {
        Set<String> a = Set.copyOf(List.of(plain(one).split(" ")));
        Set<String> b = Set.copyOf(List.of(plain(other).split(" ")));
        return a.containsAll(b) || b.containsAll(a);
    }

    private static String plain(String words) {
        return Folding.foldWord(words).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }

    private void lines(Recipe recipe, List<SaidLine> said) {
        List<TruthLine> lines = recipe.lines();
        List<LinePairs.Pair> pairs =
                LinePairs.of(said.stream().map(SaidLine::line).toList(), lines);
        boolean[] readUsed = new boolean[said.size()];
        boolean[] truthUsed = new boolean[lines.size()];
        int linked = 0;
        for (LinePairs.Pair pair : pairs) {
            readUsed[pair.read()] = true;
            truthUsed[pair.truth()] = true;
            linked += pair(recipe, lines.get(pair.truth()), said.get(pair.read())) ? 1 : 0;
        }
        for (int i = 0; i < said.size(); i++) {
            if (!readUsed[i]) {
                invented(recipe, said.get(i));
            }
        }
        for (int i = 0; i < lines.size(); i++) {
            if (!truthUsed[i]) {
                wrong(1, recipe, "missed " + lines.get(i));
            }
        }
        tally("ingredients").add(said.size(), lines.size(), pairs.size());
        tally("quantities linked").add(said.size(), lines.size(), linked);
    }

    /** Judges two lines that stand for each other; returns whether number and measure agree. */
    private boolean pair(Recipe recipe, TruthLine truth, SaidLine said) {
        TruthLine read = said.against(truth);
        double probability = said.probability();
        boolean quantity =
                truth.quantity().equals(read.quantity())
                        && truth.quantityMax().equals(read.quantityMax());
        boolean measure = truth.measure().equals(Folding.foldWord(read.measure()));
        boolean kind = truth.kind().equals(read.kind());
        boolean name = isName(truth.ingredient(), read.ingredient());
        boolean numbers = quantity && measure;
        paired++;
        quantities += quantity ? 1 : 0;
        measures += measure ? 1 : 0;
        kinds += kind ? 1 : 0;
        sureAndWrong += !numbers && probability >= SURE ? 1 : 0;
        claims.add(new Claim(probability, numbers && kind && name));
        if (!numbers) {
            wrong(1 + probability, recipe, sure(probability) + truth + ", read " + read);
        } else if (!kind || !name) {
            wrong(probability / 2, recipe, sure(probability) + truth + ", read " + read);
        }
        return numbers;
    }

    /** Tells whether a name says what the truth says, and at most a maker's name besides. */
    private static boolean isName(String truth, String read) {
        List<String> words = LineBenchmark.words(read);
        List<String> wanted = LineBenchmark.words(truth);
        return words.containsAll(wanted) && words.size() <= wanted.size() + 1;
    }

    private void invented(Recipe recipe, SaidLine said) {
        claims.add(new Claim(said.probability(), false));
        surelyInvented += said.probability() >= SURE ? 1 : 0;
        wrong(
                0.9 + said.probability(),
                recipe,
                sure(said.probability()) + "invented " + said.line());
    }

    private static String sure(double probability) {
        return String.format(Locale.ROOT, "%.2f ", probability);
    }

    private void list(Recipe recipe, String facet, List<String> read, double weight) {
        List<String> left = new ArrayList<>(read);
        List<String> should = recipe.list(facet).stream().map(Folding::foldWord).toList();
        List<String> lost = new ArrayList<>();
        should.stream().filter(v -> !left.remove(v)).forEach(lost::add);
        tally(facet).add(read.size(), should.size(), should.size() - lost.size());
        if (lost.size() + left.size() > 0) {
            wrong(
                    weight * (lost.size() + left.size()),
                    recipe,
                    facet + ": missed " + lost + ", invented " + left);
        }
    }

    private void garnish(Recipe recipe, Reading reading) {
        List<String> left = new ArrayList<>();
        reading.lines().stream()
                .filter(l -> l.kind() == LineKind.GARNISH)
                .forEach(l -> left.add(l.ingredientName()));
        int read = left.size();
        int both = 0;
        for (String wanted : recipe.list("garnish")) {
            Optional<String> match =
                    left.stream()
                            .filter(r -> LinePairs.overlap(r, wanted) >= LinePairs.ENOUGH)
                            .findFirst();
            match.ifPresent(left::remove);
            both += match.isPresent() ? 1 : 0;
        }
        tally("garnish").add(read, recipe.list("garnish").size(), both);
    }

    private static String vessel(Reading reading) {
        return reading.vessel()
                .map(v -> v.word())
                .filter(w -> !w.endsWith("shaker") && !w.endsWith("mixing glass"))
                .orElse("");
    }

    private void single(Recipe recipe, String facet, String read, double weight) {
        String wanted = recipe.text(facet);
        boolean same = ProseBenchmark.head(read).equals(ProseBenchmark.head(wanted));
        int has = read.isEmpty() ? 0 : 1;
        int should = wanted.isEmpty() ? 0 : 1;
        tally(facet).add(has, should, has == 1 && should == 1 && same ? 1 : 0);
        if (!same) {
            wrong(weight, recipe, facet + ": true " + wanted + ", read " + read);
        }
    }

    private static boolean iced(Recipe recipe) {
        String ice = recipe.text("ice");
        return !ice.isEmpty() && !ice.equals("around") && !ice.equals("without");
    }

    private void wrong(double weight, Recipe recipe, String words) {
        String title = recipe.text("title");
        String name = title.isEmpty() ? "" : title + ": ";
        mistakes.add(new Mistake(weight, recipe.place(), name + words));
    }

    private ProseBenchmark.Tally tally(String facet) {
        return tallies.computeIfAbsent(facet, f -> new ProseBenchmark.Tally());
    }

    /** Prints the figures. */
    void print() {
        System.out.println(truth.book());
        Figures.printShare("labelled recipes found at their place", found, truth.recipes().size());
        Figures.printShare("titles right, of those found", titlesRight, titled);
        boundaries.print();
        tallies.forEach((facet, t) -> Figures.print(facet + ", F1", t.f1(), counts(t)));
        Figures.printShare("quantity exact, of lines matched", quantities, paired);
        Figures.printShare("measure right, of lines matched", measures, paired);
        Figures.printShare("kind right, of lines matched", kinds, paired);
        Figures.printShare("confidently wrong, of lines matched", sureAndWrong, paired);
        Figures.printShare("surely invented, of lines read", surelyInvented, claims.size());
        Figures.print("expected calibration error", calibrationError(), "");
    }

    private static String counts(ProseBenchmark.Tally t) {
        return t.both + " of " + t.truth + ", read " + t.read;
    }

    /** Returns the mean distance of what was said from what was right, in ten bins. */
    private double calibrationError() {
        double error = 0;
        for (int bin = 0; bin < 10; bin++) {
            int b = bin;
            List<Claim> in =
                    claims.stream()
                            .filter(c -> Math.min(9, (int) (c.probability() * 10)) == b)
                            .toList();
            double said = in.stream().mapToDouble(Claim::probability).sum();
            long right = in.stream().filter(Claim::right).count();
            error += Math.abs(said - right) / Math.max(1, claims.size());
        }
        return error;
    }

    /** Prints all wrong boundaries, and the worst misreadings in normalised words. */
    void printWorst(int count) {
        boundaries.printWrong();
        System.out.println("Worst misreadings in " + truth.book());
        mistakes.stream()
                .sorted(
                        Comparator.comparingDouble((Mistake m) -> -m.weight())
                                .thenComparingInt(m -> m.place().from()))
                .limit(count)
                .forEach(m -> System.out.println("  " + m.place() + ": " + m.words()));
    }
}
