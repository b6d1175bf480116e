package org.stillroom.workbench;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Control;

/**
 * The colours in which a control of ours writes, given by the style sheet of the theme.
 *
 * <p>Belongs to one control and to the window's thread. A control that never met a style sheet, as
 * in a small test, writes in the system's colours.
 */
public final class Ink {
    private static final String KEY = "org.stillroom.ink";

    private final Control owner;
    private final Runnable changed;
    private final Map<Use, Color> colours = new EnumMap<>(Use.class);

    /** What a colour is used for; the property is the name after {@code stillroom-}. */
    public enum Use {
        /** The ground. */
        PAPER,
        /** Words. */
        INK,
        /** Words of less weight. */
        QUIET,
        /** What can be opened. */
        ACCENT,
        /** The ground of words that are lit up. */
        LIT,
        /** The ground of words that a search found. */
        FOUND,
        /** An amount. */
        AMOUNT,
        /** A word of measure. */
        MEASURE,
        /** An ingredient. */
        INGREDIENT,
        /** Something to do. */
        STEP,
        /** A vessel. */
        VESSEL,
        /** Words that are doubtful. */
        DOUBT,
        /** A caution. */
        CAUTION;

        /** Returns the property of the style sheet. */
        public String property() {
            return "stillroom-" + name().toLowerCase(Locale.ROOT);
        }

        /** Returns the use that a property of the style sheet names. */
        public static Optional<Use> ofProperty(String property) {
            for (Use use : values()) {
                if (use.property().equals(property)) {
                    return Optional.of(use);
                }
            }
            return Optional.empty();
        }
    }

    private Ink(Control owner, Runnable changed) {
        this.owner = owner;
        this.changed = changed;
    }

    /** Gives a control its ink; the action is run whenever a colour changes. */
    public static Ink of(Control owner, Runnable changed) {
        Ink ink = new Ink(owner, changed);
        owner.setData(KEY, ink);
        return ink;
    }

    /** Returns the ink that a control was given. */
    public static Optional<Ink> of(Control owner) {
        return Optional.ofNullable((Ink) owner.getData(KEY));
    }

    /** Returns the colour for a use. */
    public Color colour(Use use) {
        Color given = colours.get(use);
        if (given != null) {
            return given;
        }
        return use == Use.PAPER || use == Use.LIT || use == Use.FOUND
                ? owner.getBackground()
                : owner.getForeground();
    }

    /** Sets the colour for a use. */
    public void set(Use use, Color colour) {
        if (!colour.equals(colours.put(use, colour))) {
            changed.run();
        }
    }
}
