package org.stillroom.ingredients;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The allergens that must be declared by Regulation (EU) No 1169/2011, Annex II (fourteen), or by
 * the United States’ Food Allergen Labeling and Consumer Protection Act of 2004 and FASTER Act of
 * 2021 (nine).
 *
 * <p>Both lists are from memory and must be checked against the current law.
 */
public enum Allergen {
    /** Wheat, rye, barley, oats and their kin; in the United States wheat alone. */
    GLUTEN("cereals with gluten", true, false),
    /** Wheat; counted under gluten in the European Union. */
    WHEAT("wheat", false, true),
    /** Crustaceans. */
    CRUSTACEANS("crustaceans", true, true),
    /** Eggs. */
    EGGS("eggs", true, true),
    /** Fish, isinglass in part exempted. */
    FISH("fish", true, true),
    /** Peanuts. */
    PEANUTS("peanuts", true, true),
    /** Soybeans. */
    SOYBEANS("soybeans", true, true),
    /** Milk. */
    MILK("milk", true, true),
    /** Almonds, walnuts and other tree nuts. */
    NUTS("tree nuts", true, true),
    /** Celery. */
    CELERY("celery", true, false),
    /** Mustard. */
    MUSTARD("mustard", true, false),
    /** Sesame. */
    SESAME("sesame", true, true),
    /** Sulphur dioxide and sulphites above 10 mg in a kilogram or litre. */
    SULPHITES("sulphites", true, false),
    /** Lupin. */
    LUPIN("lupin", true, false),
    /** Molluscs. */
    MOLLUSCS("molluscs", true, false);

    private final String words;
    private final boolean european;
    private final boolean american;

    Allergen(String words, boolean european, boolean american) {
        this.words = words;
        this.european = european;
        this.american = american;
    }

    /** Returns the name for a reader. */
    public String words() {
        return words;
    }

    /** Returns the word that knowledge files use. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Tells whether the European Union’s list has it. */
    public boolean isEuropean() {
        return european;
    }

    /** Tells whether the United States’ list has it. */
    public boolean isAmerican() {
        return american;
    }

    /** Returns the allergen of this word. */
    public static Optional<Allergen> of(String word) {
        String wanted = word.strip().toLowerCase(Locale.ROOT);
        return Stream.of(values()).filter(a -> a.word().equals(wanted)).findFirst();
    }
}
