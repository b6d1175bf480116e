package org.stillroom.inquiry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.stillroom.library.Library;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Source;
import org.stillroom.reading.spec.SystemDecisions;

/** Reads the sources of a library into a study, several at a time, in a fixed order. */
final class StudyReading {

    private final Library library;
    private final Knowledge knowledge;
    private final Optional<Study> before;

    StudyReading(Library library, Knowledge knowledge, Optional<Study> before) {
        this.library = library;
        this.knowledge = knowledge;
        this.before = before;
    }

    Study read(IndexKeeper keeper, Progress progress) {
        List<Source> sources = library.sources();
        progress.begin("Reading " + library.settings().title(), sources.size());
        int threads = Math.max(1, Math.min(8, Runtime.getRuntime().availableProcessors()));
        ExecutorService workers = Executors.newFixedThreadPool(threads);
        try {
            List<Future<BookStudy>> started = new ArrayList<>();
            for (Source source : sources) {
                started.add(workers.submit(() -> book(source, progress)));
            }
            List<BookStudy> books = new ArrayList<>();
            for (Future<BookStudy> book : started) {
                progress.check();
                books.add(book.get());
            }
            return new Study(library, knowledge, books, keeper);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("Cancelled");
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException failure) {
                throw failure;
            }
            throw new IllegalStateException(e.getCause());
        } finally {
            workers.shutdownNow();
        }
    }

    private BookStudy book(Source held, Progress progress) {
        List<Assertion> decisions = decisions(library, held);
        Optional<BookStudy> same = same(held, decisions);
        if (same.isPresent()) {
            progress.step(1);
            return same.get();
        }
        Source source = TitlePage.complete(held, Circumstances.UNKNOWN, knowledge);
        BookReader.Task task =
                new BookReader.Task(source, decisions, library.settings().measures(), knowledge);
        String digest = task.digest();
        BookStudy book =
                before.flatMap(s -> s.book(held.id()))
                        .filter(b -> b.digest().equals(digest))
                        .orElseGet(() -> BookReader.read(task, inside(progress)));
        progress.step(1);
        return book;
    }

    /** Inside a book nothing is counted, but the work ends where the user wants it to. */
    private static Progress inside(Progress progress) {
        return new Progress() {
            @Override
            public void begin(String task, int steps) {
                // the books are counted, not what is in them
            }

            @Override
            public void step(int steps) {
                // the books are counted, not what is in them
            }

            @Override
            public boolean isCancelled() {
                return progress.isCancelled();
            }
        };
    }

    /** Returns the book as it was read before, where file, knowledge and decisions are the same. */
    private Optional<BookStudy> same(Source held, List<Assertion> decisions) {
        return before.filter(s -> s.knowledge().digest().equals(knowledge.digest()))
                .filter(s -> s.library().settings().equals(library.settings()))
                .filter(s -> s.library().source(held.id()).filter(x -> x == held).isPresent())
                .filter(s -> decisions(s.library(), held).equals(decisions))
                .flatMap(s -> s.book(held.id()));
    }

    private static List<Assertion> decisions(Library library, Source held) {
        return library.decisions().stream()
                .filter(d -> d.source().equals(held.id()) || isAboutAllMeasures(d))
                .toList();
    }

    private static boolean isAboutAllMeasures(Assertion d) {
        return d.source().isEmpty() && d.kind().equals(SystemDecisions.KIND);
    }
}
