package org.stillroom.ingredients;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.explain.Citation;

/**
 * What is known of a sense in figures.
 *
 * @param figures each figure that is known
 */
public record Properties(Map<Quantity, Figure> figures) {

    /** Nothing is known. */
    public static final Properties NONE = new Properties(Map.of());

    /** Keeps the map unchangeable. */
    public Properties {
        figures = Map.copyOf(figures);
    }

    /** What can be measured. */
    public enum Quantity {
        /** Alcohol, per cent by volume at 20 °C. */
        STRENGTH("% vol"),
        /** Sugars, grams in a litre. */
        SUGAR("g/L"),
        /** Titratable acid as anhydrous citric acid, grams in a litre. */
        ACID("g/L"),
        /** Density at 20 °C, grams in a millilitre. */
        DENSITY("g/ml");

        private final String unit;

        Quantity(String unit) {
            this.unit = unit;
        }

        /** Returns the unit that figures are in. */
        public String unit() {
            return unit;
        }

        /** Returns the word that knowledge files use. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** Returns the quantity of this word. */
        public static Optional<Quantity> of(String word) {
            String wanted = word.strip().toLowerCase(Locale.ROOT);
            return Stream.of(values()).filter(q -> q.word().equals(wanted)).findFirst();
        }
    }

    /**
     * One figure.
     *
     * @param value the estimate
     * @param of id of the sense that it was stated for: the sense itself or a broader one
     * @param source who says so
     */
    public record Figure(Estimate value, String of, Citation source) {}

    /** Returns the strength in per cent by volume. */
    public Optional<Figure> strength() {
        return Optional.ofNullable(figures.get(Quantity.STRENGTH));
    }

    /** Returns the sugars in grams per litre. */
    public Optional<Figure> sugar() {
        return Optional.ofNullable(figures.get(Quantity.SUGAR));
    }

    /** Returns the acid in grams of citric acid per litre. */
    public Optional<Figure> acid() {
        return Optional.ofNullable(figures.get(Quantity.ACID));
    }

    /** Returns the density in grams per millilitre. */
    public Optional<Figure> density() {
        return Optional.ofNullable(figures.get(Quantity.DENSITY));
    }
}
