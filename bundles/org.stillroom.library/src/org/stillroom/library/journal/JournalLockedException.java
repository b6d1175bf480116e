package org.stillroom.library.journal;

import java.nio.file.FileSystemException;
import java.nio.file.Path;

/** Tells that another program held the journal of decisions for too long. */
public final class JournalLockedException extends FileSystemException {

    private static final long serialVersionUID = 1L;

    /** Makes the exception for a journal. */
    public JournalLockedException(Path journal) {
        super(journal.toString(), null, "another program is writing to it");
    }
}
