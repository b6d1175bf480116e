package org.stillroom.lineage.parents;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.stillroom.lineage.collation.Token;
import org.stillroom.lineage.collation.Tokens;
import org.stillroom.lineage.reuse.Shingles;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.number.Rational;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;

/**
 * What versions are compared by when their parents are sought.
 *
 * @param version the version
 * @param tokens its words, typed
 * @param wording its words as short stretches
 * @param amounts each ingredient with its amount, such as “rum 12 jigger”
 * @param order families of its ingredients in the order in which they stand
 */
record Text(
        Version version,
        List<Token> tokens,
        Shingles wording,
        Set<String> amounts,
        List<String> order) {

    static Text of(Version version) {
        String body = version.source().text().slice(version.witness().body());
        Set<String> amounts = new TreeSet<>();
        List<String> order = new ArrayList<>();
        for (SpecLine line : version.spec().lines()) {
            order.add(line.ingredient().family());
            line.line()
                    .amount()
                    .quantity()
                    .map(Rational::toString)
                    .ifPresent(
                            q ->
                                    amounts.add(
                                            line.ingredient().label() + " " + q + " "
                                                    + line.line().measure()));
        }
        return new Text(
                version, Tokens.of(version), Shingles.ofCharacters(body), amounts, order);
    }

    Optional<UncertainDate> date() {
        return version.source().bibliography().date();
    }

    /** Returns the sum of its words’ weights, in edits. */
    double weight() {
        return tokens.stream().mapToDouble(t -> t.kind().weight()).sum();
    }
}
