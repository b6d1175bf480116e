package org.stillroom.ingredients;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.stillroom.model.spec.Role;

/**
 * What sort of thing an ingredient is: finer than its {@link Role} in a drink.
 *
 * <p>The word of each kind is what knowledge files write in their {@code role} column.
 */
public enum IngredientKind {
    /** Distilled and not sweetened. */
    BASE_SPIRIT("base spirit", Role.SPIRIT),
    /** Wine with spirit added, aromatised or not. */
    FORTIFIED_WINE("fortified wine", Role.WINE),
    /** Wine of any fruit. */
    WINE("wine", Role.WINE),
    /** Sweetened, flavoured spirit. */
    LIQUEUR("liqueur", Role.LIQUEUR),
    /** Sugar, syrup, honey. */
    SWEET("sweet", Role.SWEET),
    /** Sour juice, vinegar. */
    SOUR("sour", Role.SOUR),
    /** Bitters, bitter barks and roots. */
    BITTER("bitter", Role.BITTER),
    /** Flower water, essence, peel. */
    AROMATIC("aromatic", Role.AROMATIC),
    /** Milk and what is made of it. */
    DAIRY("dairy", Role.RICH),
    /** Egg and its parts. */
    EGG("egg", Role.RICH),
    /** Water, still or charged, and soft drinks. */
    DILUTION("dilution", Role.DILUTION),
    /** Seeds, barks and roots used for flavour. */
    SPICE("spice", Role.AROMATIC),
    /** Fruit and juice that is not chiefly sour. */
    FRUIT("fruit", Role.FRUIT),
    /** Leaves and flowers. */
    HERB("herb", Role.AROMATIC),
    /** Nuts and kernels. */
    NUT("nut", Role.AROMATIC),
    /** Ice of any form. */
    ICE("ice", Role.ICE),
    /** Tea, coffee and other infusions. */
    TEA_OR_COFFEE("tea or coffee", Role.DILUTION),
    /** Beer, cider, mead. */
    BEER_OR_CIDER("beer or cider", Role.BEER),
    /** What colours a drink. */
    COLOUR("colour", Role.COLOUR),
    /** Acid other than juice. */
    ACID("acid", Role.SOUR),
    /** Finings, salts, drugs and the rest. */
    OTHER("other", Role.OTHER);

    private final String word;
    private final Role role;

    IngredientKind(String word, Role role) {
        this.word = word;
        this.role = role;
    }

    /** Returns the word that knowledge files use. */
    public String word() {
        return word;
    }

    /** Returns what an ingredient of this kind does in a drink. */
    public Role role() {
        return role;
    }

    /** Returns the kind of this word, in any case. */
    public static Optional<IngredientKind> of(String word) {
        String wanted = word.strip().toLowerCase(Locale.ROOT);
        return Stream.of(values()).filter(k -> k.word.equals(wanted)).findFirst();
    }
}
