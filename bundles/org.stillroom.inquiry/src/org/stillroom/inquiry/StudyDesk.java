package org.stillroom.inquiry;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.stillroom.library.Library;
import org.stillroom.library.LibraryFolder;
import org.stillroom.library.LibraryLayout;
import org.stillroom.library.NoLibraryException;
import org.stillroom.library.journal.Decisions;
import org.stillroom.library.journal.Hand;
import org.stillroom.library.journal.History;
import org.stillroom.library.read.SourceReaders;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.text.Anchor;

/**
 * A desk on which one library at a time lies open.
 *
 * <p>Opening again reads only what changed on disk since.
 */
public final class StudyDesk implements Desk, AutoCloseable {

    private final Path userCaches;
    private final Hand hand;
    private final KnowledgeShelf shelf = new KnowledgeShelf();
    private Optional<Path> folder = Optional.empty();
    private Optional<Study> study = Optional.empty();
    private Optional<IndexKeeper> keeper = Optional.empty();

    /** Makes a desk; caches of libraries that must not be written into go to a folder. */
    public StudyDesk(Path userCaches) {
        this(userCaches, Hand.of(System.getProperty("user.name", "")));
    }

    /**
     * Makes a desk.
     *
     * @param userCaches takes the caches of libraries that must not be written into
     * @param hand who decides at it
     */
    public StudyDesk(Path userCaches, Hand hand) {
        this.userCaches = userCaches;
        this.hand = hand;
    }

    /** Lays another library on the desk; it is read when first asked for. */
    public synchronized void lay(Path libraryFolder) {
        close();
        folder = Optional.of(libraryFolder.toAbsolutePath().normalize());
    }

    /** Returns the folder that lies on the desk. */
    public synchronized Optional<Path> folder() {
        return folder;
    }

    /** Returns where the parts of the open library lie. */
    public synchronized Optional<LibraryLayout> layout() {
        return folder.map(f -> LibraryLayout.of(f, userCaches));
    }

    @Override
    public synchronized Knowledge knowledge() {
        return study.map(Study::knowledge).orElseGet(() -> shelf.of(layout()));
    }

    @Override
    public synchronized Study study(Progress progress) {
        return study.orElseGet(() -> reread(progress));
    }

    /** Returns the library if it was read already. */
    public synchronized Optional<Study> openStudy() {
        return study;
    }

    /**
     * Reads the library anew: what did not change on disk is taken over.
     *
     * @throws InquiryException where no library lies on the desk or it cannot be opened
     */
    public synchronized Study reread(Progress progress) {
        LibraryLayout layout = layout().orElseThrow(DeskJournal::noLibrary);
        try {
            LibraryFolder opener = new LibraryFolder(layout, SourceReaders.shipped());
            Library library = opener.open(study.map(Study::library), progress);
            IndexKeeper index = keeper.orElseGet(() -> new IndexKeeper(layout.cache()));
            keeper = Optional.of(index);
            Knowledge knowledge = shelf.of(Optional.of(layout));
            Study fresh = new StudyReading(library, knowledge, study).read(index, progress);
            study = Optional.of(fresh);
            return fresh;
        } catch (NoLibraryException e) {
            throw new InquiryException(e.getMessage(), e.remedy());
        }
    }

    /**
     * Decides something about the library and reads anew the book that it is about.
     *
     * <p>See {@link Assertion} for the parameters. A decision about no book, such as one about
     * drinks, has an empty source.
     *
     * @throws InquiryException where no library is open, or its journal cannot be written
     */
    public synchronized Assertion decide(
            String kind, String source, Optional<Anchor> anchor, Map<String, String> values) {
        return written(journal -> journal.decide(kind, source, anchor, values));
    }

    /**
     * Decides something in the place of an earlier decision about the same words.
     *
     * @throws InquiryException as {@link #decide}
     */
    public synchronized Assertion replace(Assertion earlier, Map<String, String> values) {
        return written(journal -> journal.replace(earlier, values));
    }

    /**
     * Lets an earlier decision hold for other words: those that stand for its own now.
     *
     * @throws InquiryException as {@link #decide}
     */
    public synchronized Assertion placeAgain(Assertion earlier, Anchor anchor) {
        return written(journal -> journal.replace(earlier, Optional.of(anchor), earlier.values()));
    }

    /**
     * Takes one decision back, however long ago it was made; {@link #undo} undoes this too.
     *
     * @throws InquiryException as {@link #decide}
     */
    public synchronized Assertion takeBack(Assertion decision) {
        return written(journal -> journal.takeBack(decision));
    }

    /**
     * Undoes what was decided last, also in an earlier run of the program; tells what it was.
     *
     * @throws InquiryException as {@link #decide}
     */
    public synchronized Optional<Assertion> undo() {
        return written(Decisions::undo);
    }

    /**
     * Does again what was undone last, unless something was decided since; tells what it was.
     *
     * @throws InquiryException as {@link #decide}
     */
    public synchronized Optional<Assertion> redo() {
        return written(Decisions::redo);
    }

    /**
     * Returns what was ever decided about the open library, and what of it stands.
     *
     * @throws InquiryException where no library is open
     */
    public synchronized History decisions() {
        return DeskJournal.of(layout(), hand).decisions().history();
    }

    private <T> T written(DeskJournal.Deed<T> deed) {
        T done = DeskJournal.of(layout(), hand).carryOut(deed);
        study = study.map(this::decided);
        return done;
    }

    /** Returns a study with its decisions as they stand in the journal now. */
    private Study decided(Study before) {
        Library library = LibraryFolder.decided(before.library());
        return new StudyReading(library, shelf.of(layout()), Optional.of(before))
                .read(keeper.orElseThrow(), Progress.SILENT);
    }

    /** Clears the desk. */
    @Override
    public synchronized void close() {
        keeper.ifPresent(IndexKeeper::close);
        keeper = Optional.empty();
        study = Optional.empty();
        folder = Optional.empty();
    }
}
