package org.stillroom.measures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.measures.WordAccount.Statement;
import org.stillroom.measures.knowledge.Authority;
import org.stillroom.measures.knowledge.Dimension;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;
import org.stillroom.model.source.Trade;

/** Everything that is said of a word is shown, whether it counts or not. */
class WordAccountTests {

    private static final MeasureTable TABLE = MeasureTable.shipped();

    private static Circumstances where(String place, String date) {
        return new Circumstances(
                Optional.of(Place.of(place)),
                UncertainDate.parse(date),
                Optional.of(Trade.KITCHEN),
                Optional.empty());
    }

    private static WordAccount account(String word, String place, String date) {
        return WordAccount.of(TABLE, MeasureQuestion.of(word, where(place, date)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "wineglass",
                "jigger",
                "dash",
                "tablespoon",
                "bottle",
                "lump",
                "pint",
                "cup"
            })
    void noStatementIsLeftOutAndEachHasItsNumber(String word) {
        WordAccount account = account(word, "GB", "1862");
        Set<String> shown =
                account.statements().stream()
                        .map(s -> s.said().authority().id())
                        .collect(Collectors.toSet());
        List<String> missing =
                TABLE.authorities(account.word()).stream()
                        .map(Authority::id)
                        .filter(id -> !shown.contains(id))
                        .toList();
        assertEquals(List.of(), missing);
        for (int i = 0; i < account.statements().size(); i++) {
            assertEquals(i + 1, account.statements().get(i).number());
        }
        double weight = account.statements().stream().mapToDouble(s -> s.said().share()).sum();
        assertEquals(1, weight, 1e-9);
        boolean light = false;
        for (Statement s : account.statements()) {
            assertTrue(!light || !s.counts(), "those that count come first");
            light |= !s.counts();
        }
    }

    /** Pints: Weights and Measures Acts of 1707 and 1824, as NIST Handbook 44 and the Act of 1985. */
    @Test
    void inTheYearOfReformBothPintsCountAndTheSentenceSaysSo() {
        WordAccount account = account("pint", "London", "1826");
        List<Double> counting =
                account.statements().stream()
                        .filter(Statement::counts)
                        .map(s -> s.said().amount())
                        .sorted()
                        .toList();
        assertEquals(2, counting.size());
        assertEquals(473.176473, counting.get(0), 1e-5);
        assertEquals(568.26125, counting.get(1), 1e-5);
        assertTrue(account.disagreement().contains("they disagree"), account.disagreement());
        assertTrue(account.disagreement().contains("1.2 times"), account.disagreement());
    }

    @Test
    void agreementIsCalledAgreement() {
        WordAccount account = account("litre", "FR", "1900");
        assertTrue(
                account.disagreement().startsWith("One statement counts here: 1000 ml"),
                account.disagreement());
    }

    @Test
    void whatIsSetAsideSaysWhy() {
        WordAccount account = account("pint", "GB", "1862");
        assertTrue(
                account.statements().stream()
                        .filter(s -> s.said().authority().dimension() == Dimension.MASS)
                        .allMatch(s -> s.said().why().equals("speaks of a weight")));
        assertTrue(account.statements().stream().noneMatch(s -> s.said().why().isBlank()));
    }

    @Test
    void anUnknownWordHasNoStatements() {
        WordAccount account = account("xyzzy", "GB", "1862");
        assertEquals(List.of(), account.statements());
        assertEquals(account.meaning().reason(), account.disagreement());
    }
}
