package org.stillroom.measures;

/** What sort of stuff is measured: an ounce of gin is a volume, an ounce of sugar a mass. */
public enum Matter {
    /** Something that is poured. */
    LIQUID,
    /** Something that is weighed, heaped or counted. */
    SOLID,
    /** Nothing is known of it. */
    UNKNOWN
}
