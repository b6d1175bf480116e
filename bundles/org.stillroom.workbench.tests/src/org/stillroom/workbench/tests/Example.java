package org.stillroom.workbench.tests;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** The example library, copied so that a test may change it. */
final class Example {
    private static final String FOLDER = "corpus-example";

    private Example() {}

    /** Copies the example library into a folder and returns the copy. */
    static Path copy(Path into) throws IOException {
        Path original = original();
        Path copy = into.resolve("library");
        try (Stream<Path> files = Files.walk(original)) {
            for (Path file : files.sorted(Comparator.naturalOrder()).toList()) {
                Path relative = original.relativize(file);
                if (!relative.startsWith(".stillroom")) {
                    Files.copy(file, copy.resolve(relative.toString()));
                }
            }
        }
        return copy;
    }

    private static Path original() {
        Path here = Path.of("").toAbsolutePath();
        while (here != null && !Files.isDirectory(here.resolve(FOLDER))) {
            here = here.getParent();
        }
        if (here == null) {
            return Path.of(System.getProperty("stillroom.example"));
        }
        return here.resolve(FOLDER);
    }
}
