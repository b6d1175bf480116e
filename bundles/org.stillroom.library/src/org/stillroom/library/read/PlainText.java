package org.stillroom.library.read;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.SourceText;

/** Reads plain text, with a sidecar of the same name for what a bibliographer says. */
final class PlainText implements SourceReader {

    @Override
    public List<String> endings() {
        return List.of(".txt", ".text");
    }

    @Override
    public Result read(String id, Path file, Circumstances defaults) {
        try {
            FileText text = FileText.read(id, file);
            if (text.text().isBlank()) {
                return Result.failed(
                        Problem.error(id, "The file is empty.", "Put the transcription into it."));
            }
            Path sidecar = SourceReaders.sidecar(file);
            String sidecarId = sidecarId(id);
            List<Problem> problems = new ArrayList<>();
            Optional<FileText> said = sidecar(sidecarId, sidecar, problems);
            FrontMatter matter =
                    said.map(t -> FrontMatter.parse(sidecarId, t.text(), 1))
                            .orElse(new FrontMatter(Map.of(), List.of()));
            problems.addAll(matter.problems());
            BibliographyFields fields = new BibliographyFields(sidecarId, matter.fields());
            Bibliography b = fields.toBibliography(Titles.fromFile(file), defaults);
            problems.addAll(fields.problems());
            String digest = text.digest() + said.map(FileText::digest).orElse("");
            return new Result(
                    Optional.of(new Source(id, b, SourceText.of(text.text()), List.of(), digest)),
                    problems);
        } catch (FileText.Refused e) {
            return Result.failed(e.problem());
        }
    }

    private static String sidecarId(String id) {
        int dot = id.lastIndexOf('.');
        return (dot < 0 ? id : id.substring(0, dot)) + ".yaml";
    }

    private static Optional<FileText> sidecar(
            String sidecarId, Path sidecar, List<Problem> problems) {
        if (!Files.exists(sidecar)) {
            return Optional.empty();
        }
        try {
            return Optional.of(FileText.read(sidecarId, sidecar));
        } catch (FileText.Refused e) {
            problems.add(e.problem());
            return Optional.empty();
        }
    }
}
