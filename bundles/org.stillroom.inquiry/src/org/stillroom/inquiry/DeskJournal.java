package org.stillroom.inquiry;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.stillroom.library.LibraryLayout;
import org.stillroom.library.journal.Decisions;
import org.stillroom.library.journal.Hand;
import org.stillroom.library.journal.Journal;
import org.stillroom.library.journal.JournalLockedException;

/**
 * The journal of the library on a desk; where it cannot be written, it says what would help.
 *
 * @param layout the library
 * @param decisions the desk's hand on its journal
 */
record DeskJournal(LibraryLayout layout, Decisions decisions) {

    /** Something written into a journal. */
    interface Deed<T> {
        T on(Decisions decisions) throws IOException;
    }

    static DeskJournal of(Optional<LibraryLayout> open, Hand hand) {
        LibraryLayout layout = open.orElseThrow(DeskJournal::noLibrary);
        return new DeskJournal(layout, new Decisions(new Journal(layout.research()), hand));
    }

    static InquiryException noLibrary() {
        return new InquiryException(
                "No library is open.", "Name its folder with --library FOLDER.");
    }

    <T> T carryOut(Deed<T> deed) {
        Path root = layout.root();
        if (!Files.isDirectory(root)) {
            throw new InquiryException(
                    "The library's folder " + root + " is no longer there.",
                    "Put it back or connect its disk, and decide again; nothing was written.");
        }
        try {
            return deed.on(decisions);
        } catch (JournalLockedException e) {
            throw new InquiryException(
                    "Another program is writing to " + e.getFile() + ".",
                    "Wait until it has finished, and decide again; nothing was written.");
        } catch (IOException e) {
            throw refused(e);
        }
    }

    private InquiryException refused(IOException e) {
        Path research = layout.research();
        boolean readOnly =
                e instanceof AccessDeniedException
                        || !Files.isWritable(Files.exists(research) ? research : layout.root());
        if (readOnly) {
            return new InquiryException(
                    "Decisions cannot be written: this user may not write into " + research + ".",
                    "Give yourself the right to write there, or copy the library to a folder of"
                            + " your own; nothing was written.");
        }
        return new InquiryException(
                "The decision could not be written (" + e.getMessage() + ").",
                "Make room on the disk of " + research + " or mend it, and decide again.");
    }
}
