package org.stillroom.inquiry;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.source.Source;
import org.stillroom.model.spec.Version;
import org.stillroom.reading.BookReading;
import org.stillroom.reading.spec.SpecResolver;

/** Reads one source and resolves its measures. */
final class BookReader {

    private BookReader() {}

    static BookStudy read(
            Source source, List<Assertion> decisions, Knowledge knowledge, Progress progress) {
        BookReading reading = knowledge.reader().read(source, decisions, progress);
        SpecResolver resolver =
                SpecResolver.forBook(
                        knowledge.measures(),
                        knowledge.thesaurus(),
                        reading.readings(),
                        source.bibliography().circumstances());
        List<Version> versions = new ArrayList<>();
        for (Reading recipe : reading.readings()) {
            String words = source.text().slice(recipe.witness().span());
            versions.add(new Version(source, resolver.resolve(recipe, words)));
        }
        return new BookStudy(reading, versions, digest(source, decisions, knowledge));
    }

    /** Changes whenever source, decisions or knowledge change. */
    static String digest(Source source, List<Assertion> decisions, Knowledge knowledge) {
        StringBuilder all = new StringBuilder(source.digest());
        all.append('\n').append(knowledge.digest()).append('\n');
        all.append(source.bibliography());
        decisions.forEach(d -> all.append('\n').append(d.id()));
        return Digests.sha256(all.toString());
    }
}
