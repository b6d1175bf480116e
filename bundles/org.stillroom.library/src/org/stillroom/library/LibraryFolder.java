package org.stillroom.library;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stillroom.library.journal.Journal;
import org.stillroom.library.read.SourceReader;
import org.stillroom.library.read.SourceReaders;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.progress.Progress;

/**
 * Opens a folder of transcriptions.
 *
 * <p>A file that cannot be read becomes a problem with file, line and reason; the others open all
 * the same. No file of sources is ever written.
 */
public final class LibraryFolder {

    private final LibraryLayout layout;
    private final SourceReaders readers;

    /** Makes an opener for a folder. */
    public LibraryFolder(LibraryLayout layout, SourceReaders readers) {
        this.layout = layout;
        this.readers = readers;
    }

    /** Returns an opener for a folder with the readers that come with the program. */
    public static LibraryFolder of(Path folder, Path userCaches) {
        return new LibraryFolder(LibraryLayout.of(folder, userCaches), SourceReaders.shipped());
    }

    /**
     * Opens the folder.
     *
     * @param before the library as it was last opened; files whose size and time are as they were
     *     are taken from it unread
     * @throws NoLibraryException where the folder is missing, is no folder or may not be read
     */
    public Library open(Optional<Library> before, Progress progress) {
        checkFolder();
        List<Problem> problems = new ArrayList<>();
        LibrarySettings settings = SettingsFile.read(layout, problems);
        Map<String, Path> found = SourceFinder.find(layout, readers, problems);
        progress.begin("Opening " + settings.title(), found.size());
        Map<String, SourceFile> known = new HashMap<>();
        before.ifPresent(l -> l.files().forEach(f -> known.put(f.id(), f)));
        List<SourceFile> files = new ArrayList<>();
        for (Map.Entry<String, Path> file : found.entrySet()) {
            progress.check();
            files.add(open(file.getKey(), file.getValue(), known, settings));
            progress.step(1);
        }
        Journal journal = new Journal(layout.research());
        return new Library(layout, settings, files, journal.standing(problems), problems);
    }

    /** Returns an open library with the decisions as they stand in its journal now. */
    public static Library decided(Library open) {
        List<Problem> problems = new ArrayList<>();
        for (Problem problem : open.problems()) {
            if (!problem.file().startsWith("research")) {
                problems.add(problem);
            }
        }
        List<Assertion> decisions = new Journal(open.layout().research()).standing(problems);
        return new Library(open.layout(), open.settings(), open.files(), decisions, problems);
    }

    private void checkFolder() {
        Path root = layout.root();
        if (!Files.exists(root)) {
            throw new NoLibraryException(
                    root, "There is no folder " + root + ".", "Name a folder of transcriptions.");
        }
        if (!Files.isDirectory(root)) {
            throw new NoLibraryException(
                    root, root + " is a file, not a folder.", "Name the folder that it lies in.");
        }
        if (!Files.isReadable(layout.sources())) {
            throw new NoLibraryException(
                    root,
                    layout.sources() + " may not be read by this user.",
                    "Give yourself the right to read it, or copy it to a folder of your own.");
        }
    }

    private SourceFile open(
            String id, Path file, Map<String, SourceFile> known, LibrarySettings settings) {
        String stamp = stamp(file);
        SourceFile before = known.get(id);
        if (before != null && before.stamp().equals(stamp)) {
            return before;
        }
        SourceReader.Result result = readers.read(id, file, settings.defaults());
        return new SourceFile(id, stamp, result.source(), result.problems());
    }

    private static String stamp(Path file) {
        return state(file) + state(SourceReaders.sidecar(file));
    }

    private static String state(Path file) {
        try {
            BasicFileAttributes a = Files.readAttributes(file, BasicFileAttributes.class);
            return a.size() + "@" + a.lastModifiedTime().toMillis() + ";";
        } catch (IOException absent) {
            return "-;";
        }
    }
}
