package org.stillroom.reading.grammar;

/** What the verb of a clause makes of the ingredients after it. */
enum Role {
    /** No verb yet. */
    NONE,
    /** They go into the drink. */
    ADD,
    /** They dress it. */
    GARNISH,
    /** They fill the glass up. */
    TOP,
    /** They are shaken or strained; only ice may come in with that. */
    MIX,
    /** They are stuck in; herbs dress the drink, fruits go into it. */
    STICK,
    /** They are twisted, often over the drink. */
    TWIST,
    /** They stand in for what another recipe has. */
    SUBST,
    /** They come last. */
    FINISH,
    /** They lie on top. */
    FLOAT,
    /** They wet the glass. */
    RINSE,
    /** They come with it. */
    SERVE,
    /** They cool it. */
    COOL,
    /** They are fetched. */
    TAKE,
    /** They fill a vessel. */
    FILL,
    /** They are left out. */
    NEG
}
