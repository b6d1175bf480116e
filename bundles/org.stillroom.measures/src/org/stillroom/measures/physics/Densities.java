package org.stillroom.measures.physics;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.stillroom.measures.knowledge.Works;
import org.stillroom.measures.rows.Row;
import org.stillroom.measures.rows.Rows;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.estimate.Origin;
import org.stillroom.model.explain.Citation;

/** Densities of common stuffs in g/ml, for going between mass and volume. */
public final class Densities {

    /**
     * A published density.
     *
     * @param stuff what has it
     * @param density g/ml with its range
     * @param statement how it follows from what is published
     * @param citation who says so
     */
    public record Density(String stuff, Estimate density, String statement, Citation citation) {

        /** Returns the volume in millilitres of a mass in grams. */
        public Estimate millilitres(Estimate grams) {
            return grams.dividedBy(density);
        }

        /** Returns the mass in grams of a volume in millilitres. */
        public Estimate grams(Estimate millilitres) {
            return millilitres.times(density);
        }
    }

    private final Map<String, Density> byStuff;

    private Densities(Map<String, Density> byStuff) {
        this.byStuff = byStuff;
    }

    /** Returns the table that ships with the program. */
    public static Densities shipped() {
        Works works = Works.shipped();
        Map<String, Density> densities = new LinkedHashMap<>();
        for (Row row : Rows.shipped("densities.csv")) {
            densities.put(row.get("stuff"), density(row, works));
        }
        return new Densities(densities);
    }

    private static Density density(Row row, Works works) {
        String stuff = row.get("stuff");
        Origin origin =
                Origin.pert(
                        "density of " + stuff,
                        row.number("low").orElseThrow().toDouble(),
                        row.number("likely").orElseThrow().toDouble(),
                        row.number("high").orElseThrow().toDouble());
        return new Density(
                stuff,
                Estimate.of(origin),
                row.get("statement"),
                works.cite(row.get("source"), Works.status(row.get("status"))));
    }

    /** Returns the density of a stuff by its plain name, in lower case. */
    public Optional<Density> of(String stuff) {
        return Optional.ofNullable(byStuff.get(stuff));
    }

    /** Returns the density of a spirit of a strength by volume 0 to 1, by OIML R 22 at 20 °C. */
    public static double spirit(double strength) {
        return EthanolWater.densityByVolume(strength, EthanolWater.REFERENCE) / 1000;
    }
}
