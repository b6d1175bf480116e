package org.stillroom.inquiry;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import org.stillroom.library.ExampleLibrary;

/**
 * Where this copy of the program keeps what, as its start script says.
 *
 * @param shipped the example library that ships with the program, if this copy has it
 * @param data the folder for what belongs to the user, if the script names one
 * @param caches the folder for caches of libraries that must not be written into
 */
public record Premises(Optional<Path> shipped, Optional<Path> data, Path caches) {

    /** The system property that names the example which ships with the program. */
    public static final String EXAMPLE = "stillroom.example";

    /** The system property that names the folder for what belongs to the user. */
    public static final String DATA = "stillroom.data";

    /** The system property that names the folder for what may be deleted at any time. */
    public static final String CACHE = "stillroom.cache";

    /** Returns the premises of the running program. */
    public static Premises here() {
        return of(System::getProperty);
    }

    /** Returns the premises that properties tell; a function that returns null for unset ones. */
    static Premises of(Function<String, String> property) {
        Path caches =
                path(property, CACHE)
                        .orElseGet(() -> Path.of(property.apply("java.io.tmpdir"), "stillroom"));
        return new Premises(
                path(property, EXAMPLE), path(property, DATA), caches.resolve("libraries"));
    }

    /** Tells whether there is an example library, without touching the user's copy. */
    public boolean hasExample() {
        return shipped.filter(Files::isDirectory).isPresent();
    }

    /**
     * Returns the folder of the example library: the user's own copy, made or brought up to date
     * first, so that decisions in it outlive this copy of the program.
     */
    public Optional<Path> example() {
        return shipped.filter(Files::isDirectory)
                .map(s -> data.map(d -> ExampleLibrary.inHand(s, d)).orElse(s));
    }

    private static Optional<Path> path(Function<String, String> property, String name) {
        return Optional.ofNullable(property.apply(name)).filter(v -> !v.isBlank()).map(Path::of);
    }
}
