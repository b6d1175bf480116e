package org.stillroom.reading.idiom;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.Anchor;
import org.stillroom.model.text.Span;
import org.stillroom.reading.BookReading;
import org.stillroom.reading.anchor.Decided;
import org.stillroom.reading.anchor.LineCorrections;
import org.stillroom.reading.anchor.Reanchoring;

/**
 * Finds habits of a book in the corrections that a person made of its readings.
 *
 * <p>Compares every correction with what the reader had read there, and proposes what at least three
 * of them agree on while fewer than one in four speaks against it. Both figures are our own: two may
 * be chance, and a habit that fails more often than that is none.
 */
public final class IdiomLearner {

    /** Corrections that must agree. */
    public static final int LEAST = 3;

    private static final double AGREE = 0.75;

    private final BookReading uncorrected;
    private final Source source;
    private final Decided decided;

    /**
     * Makes a learner for a book.
     *
     * @param uncorrected the book as it is read by its rules alone, its corrections left out
     * @param decisions the decisions that stand
     */
    public IdiomLearner(BookReading uncorrected, List<Assertion> decisions) {
        this.uncorrected = uncorrected;
        this.source = uncorrected.source();
        this.decided = Decided.about(source, decisions);
    }

    /** Returns the habits that the corrections point to, those with most evidence first. */
    public List<Proposal> propose() {
        Map<Idiom, List<Assertion>> votes = new LinkedHashMap<>();
        List<Observed> observed = new ArrayList<>();
        for (Assertion correction : decided.ofKind("line")) {
            observe(correction).ifPresent(observed::add);
        }
        for (Observed one : observed) {
            one.idioms()
                    .forEach(i -> votes.computeIfAbsent(i, k -> new ArrayList<>()).add(one.by()));
        }
        headings().forEach((i, by) -> votes.computeIfAbsent(i, k -> new ArrayList<>()).addAll(by));
        List<Proposal> proposals = new ArrayList<>();
        for (Map.Entry<Idiom, List<Assertion>> vote : votes.entrySet()) {
            if (vote.getValue().size() >= LEAST && !isSettled(vote.getKey())) {
                int against = against(vote.getKey(), observed);
                int all = vote.getValue().size() + against;
                if (vote.getValue().size() >= AGREE * all) {
                    proposals.add(new Proposal(vote.getKey(), vote.getValue(), against));
                }
            }
        }
        return strongest(proposals);
    }

    /** What one correction says: the habits that it may show. */
    private record Observed(Assertion by, Comparison compared, List<Idiom> idioms) {}

    private Optional<Observed> observe(Assertion correction) {
        return place(correction)
                .flatMap(
                        span ->
                                recipe(span)
                                        .map(
                                                r ->
                                                        Comparison.of(
                                                                LineCorrections.lineAt(r, span),
                                                                source.text(),
                                                                span,
                                                                correction)))
                .map(c -> new Observed(correction, c, c.idioms()));
    }

    private Optional<Span> place(Assertion correction) {
        Optional<Anchor> anchor = correction.anchor();
        return anchor.flatMap(a -> Reanchoring.find(source.text(), a));
    }

    private Optional<Reading> recipe(Span span) {
        return uncorrected.readings().stream()
                .filter(r -> r.witness().span().contains(span))
                .findFirst();
    }

    /** Counts the decided lines that a rule would have changed, yet not as the person did. */
    private static int against(Idiom idiom, List<Observed> observed) {
        int count = 0;
        for (Observed one : observed) {
            boolean concerned = one.compared().concerns(idiom);
            if (concerned && !one.idioms().contains(idiom)) {
                count++;
            }
        }
        return count;
    }

    private boolean isSettled(Idiom idiom) {
        return decided.decisions().stream()
                .flatMap(a -> Idiom.of(a).stream())
                .anyMatch(idiom::equals);
    }

    /** Leaves out what is explained by a habit with more evidence. */
    private static List<Proposal> strongest(List<Proposal> proposals) {
        List<Proposal> sorted = new ArrayList<>(proposals);
        sorted.sort((a, b) -> Integer.compare(b.evidence().size(), a.evidence().size()));
        List<Proposal> kept = new ArrayList<>();
        Set<Assertion> explained = new HashSet<>();
        for (Proposal proposal : sorted) {
            Set<Assertion> fresh = new HashSet<>(proposal.evidence());
            fresh.removeAll(explained);
            if (fresh.size() >= LEAST) {
                kept.add(proposal);
                explained.addAll(proposal.evidence());
            }
        }
        return kept;
    }

    private Map<Idiom, List<Assertion>> headings() {
        Map<Idiom, List<Assertion>> votes = new LinkedHashMap<>();
        for (Assertion cut : decided.ofKind("cut")) {
            String action = cut.value("action").orElse("");
            boolean habit =
                    action.equals("split")
                            || action.equals("not-a-recipe")
                            || action.equals("join");
            if (habit) {
                place(cut)
                        .map(span -> source.text().line(source.text().lineAt(span.start())))
                        .map(line -> source.text().slice(line))
                        .ifPresent(line -> vote(votes, line, action, cut));
            }
        }
        return votes;
    }

    private static void vote(
            Map<Idiom, List<Assertion>> votes, String line, String action, Assertion by) {
        for (String shape : HeadingHabit.of(line)) {
            // what is no recipe is told by its words: its shape is that of the recipes around it
            if (action.equals("split") || shape.startsWith("begins:")) {
                Idiom idiom =
                        new Idiom(
                                Idiom.On.HEADING,
                                shape,
                                new java.util.TreeMap<>(Map.of("action", action)));
                votes.computeIfAbsent(idiom, k -> new ArrayList<>()).add(by);
            }
        }
    }
}
