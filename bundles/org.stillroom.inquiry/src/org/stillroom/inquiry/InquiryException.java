package org.stillroom.inquiry;

/** Tells that an inquiry cannot be answered as it was put, and what would work. */
public final class InquiryException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String remedy;

    /**
     * Makes the exception.
     *
     * @param reason what is wrong, a sentence
     * @param remedy the nearest thing that would work, a sentence
     */
    public InquiryException(String reason, String remedy) {
        super(reason);
        this.remedy = remedy;
    }

    /** Returns the nearest thing that would work. */
    public String remedy() {
        return remedy;
    }
}
