package org.stillroom.model.spec;

import org.stillroom.model.explain.Citation;

/**
 * A warning about an ingredient or a step that could hurt someone.
 *
 * @param level how grave it is
 * @param subject what it is about, as the words name it
 * @param words the warning: what it is, which rule limits it, check current local law
 * @param source the rule or text behind it
 */
public record Caution(Level level, String subject, String words, Citation source) {

    /** How grave a caution is. */
    public enum Level {
        /** Do not serve. */
        STOP,
        /** Limited by law or by dose. */
        RESTRICTED,
        /** Care, allergen or labelling. */
        CARE
    }
}
