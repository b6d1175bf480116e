package org.stillroom.lineage.parents;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.stillroom.lineage.collation.Token;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;

/** Says in words what speaks for a candidate and against it. */
final class Reasons {

    private static final String[] NUMBERS = {
        "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
        "eleven", "twelve"
    };

    /** Independent recipes agree in such a reading in less than so many cases. */
    private static final double UNUSUAL = 0.2;

    private static final int MOST_SHARED = 3;
    private static final int SHORTEST_WORD = 4;
    private static final int FEWEST_IN_ORDER = 3;
    private static final double FAR = 0.25;

    private Reasons() {}

    /** Returns the reasons, strongest sort first. */
    static List<String> of(
            Evidence e,
            Text later,
            Version version,
            boolean certain,
            Predicate<String> rare,
            UnaryOperator<String> name) {
        List<String> reasons = new ArrayList<>();
        if (e.verbatim()) {
            reasons.add("the same text but for accidentals");
        }
        if (later.cites().contains(e.earlier().id())) {
            reasons.add("sends the reader to it");
        }
        if (later.names(e.earlier())) {
            reasons.add("names its author");
        }
        for (String shared : unusual(e, later, version, rare)) {
            reasons.add("shares the unusual “" + shared + "”");
        }
        int n = later.order().size();
        if (n >= FEWEST_IN_ORDER && later.order().equals(e.earlier().order())) {
            reasons.add("same order of " + number(n) + " ingredients");
        }
        if (e.ratios() > 1) {
            reasons.add(
                    "same proportions of " + number(e.ratios()) + " ingredients in other measures");
        }
        reasons.add(
                String.format(
                        Locale.ROOT,
                        "%d of %d words alike, %.1f edits",
                        e.sites().alike(),
                        later.tokens().size(),
                        e.cost()));
        if (e.sites().moved() > 0) {
            reasons.add(
                    number(e.sites().moved())
                            + (e.sites().moved() == 1 ? " passage" : " passages")
                            + " moved");
        }
        e.rest()
                .ifPresent(
                        r ->
                                reasons.add(
                                        "only the beginning; the end follows "
                                                + name.apply(r.id())));
        against(e, certain, reasons);
        return reasons;
    }

    private static void against(Evidence e, boolean certain, List<String> reasons) {
        if (e.reversals() > 0) {
            reasons.add(
                    "against it: in "
                            + number(e.reversals())
                            + (e.reversals() == 1 ? " place" : " places")
                            + " the later text has an older reading");
        }
        if (!certain) {
            reasons.add("against it: the dates do not show which is earlier");
        }
        if (e.reuse() < FAR) {
            reasons.add("against it: the wording is hardly alike");
        }
    }

    /** Returns amounts and words that both have where other versions have something else. */
    private static Set<String> unusual(
            Evidence e, Text later, Version version, Predicate<String> rare) {
        Set<String> shared = new LinkedHashSet<>();
        for (int j = 0; j < later.tokens().size() && shared.size() < MOST_SHARED; j++) {
            Token token = later.tokens().get(j);
            if (!e.sites().agrees()[j] || e.chance()[j] > UNUSUAL) {
                continue;
            }
            if (token.kind() == Token.Kind.NUMBER) {
                shared.add(printed(token, version));
            } else if (token.kind() == Token.Kind.WORD
                    && rare.test(token.value())
                    && token.value().length() >= SHORTEST_WORD) {
                shared.add(token.value());
            }
        }
        return shared;
    }

    private static String printed(Token number, Version version) {
        for (SpecLine line : version.spec().lines()) {
            boolean same =
                    line.line()
                            .amount()
                            .quantity()
                            .filter(q -> q.toString().equals(number.value()))
                            .isPresent();
            if (same && line.line().amountSpan().isPresent()) {
                return line.line().text().strip().replaceAll("\\s+", " ");
            }
        }
        return number.value();
    }

    private static String number(int n) {
        return n < NUMBERS.length ? NUMBERS[n] : Integer.toString(n);
    }
}
