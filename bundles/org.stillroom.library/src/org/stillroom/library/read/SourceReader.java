package org.stillroom.library.read;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Source;

/**
 * Reads source files of one format.
 *
 * <p>A new format arrives as a new implementation that {@link SourceReaders#with} adds.
 * Implementations are stateless and never write.
 */
public interface SourceReader {

    /**
     * What came of reading a file.
     *
     * @param source what was read, unless the file is bad
     * @param problems what was wrong with it
     */
    record Result(Optional<Source> source, List<Problem> problems) {

        /** Keeps the problems as an unchangeable list. */
        public Result {
            problems = List.copyOf(problems);
        }

        /** Returns the result of a file that cannot be read. */
        static Result failed(Problem problem) {
            return new Result(Optional.empty(), List.of(problem));
        }
    }

    /** Returns the endings of file names that it reads, lower case, with the dot. */
    List<String> endings();

    /**
     * Reads a file.
     *
     * @param id the source's id
     * @param file where it lies
     * @param defaults what holds where the file says nothing
     * @return what was read, and what was wrong; never throws for a bad file
     */
    Result read(String id, Path file, Circumstances defaults);
}
