package org.stillroom.library.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Mark;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.SourceText;

/**
 * What a reader got out of a file, before its sidecar is asked.
 *
 * @param text the words
 * @param marks what the file says of their structure
 * @param fields what the file says of the edition
 * @param digest the digest of the file's bytes
 * @param problems what was wrong with it
 */
record Draft(
        String text,
        List<Mark> marks,
        Map<String, FrontMatter.Field> fields,
        String digest,
        List<Problem> problems) {

    /**
     * Makes the source: what its sidecar says outranks what the file says, and that the defaults.
     *
     * @param id the source's id
     * @param file where it lies
     */
    SourceReader.Result bind(String id, Path file, Circumstances defaults, FileAccess access) {
        List<Problem> all = new ArrayList<>(problems);
        if (text.isBlank()) {
            all.add(Problem.error(id, "There is no text in it.", "Put the transcription into it."));
            return new SourceReader.Result(Optional.empty(), all);
        }
        Sidecar sidecar = Sidecar.of(id, file, access);
        Map<String, FrontMatter.Field> said = new LinkedHashMap<>(sidecar.fields());
        fields.forEach(said::putIfAbsent);
        BibliographyFields bibliography = new BibliographyFields(said);
        Bibliography b = bibliography.toBibliography(Titles.fromFile(file), defaults);
        all.addAll(sidecar.problems());
        all.addAll(bibliography.problems());
        Source source = new Source(id, b, SourceText.of(text), marks, digest + sidecar.digest());
        return new SourceReader.Result(Optional.of(source), all);
    }
}
