package org.stillroom.model.date;

/** An answer that may also be “possibly”. */
public enum Certainty {
    /** So in every case. */
    CERTAIN,
    /** So in some cases. */
    POSSIBLE,
    /** So in no case. */
    NO
}
