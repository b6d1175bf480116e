package org.stillroom.inquiry;

import java.nio.file.Path;
import java.util.Optional;
import org.stillroom.library.Library;
import org.stillroom.library.LibraryFolder;
import org.stillroom.library.LibraryLayout;
import org.stillroom.library.NoLibraryException;
import org.stillroom.library.read.SourceReaders;
import org.stillroom.model.progress.Progress;

/**
 * A desk on which one library at a time lies open.
 *
 * <p>Opening again reads only what changed on disk since.
 */
public final class StudyDesk implements Desk, AutoCloseable {

    private final Path userCaches;
    private final KnowledgeShelf shelf = new KnowledgeShelf();
    private Optional<Path> folder = Optional.empty();
    private Optional<Study> study = Optional.empty();
    private Optional<IndexKeeper> keeper = Optional.empty();

    /** Makes a desk; caches of libraries that must not be written into go to a folder. */
    public StudyDesk(Path userCaches) {
        this.userCaches = userCaches;
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
        LibraryLayout layout =
                layout().orElseThrow(
                                () ->
                                        new InquiryException(
                                                "No library is open.",
                                                "Name its folder with --library FOLDER."));
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

    /** Clears the desk. */
    @Override
    public synchronized void close() {
        keeper.ifPresent(IndexKeeper::close);
        keeper = Optional.empty();
        study = Optional.empty();
        folder = Optional.empty();
    }
}
