package org.stillroom.library.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Circumstances;

/** The readers of all formats together. */
public final class SourceReaders {

    private final List<SourceReader> readers;

    private SourceReaders(List<SourceReader> readers) {
        this.readers = List.copyOf(readers);
    }

    /**
     * Returns the readers that come with the program: plain text, Markdown, TEI P5, HTML, ODT, DOCX,
     * EPUB, PDF.
     */
    public static SourceReaders shipped() {
        return of(FileAccess.USUAL);
    }

    /** Returns the readers of all formats with a way to files of their own. */
    static SourceReaders of(FileAccess access) {
        return new SourceReaders(
                List.of(
                        new PlainText(access),
                        new Markdown(access),
                        new Tei(access),
                        new Html(access),
                        new Odt(access),
                        new Docx(access),
                        new Epub(access),
                        new Pdf(access)));
    }

    /** Returns these readers and one more, which is asked last. */
    public SourceReaders with(SourceReader reader) {
        List<SourceReader> more = new ArrayList<>(readers);
        more.add(reader);
        return new SourceReaders(more);
    }

    /** Returns the sidecar of a file: the same name with the ending {@code .yaml}. */
    public static Path sidecar(Path file) {
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return file.resolveSibling((dot < 0 ? name : name.substring(0, dot)) + ".yaml");
    }

    /** Tells whether one of the readers takes a file of this name. */
    public boolean takes(Path file) {
        return reader(file).isPresent();
    }

    /** Reads a file by the reader for its ending; whatever goes wrong is a problem in the result. */
    public SourceReader.Result read(String id, Path file, Circumstances defaults) {
        try {
            return reader(file)
                    .map(r -> r.read(id, file, defaults))
                    .orElseGet(() -> SourceReader.Result.failed(noReader(id)));
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError | LinkageError e) {
            return SourceReader.Result.failed(Failures.problem(id, e));
        }
    }

    private Problem noReader(String id) {
        String endings =
                String.join(", ", readers.stream().flatMap(r -> r.endings().stream()).toList());
        return Problem.error(
                id, "No reader takes a file of this name.", "Name it with one of " + endings + ".");
    }

    private Optional<SourceReader> reader(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return readers.stream()
                .filter(r -> r.endings().stream().anyMatch(name::endsWith))
                .findFirst();
    }
}
