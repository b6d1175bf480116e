package org.stillroom.library.read;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Circumstances;

/** Reads plain text. */
final class PlainText implements SourceReader {

    private final FileAccess access;

    PlainText(FileAccess access) {
        this.access = access;
    }

    @Override
    public List<String> endings() {
        return List.of(".txt", ".text");
    }

    @Override
    public Result read(String id, Path file, Circumstances defaults) {
        try {
            FileText text = access.plain(id, file);
            if (text.text().isBlank()) {
                return Result.failed(
                        Problem.error(id, "The file is empty.", "Put the transcription into it."));
            }
            return new Draft(text.text(), List.of(), Map.of(), text.digest(), List.of())
                    .bind(id, file, defaults, access);
        } catch (Refused e) {
            return Result.failed(e.problem());
        }
    }
}
