package org.stillroom.search;

/** Tells that a query cannot be understood, and what would work. */
public final class SearchException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String remedy;

    /** Makes the exception with a reason and the nearest thing that would work. */
    public SearchException(String reason, String remedy) {
        super(reason);
        this.remedy = remedy;
    }

    /** Returns the nearest thing that would work. */
    public String remedy() {
        return remedy;
    }
}
