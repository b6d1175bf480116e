package org.stillroom.inquiry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillroom.measures.MeasureTable;
import org.stillroom.measures.book.OwnTable;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.source.Source;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.EditedText;
import org.stillroom.model.text.Span;
import org.stillroom.reading.BookReading;
import org.stillroom.reading.anchor.WordCorrection;
import org.stillroom.reading.spec.BookMeasures;
import org.stillroom.reading.spec.SpecResolver;
import org.stillroom.reading.spec.SystemDecisions;
import org.stillroom.reading.table.OwnStatement;

/** Reads one source and resolves its measures. */
final class BookReader {

    private BookReader() {}

    static BookStudy read(Task task, Progress progress) {
        Source source = task.source();
        Knowledge knowledge = task.knowledge();
        BookReading read = knowledge.reader().read(source, task.decisions(), progress);
        List<Problem> problems = new ArrayList<>(read.problems());
        BookMeasures measures = measures(task, read, problems);
        BookReading reading =
                new BookReading(
                        source,
                        read.sections(),
                        read.readings(),
                        read.ownMeasures(),
                        read.putRight(),
                        read.unplaced(),
                        problems);
        SpecResolver resolver =
                SpecResolver.forBook(
                        knowledge.measures(),
                        knowledge.thesaurus(),
                        reading.readings(),
                        source.bibliography().circumstances(),
                        measures);
        List<Version> versions = new ArrayList<>();
        for (Reading recipe : reading.readings()) {
            Span span = recipe.witness().span();
            List<EditedText.Edit> putRight =
                    read.putRight().stream()
                            .map(WordCorrection::edit)
                            .filter(e -> span.contains(e.span()))
                            .toList();
            String words = source.text().slice(span);
            versions.add(new Version(source, resolver.resolve(recipe, words), putRight));
        }
        return new BookStudy(reading, versions, measures, task.digest());
    }

    private static BookMeasures measures(Task task, BookReading read, List<Problem> problems) {
        MeasureTable table = task.knowledge().measures();
        OwnTable.Built own =
                table.ownTable(
                        task.source().id(),
                        read.ownMeasures().stream().map(OwnStatement::equation).toList());
        problems.addAll(own.problems());
        return SystemDecisions.of(
                task.source(), own.table(), task.system(), task.decisions(), table, problems);
    }

    /**
     * What is to be read, and by what.
     *
     * @param source the source
     * @param decisions what was decided about it, and about the whole library's measures
     * @param system the system of measures that the library's settings name
     * @param knowledge what is known
     */
    record Task(
            Source source,
            List<Assertion> decisions,
            Optional<String> system,
            Knowledge knowledge) {

        /** Changes whenever source, decisions or knowledge change. */
        String digest() {
            StringBuilder all = new StringBuilder(source.digest());
            all.append('\n').append(knowledge.digest()).append('\n');
            all.append(source.bibliography()).append(system);
            decisions.forEach(d -> all.append('\n').append(d.id()));
            return Digests.sha256(all.toString());
        }
    }
}
