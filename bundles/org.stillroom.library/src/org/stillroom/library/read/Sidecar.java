package org.stillroom.library.read;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.stillroom.model.explain.Problem;

/**
 * What the file of the same name with the ending {@code .yaml} says of a source.
 *
 * @param id its id, as problems name it
 * @param fields its fields, none where there is no such file
 * @param digest the digest of its bytes, or empty
 * @param problems what was wrong with it
 */
record Sidecar(
        String id, Map<String, FrontMatter.Field> fields, String digest, List<Problem> problems) {

    /** Reads the sidecar of a source's file. */
    static Sidecar of(String sourceId, Path file) {
        int dot = sourceId.lastIndexOf('.');
        String id = (dot < 0 ? sourceId : sourceId.substring(0, dot)) + ".yaml";
        Path path = SourceReaders.sidecar(file);
        if (!Files.exists(path)) {
            return new Sidecar(id, Map.of(), "", new ArrayList<>());
        }
        try {
            FileText text = FileText.read(id, path);
            FrontMatter matter = FrontMatter.parse(id, text.text(), 1);
            return new Sidecar(
                    id, matter.fields(), text.digest(), new ArrayList<>(matter.problems()));
        } catch (FileText.Refused e) {
            return new Sidecar(id, Map.of(), "", new ArrayList<>(List.of(e.problem())));
        }
    }
}
