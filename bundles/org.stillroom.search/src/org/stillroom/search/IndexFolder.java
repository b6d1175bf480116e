package org.stillroom.search;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.util.Version;
import org.stillroom.search.analysis.PeriodAnalyzer;

/**
 * The index's folder on disk, a cache that may be deleted at any time.
 *
 * <p>A stamp names the versions that wrote it; a marker stands while it is being written. Where the
 * stamp is another or the marker was left behind, the folder is emptied and the index made anew.
 */
final class IndexFolder {

    private static final String FORMAT = "stillroom-index-1";
    private static final String STAMP = "index.stamp";
    private static final String MARKER = "index.inconsistent";

    private final Path folder;
    private final Path stamp;
    private final Path marker;

    IndexFolder(Path caches) {
        this.folder = caches.resolve("index");
        this.stamp = caches.resolve(STAMP);
        this.marker = caches.resolve(MARKER);
    }

    /** Returns the directory, emptied first where it cannot be trusted. */
    Directory open() throws IOException {
        if (!isSound()) {
            delete();
        }
        Files.createDirectories(folder);
        return FSDirectory.open(folder);
    }

    boolean isSound() throws IOException {
        return Files.exists(stamp)
                && !Files.exists(marker)
                && Files.readString(stamp).equals(versions());
    }

    /** Empties the folder, whatever it holds. */
    void delete() throws IOException {
        Files.deleteIfExists(stamp);
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file : files.toList()) {
                    Files.delete(file);
                }
            }
        }
        Files.deleteIfExists(marker);
    }

    /** Tells that writing begins. */
    void begin() throws IOException {
        Files.writeString(marker, "", StandardCharsets.UTF_8);
    }

    /** Tells that writing has come to its end. */
    void complete() throws IOException {
        Files.writeString(stamp, versions(), StandardCharsets.UTF_8);
        Files.deleteIfExists(marker);
    }

    private static String versions() {
        return FORMAT + " " + PeriodAnalyzer.VERSION + " Lucene " + Version.LATEST + "\n";
    }
}
