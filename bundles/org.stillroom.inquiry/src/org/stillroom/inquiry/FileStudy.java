package org.stillroom.inquiry;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.stillroom.library.read.SourceReader;
import org.stillroom.library.read.SourceReaders;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Circumstances;

/**
 * One file read by itself, outside any library.
 *
 * @param book what was read in it, unless the file is bad
 * @param problems what was wrong with it
 */
public record FileStudy(Optional<BookStudy> book, List<Problem> problems) {

    /** Keeps the problems as an unchangeable list. */
    public FileStudy {
        problems = List.copyOf(problems);
    }

    /**
     * Reads a file.
     *
     * @param defaults stand in for what the file does not say of itself
     */
    public static FileStudy read(
            Path file, Circumstances defaults, Knowledge knowledge, Progress progress) {
        String id = file.getFileName().toString();
        SourceReader.Result result = SourceReaders.shipped().read(id, file, defaults);
        Optional<BookStudy> book =
                result.source()
                        .map(s -> TitlePage.complete(s, defaults, knowledge))
                        .map(s -> new BookReader.Task(s, List.of(), Optional.empty(), knowledge))
                        .map(t -> BookReader.read(t, progress));
        return new FileStudy(book, result.problems());
    }
}
