package org.stillroom.library.read;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.stillroom.model.explain.Problem;

/**
 * What the file of the same name with the ending {@code .yaml} says of a source.
 *
 * @param fields its fields, none where there is no such file
 * @param digest the digest of its bytes, or empty
 * @param problems what was wrong with it
 */
record Sidecar(Map<String, FrontMatter.Field> fields, String digest, List<Problem> problems) {

    /** Reads the sidecar of a source's file. */
    static Sidecar of(String sourceId, Path file, FileAccess access) {
        String id = id(sourceId);
        Path path = SourceReaders.sidecar(file);
        if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
            return new Sidecar(Map.of(), "", List.of());
        }
        try {
            FileText text = access.text(id, path);
            FrontMatter matter = FrontMatter.parse(id, text.text(), 1);
            return new Sidecar(matter.fields(), text.digest(), matter.problems());
        } catch (Refused e) {
            return new Sidecar(Map.of(), "", List.of(e.problem()));
        }
    }

    private static String id(String sourceId) {
        int dot = sourceId.lastIndexOf('.');
        boolean inName = dot > sourceId.lastIndexOf('/');
        return (inName ? sourceId.substring(0, dot) : sourceId) + ".yaml";
    }
}
