package org.stillroom.inquiry;

import org.stillroom.model.progress.Progress;

/**
 * Where inquiries are made: what is known, and the library that lies open.
 *
 * <p>Safe on any thread.
 */
public interface Desk {

    /** Returns what is known, the open library's own rows included. */
    Knowledge knowledge();

    /**
     * Returns the open library, read; the first call may take long.
     *
     * @throws InquiryException where no library is open or it cannot be opened
     */
    Study study(Progress progress);
}
