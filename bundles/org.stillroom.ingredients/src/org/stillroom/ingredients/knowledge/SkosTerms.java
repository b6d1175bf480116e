package org.stillroom.ingredients.knowledge;

import java.util.Locale;

/**
 * The properties of our own that the export needs beside open vocabularies.
 *
 * <p>Each is defined in the export itself by a label and a comment of RDF Schema, so that another
 * program's reader knows what it says.
 */
public enum SkosTerms {
    /** How well a figure or a statement is known. */
    STATUS(
            "status",
            "how it is known: primary (read in the primary text), secondary, derived (exact"
                    + " arithmetic), memory, user (a row of the user's own) or disputed"),
    /** A statement about an allergen. */
    ALLERGEN_STATEMENT(
            "allergenStatement",
            "what somebody says about an allergen in the concept; what is not said is unknown, never"
                    + " absent"),
    /** Which allergen. */
    ALLERGEN("allergen", "which allergen the statement is about"),
    /** Whether it is there. */
    PRESENCE(
            "presence",
            "contains (in every making), possible (in some), none (none of the listed allergens"
                    + " belongs in it) or unknown"),
    /** What a hazard goes with. */
    GOES_WITH("goesWith", "the concept that the hazard goes with, and with it its narrower ones"),
    /** Words of a recipe that a hazard goes with. */
    TRIGGER("trigger", "words of a recipe that the hazard goes with, whatever the ingredients"),
    /** How grave a hazard is. */
    LEVEL("level", "stop (do not serve), restricted (limited by law or dose) or care"),
    /** Where a rule holds. */
    REGION("region", "where the rule holds: a country, the EU, or nothing for everywhere"),
    /** Which rule limits it. */
    RULE("rule", "which rule limits it and how; check the current local law"),
    /** What sort of thing began or ended. */
    MILESTONE_KIND("milestoneKind", "ingredient, unit, technique or law"),
    /** What began or ended. */
    SUBJECT("subject", "the word, or the concept's id, of what began or ended");

    /** Name space of the terms. */
    public static final String NAMESPACE = "urn:stillroom:terms:";

    /** What hazards begin with in RDF. */
    public static final String HAZARD = "urn:stillroom:hazard:";

    /** What first and last dates begin with in RDF. */
    public static final String MILESTONE = "urn:stillroom:milestone:";

    private final String local;
    private final String comment;

    SkosTerms(String local, String comment) {
        this.local = local;
        this.comment = comment;
    }

    /** Returns the whole IRI. */
    public String iri() {
        return NAMESPACE + local;
    }

    /** Returns the name with the prefix that the export uses. */
    public String prefixed() {
        return "st:" + local;
    }

    /** Returns the name in words. */
    public String words() {
        return local.replaceAll("(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }

    /** Returns what it says, for a reader of another program. */
    public String comment() {
        return comment;
    }
}
