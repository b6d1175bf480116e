package org.stillroom.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds the files of truth in a checkout. */
final class Truth {

    /** The half that nobody looks at row by row; only its totals are printed. */
    static final String SEALED = "E";

    private Truth() {}

    /**
     * Returns the rows of the first argument that is no option, else those of files below the
     * checkout, one after another.
     */
    static List<String> rows(String[] args, String... usual) throws IOException {
        List<String> rows = new ArrayList<>();
        boolean named = named(args).isPresent();
        for (String file : named ? new String[] {""} : usual) {
            rows.addAll(Files.readAllLines(file(args, file), StandardCharsets.UTF_8));
        }
        return rows;
    }

    /** Returns the first argument that is no option as a path, else a file below the checkout. */
    static Path file(String[] args, String usual) {
        return named(args)
                .map(Path::of)
                .orElseGet(() -> Path.of(System.getProperty("stillroom.root", "."), usual));
    }

    /** A number after an option belongs to it. */
    private static Optional<String> named(String[] args) {
        return Stream.of(args).filter(o -> !o.startsWith("-") && !o.matches("\\d+")).findFirst();
    }
}
