package org.stillroom.library;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * Where the parts of a library lie.
 *
 * <p>A folder without {@code sources/} and {@code stillroom.json} is taken as a bare heap of
 * transcriptions: its own text files are the sources, and nothing is ever written into it but
 * decisions.
 *
 * @param root the folder, absolute
 * @param sources the folder of source files
 * @param cache the folder of index and caches, which may be deleted at any time
 */
public record LibraryLayout(Path root, Path sources, Path cache) {

    /** Name of the settings file. */
    public static final String SETTINGS = "stillroom.json";

    /** Returns the layout of a folder; caches of a bare or read-only folder go to a user folder. */
    public static LibraryLayout of(Path folder, Path userCaches) {
        Path root = folder.toAbsolutePath().normalize();
        boolean proper = Files.isDirectory(root.resolve("sources"));
        Path sources = proper ? root.resolve("sources") : root;
        boolean ours = proper && Files.isWritable(root);
        Path cache = ours ? root.resolve(".stillroom") : userCaches.resolve(digest(root));
        return new LibraryLayout(root, sources, cache);
    }

    /** Tells whether the folder is a bare heap of transcriptions. */
    public boolean isBare() {
        return sources.equals(root);
    }

    /** Returns the settings file. */
    public Path settings() {
        return root.resolve(SETTINGS);
    }

    /** Returns the folder of the user's own knowledge. */
    public Path knowledge() {
        return root.resolve("knowledge");
    }

    /** Returns the folder of decisions. */
    public Path research() {
        return root.resolve("research");
    }

    private static String digest(Path root) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            byte[] bytes = sha.digest(root.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(bytes, 0, 8);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform has SHA-256", impossible);
        }
    }
}
