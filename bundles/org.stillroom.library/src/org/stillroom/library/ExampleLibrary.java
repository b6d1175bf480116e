package org.stillroom.library;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The user's own copy of the library that ships with the program.
 *
 * <p>The program's copy is replaced with the program, and may be read-only; decisions made in it
 * would go with it. The user's copy is brought up to date file by file: what the user changed or
 * deleted stays so, and nothing is ever done to decisions.
 */
public final class ExampleLibrary {

    /** Where the copy keeps what it was given: one line a file, its digest and its path. */
    static final String GIVEN = ".given";

    private static final String FOLDER = "example";

    private final Path shipped;
    private final Path copy;

    private ExampleLibrary(Path shipped, Path copy) {
        this.shipped = shipped;
        this.copy = copy;
    }

    /**
     * Returns the folder of the user's copy, made or brought up to date.
     *
     * @param shipped the folder that ships with the program
     * @param data the folder for what belongs to the user
     * @return the copy; the shipped folder itself where no copy can be written
     */
    public static Path inHand(Path shipped, Path data) {
        ExampleLibrary library = new ExampleLibrary(shipped, data.resolve(FOLDER));
        try {
            library.bringUpToDate();
            return library.copy;
        } catch (IOException unwritable) {
            return Files.isRegularFile(library.copy.resolve(LibraryLayout.SETTINGS))
                    ? library.copy
                    : shipped;
        }
    }

    private void bringUpToDate() throws IOException {
        SortedMap<String, String> given = given();
        SortedMap<String, String> fresh = shippedDigests();
        if (given.equals(fresh)) {
            return;
        }
        for (var file : fresh.entrySet()) {
            if (isOurs(file.getKey(), given)) {
                byte[] bytes = Files.readAllBytes(shipped.resolve(file.getKey()));
                AtomicFile.write(copy.resolve(file.getKey()), bytes);
            }
        }
        for (String old : given.keySet()) {
            if (!fresh.containsKey(old) && isUnchanged(old, given)) {
                Files.deleteIfExists(copy.resolve(old));
            }
        }
        AtomicFile.write(copy.resolve(GIVEN), written(fresh));
    }

    /** Tells whether a file may be written: never given before, or still as it was given. */
    private boolean isOurs(String path, SortedMap<String, String> given) throws IOException {
        return given.containsKey(path)
                ? isUnchanged(path, given)
                : !Files.exists(copy.resolve(path));
    }

    private boolean isUnchanged(String path, SortedMap<String, String> given) throws IOException {
        Path file = copy.resolve(path);
        return Files.isRegularFile(file) && digest(file).equals(given.get(path));
    }

    private SortedMap<String, String> given() throws IOException {
        SortedMap<String, String> files = new TreeMap<>();
        if (Files.exists(copy.resolve(GIVEN))) {
            for (String line : Files.readAllLines(copy.resolve(GIVEN))) {
                int blank = line.indexOf(' ');
                if (blank > 0) {
                    files.put(line.substring(blank + 1), line.substring(0, blank));
                }
            }
        }
        return files;
    }

    private static String written(SortedMap<String, String> files) {
        StringBuilder lines = new StringBuilder();
        files.forEach((path, digest) -> lines.append(digest).append(' ').append(path).append('\n'));
        return lines.toString();
    }

    private SortedMap<String, String> shippedDigests() throws IOException {
        SortedMap<String, String> files = new TreeMap<>();
        List<Path> found;
        try (Stream<Path> walk = Files.walk(shipped)) {
            found = walk.filter(Files::isRegularFile).toList();
        }
        for (Path file : found) {
            Path relative = shipped.relativize(file);
            if (isGiven(relative)) {
                files.put(relative.toString().replace('\\', '/'), digest(file));
            }
        }
        return files;
    }

    /** Caches and decisions of whoever opened the shipped folder itself are not handed on. */
    private static boolean isGiven(Path relative) {
        String first = relative.getName(0).toString();
        return !first.startsWith(".") && !first.equals("research");
    }

    private static String digest(Path file) throws IOException {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(sha.digest(Files.readAllBytes(file)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform has SHA-256", impossible);
        }
    }
}
