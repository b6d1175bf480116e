package org.stillroom.library;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.text.Normalizer;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.stillroom.library.read.SourceReaders;
import org.stillroom.model.explain.Problem;

/**
 * Finds the source files of a library; what cannot be one, though it looks like it, becomes a
 * problem.
 */
final class SourceFinder extends SimpleFileVisitor<Path> {

    private static final int DEEPEST = 12;

    /** Texts in formats that no reader takes and a word processor or a converter can turn. */
    private static final Set<String> ELSEWHERE =
            Set.of(
                    "doc", "rtf", "wpd", "wps", "sxw", "pages", "mobi", "azw", "azw3", "fb2",
                    "djvu");

    private final LibraryLayout layout;
    private final SourceReaders readers;
    private final List<Problem> problems;
    private final Map<String, Path> found = new TreeMap<>();

    private SourceFinder(LibraryLayout layout, SourceReaders readers, List<Problem> problems) {
        this.layout = layout;
        this.readers = readers;
        this.problems = problems;
    }

    /** Returns the files by their ids, in the order of these. */
    static Map<String, Path> find(
            LibraryLayout layout, SourceReaders readers, List<Problem> problems) {
        SourceFinder finder = new SourceFinder(layout, readers, problems);
        try {
            Files.walkFileTree(
                    layout.sources(),
                    EnumSet.of(FileVisitOption.FOLLOW_LINKS),
                    layout.isBare() ? 1 : DEEPEST,
                    finder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        finder.setScansAside();
        return finder.found;
    }

    /**
     * Returns the id of a file: its path below the sources, composed by Unicode NFC, so that it is
     * the same whichever system wrote the name.
     */
    private String id(Path file) {
        String path = layout.sources().relativize(file).toString().replace('\\', '/');
        return Normalizer.normalize(path, Normalizer.Form.NFC);
    }

    private static String name(Path file) {
        return file.getFileName() == null ? "" : file.getFileName().toString();
    }

    @Override
    public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes attributes) {
        boolean root = dir.equals(layout.sources());
        return name(dir).startsWith(".") && !root
                ? FileVisitResult.SKIP_SUBTREE
                : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
        if (isAside(file)) {
            return FileVisitResult.CONTINUE;
        }
        if (attributes.isDirectory()) {
            if (!layout.isBare()) {
                warn(file, "Folders in it lie too deep to be looked at.", "Move them further up.");
            }
        } else if (!readers.takes(file)) {
            elsewhere(file);
        } else if (attributes.isRegularFile()) {
            add(file);
        } else {
            warn(file, "It is no ordinary file.", "Move it away; everything else opened.");
        }
        return FileVisitResult.CONTINUE;
    }

    private static boolean isAside(Path file) {
        String name = name(file).toLowerCase(Locale.ROOT);
        return name.startsWith(".") || name.startsWith("readme");
    }

    private void add(Path file) {
        Path other = found.putIfAbsent(id(file), file);
        if (other != null) {
            warn(
                    file,
                    "Another file has the same name, its letters composed otherwise.",
                    "Give one of the two another name; the first was read.");
        }
    }

    private void elsewhere(Path file) {
        String name = name(file).toLowerCase(Locale.ROOT);
        String ending = name.substring(name.lastIndexOf('.') + 1);
        if (ELSEWHERE.contains(ending)) {
            warn(
                    file,
                    "No reader takes files of this format (." + ending + ").",
                    "Save it as .docx, .odt, .epub or plain text.");
        }
    }

    private void warn(Path file, String reason, String remedy) {
        problems.add(Problem.warning(id(file), reason, remedy));
    }

    /** A PDF beside a transcription of the same name is its scan, not a second witness. */
    private void setScansAside() {
        Map<String, String> transcriptions = new TreeMap<>();
        for (String id : found.keySet()) {
            if (!isPdf(id)) {
                transcriptions.putIfAbsent(stem(id), id);
            }
        }
        for (String id : List.copyOf(found.keySet())) {
            String transcription = transcriptions.get(stem(id));
            if (isPdf(id) && transcription != null) {
                setAside(id, transcription);
            }
        }
    }

    private static boolean isPdf(String id) {
        return id.toLowerCase(Locale.ROOT).endsWith(".pdf");
    }

    private static String stem(String id) {
        return id.replaceFirst("\\.[^./]*$", "");
    }

    private void setAside(String id, String transcription) {
        found.remove(id);
        problems.add(
                Problem.warning(
                        id,
                        "It is taken as the scan of " + transcription + " and not read itself.",
                        "Give it another name to have both read."));
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException failure) {
        boolean gone = failure instanceof NoSuchFileException;
        // programs mark a file that is being edited by a link that leads nowhere
        if (isAside(file) || gone && !readers.takes(file)) {
            return FileVisitResult.CONTINUE;
        }
        String reason =
                switch (failure) {
                    case AccessDeniedException denied -> "It may not be read by this user.";
                    case NoSuchFileException nothing -> "It leads to a file that is not there.";
                    case FileSystemLoopException loop ->
                            "It leads back to a folder that it lies in.";
                    default -> "It cannot be opened (" + failure.getMessage() + ").";
                };
        String remedy =
                failure instanceof AccessDeniedException
                        ? "Give yourself the right to read it, or move it away; everything else "
                                + "opened."
                        : "Take the link away or let it lead elsewhere; everything else opened.";
        problems.add(Problem.error(id(file), reason, remedy));
        return FileVisitResult.CONTINUE;
    }
}
