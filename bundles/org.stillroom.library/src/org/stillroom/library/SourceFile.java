package org.stillroom.library;

import java.util.List;
import java.util.Optional;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Source;

/**
 * A source's file with what came of reading it.
 *
 * @param id path below the folder of sources, with forward slashes
 * @param stamp sizes and times of the file and its sidecar, to see a change without reading
 * @param source what was read, unless the file is bad
 * @param problems what was wrong with it
 */
public record SourceFile(String id, String stamp, Optional<Source> source, List<Problem> problems) {

    /** Keeps the problems as an unchangeable list. */
    public SourceFile {
        problems = List.copyOf(problems);
    }
}
