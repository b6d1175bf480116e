package org.stillroom.benchmarks;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.stillroom.benchmarks.RealBookTruth.Lines;
import org.stillroom.model.source.Witness;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.SourceText;

/**
 * Where recipes start in one published book, as read and as it is.
 *
 * @param found places at which one recipe was found
 * @param lost places at which none was found
 * @param invented lines at which a recipe was seen where none starts; open places do not count
 */
record RealBookBoundaries(Set<Lines> found, List<Lines> lost, List<Integer> invented) {

    static RealBookBoundaries of(RealBookTruth truth, List<Version> versions) {
        Set<Lines> found = new HashSet<>();
        List<Integer> invented = new ArrayList<>();
        for (Version version : versions) {
            int line = start(version);
            boolean right = truth.startOf(line).map(found::add).orElse(false);
            if (!right && !truth.isOpen(line)) {
                invented.add(line);
            }
        }
        return new RealBookBoundaries(
                found, truth.starts().stream().filter(s -> !found.contains(s)).toList(), invented);
    }

    /** Returns the line at which a version starts: that of its title, if it has one. */
    static int start(Version version) {
        SourceText text = version.source().text();
        Witness witness = version.witness();
        boolean titled =
                !witness.titleSpan().isEmpty() && witness.span().contains(witness.titleSpan());
        return text.lineAt(titled ? witness.titleSpan().start() : witness.span().start());
    }

    /** Returns the version that starts where a labelled recipe does. */
    static Optional<Version> at(Lines place, RealBookTruth truth, List<Version> versions) {
        Lines may = truth.startOf(place.from()).orElse(new Lines(place.from(), place.from()));
        return versions.stream().filter(v -> may.has(start(v))).findFirst();
    }

    void print() {
        int said = found.size() + invented.size();
        int there = found.size() + lost.size();
        double f1 = 2.0 * found.size() / Math.max(1, said + there);
        Figures.print("boundaries, precision", share(said), "of " + said);
        Figures.print("boundaries, recall", share(there), "of " + there);
        Figures.print("boundaries, F1", f1, "");
    }

    private double share(int of) {
        return found.size() / (double) Math.max(1, of);
    }

    void printWrong() {
        System.out.println("Recipes that are not found: " + lost);
        System.out.println("Recipes seen where none starts, at the lines " + invented);
    }
}
