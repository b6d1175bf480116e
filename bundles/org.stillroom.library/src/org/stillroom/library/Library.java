package org.stillroom.library;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Source;

/**
 * A folder of transcriptions as it was at one moment.
 *
 * <p>Immutable: a change on disk makes a new library, see {@link LibraryFolder#open}.
 *
 * @param layout where its parts lie
 * @param settings what {@code stillroom.json} says
 * @param files every source file with its state on disk, by id
 * @param decisions what people decided, in order, decisions taken back left out
 * @param problems what could not be read
 */
public record Library(
        LibraryLayout layout,
        LibrarySettings settings,
        List<SourceFile> files,
        List<Assertion> decisions,
        List<Problem> problems) {

    /** Keeps the lists unchangeable. */
    public Library {
        files = List.copyOf(files);
        decisions = List.copyOf(decisions);
        problems = List.copyOf(problems);
    }

    /** Returns the sources that could be read, by id. */
    public List<Source> sources() {
        return files.stream().flatMap(f -> f.source().stream()).toList();
    }

    /** Returns the source of an id. */
    public Optional<Source> source(String id) {
        return sources().stream().filter(s -> s.id().equals(id)).findFirst();
    }

    /** Returns the folder. */
    public Path root() {
        return layout.root();
    }

    /** Returns all problems, those of single files included. */
    public List<Problem> allProblems() {
        List<Problem> all = new java.util.ArrayList<>(problems);
        files.forEach(f -> all.addAll(f.problems()));
        return List.copyOf(all);
    }
}
