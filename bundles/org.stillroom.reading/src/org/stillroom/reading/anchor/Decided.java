package org.stillroom.reading.anchor;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.Anchor;
import org.stillroom.model.text.Span;

/**
 * The decisions about one source that still hold, in the order in which they were made.
 *
 * @param source the source
 * @param decisions decisions that no later one took the place of
 */
public record Decided(Source source, List<Assertion> decisions) {

    /** Keeps the decisions as an unchangeable list. */
    public Decided {
        decisions = List.copyOf(decisions);
    }

    /** Returns those of a list that are about a source and hold. */
    public static Decided about(Source source, List<Assertion> all) {
        Set<String> replaced = new HashSet<>();
        all.forEach(a -> a.replaces().ifPresent(replaced::add));
        List<Assertion> held = new ArrayList<>();
        for (Assertion a : all) {
            boolean back = a.kind().equals(Assertion.TAKEN_BACK);
            if (!back && a.source().equals(source.id()) && !replaced.contains(a.id())) {
                held.add(a);
            }
        }
        return new Decided(source, held);
    }

    /** Returns those of a kind. */
    public List<Assertion> ofKind(String kind) {
        return decisions.stream().filter(a -> a.kind().equals(kind)).toList();
    }

    /** Returns where a decision's words stand now; where they cannot be found, says so. */
    public Optional<Span> place(Assertion decision, List<Unplaced> unplaced) {
        Optional<Span> span = decision.anchor().flatMap(a -> Reanchoring.find(source.text(), a));
        if (span.isEmpty()) {
            unplaced.add(new Unplaced(decision, lost(decision)));
        }
        return span;
    }

    /** Says that a decision cannot be carried out, for a reason. */
    public Unplaced refused(Assertion decision, Span span, String reason, String remedy) {
        int line = source.text().lineAt(span.start());
        return new Unplaced(
                decision, Problem.warning(source.id(), line, words(decision), reason, remedy));
    }

    private Problem lost(Assertion decision) {
        return Problem.warning(
                source.id(),
                decision.anchor()
                        .map(a -> Math.min(a.position().start(), source.text().length()))
                        .map(source.text()::lineAt)
                        .orElse(1),
                words(decision),
                "The words that a correction of "
                        + decision.at().split("T")[0]
                        + " is about cannot be found again.",
                "Place it again on the words as they stand now, or take it back.");
    }

    private static String words(Assertion decision) {
        return decision.anchor().map(Anchor::exact).orElse("");
    }
}
