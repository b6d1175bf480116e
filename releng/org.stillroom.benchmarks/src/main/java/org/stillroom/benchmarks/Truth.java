package org.stillroom.benchmarks;

import java.nio.file.Path;
import java.util.stream.Stream;

/** Finds the files of truth in a checkout. */
final class Truth {

    private Truth() {}

    /** Returns the first argument that is no option as a path, else a file below the checkout. */
    static Path file(String[] args, String usual) {
        return Stream.of(args)
                .filter(o -> !o.startsWith("-"))
                .findFirst()
                .map(Path::of)
                .orElseGet(() -> Path.of(System.getProperty("stillroom.root", "."), usual));
    }
}
