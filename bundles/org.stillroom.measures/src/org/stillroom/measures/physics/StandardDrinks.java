package org.stillroom.measures.physics;

import java.util.List;
import java.util.Optional;
import org.stillroom.measures.knowledge.Works;
import org.stillroom.measures.rows.Row;
import org.stillroom.measures.rows.Rows;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.number.Rational;

/**
 * How many standard drinks or units a volume of alcohol makes, by country.
 *
 * <p>Always an estimate to be labelled as one, never advice: what a person may drink is a matter
 * for current local guidance.
 */
public final class StandardDrinks {

    /** Density of ethanol at 20 °C in g/ml (Directive 76/766/EEC). */
    public static final double ETHANOL = 0.78924;

    private final List<Kind> kinds;

    private StandardDrinks(List<Kind> kinds) {
        this.kinds = kinds;
    }

    /**
     * One country's standard drink.
     *
     * @param country two-letter code by ISO 3166-1
     * @param name what it is called
     * @param grams ethanol in one, in grams
     * @param low the least that is published
     * @param high the most that is published
     * @param statement its definition in words
     * @param citation who says so
     */
    public record Kind(
            String country,
            String name,
            double grams,
            double low,
            double high,
            String statement,
            Citation citation) {

        /** Returns how many of these the ethanol makes. */
        public Estimate count(Estimate ethanolMillilitres) {
            return ethanolMillilitres.times(ETHANOL / grams);
        }
    }

    /** Returns the table that ships with the program. */
    public static StandardDrinks shipped() {
        Works works = Works.shipped();
        return new StandardDrinks(
                Rows.shipped("drinks.csv").stream().map(r -> kind(r, works)).toList());
    }

    private static Kind kind(Row row, Works works) {
        double grams =
                row.number("grams")
                        .map(Rational::toDouble)
                        .orElseGet(
                                () -> row.number("millilitres").orElseThrow().toDouble() * ETHANOL);
        return new Kind(
                row.get("country"),
                row.get("name"),
                grams,
                row.number("low").map(Rational::toDouble).orElse(grams),
                row.number("high").map(Rational::toDouble).orElse(grams),
                row.get("statement"),
                works.cite(row.get("source"), Works.status(row.get("status"))));
    }

    /** Returns a country's standard drink. */
    public Optional<Kind> of(String country) {
        return kinds.stream().filter(k -> k.country().equals(country)).findFirst();
    }

    /** Returns every country's. */
    public List<Kind> all() {
        return kinds;
    }

    /**
     * Returns the volume of pure ethanol in a drink.
     *
     * @param millilitres its volume
     * @param strength its strength by volume, a fraction 0 to 1
     */
    public static Estimate ethanol(Estimate millilitres, Estimate strength) {
        return millilitres.times(strength);
    }
}
