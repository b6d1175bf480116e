package org.stillroom.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stillroom.inquiry.BookStudy;
import org.stillroom.inquiry.Study;
import org.stillroom.inquiry.StudyDesk;
import org.stillroom.model.progress.Progress;

/**
 * Reads published books as a library and prints how recipes, lines and steps agree with the truth.
 *
 * <p>Arguments: the folder with the text files, which are no part of the project (the truth names
 * them in {@code releng/truth/reading/README.md}); then {@code --worst N} for the N worst mistakes of
 * each book. The texts are copied into a folder of their own and left as they are.
 */
public final class RealBooksBenchmark {

    private RealBooksBenchmark() {}

    /** Runs the benchmark. */
    public static void main(String[] args) throws IOException {
        Locale.setDefault(Locale.ROOT);
        List<String> options = new ArrayList<>(List.of(args));
        int worst = 0;
        int at = options.indexOf("--worst");
        if (at >= 0 && at + 1 < options.size()) {
            worst = Integer.parseInt(options.remove(at + 1));
            options.remove(at);
        }
        if (options.size() != 1 || !Files.isDirectory(Path.of(options.get(0)))) {
            System.err.println("RealBooksBenchmark FOLDER [--worst N]: a folder with the texts.");
            System.exit(2);
        }
        Path root = Path.of(System.getProperty("stillroom.root", "."));
        List<RealBookTruth> truth = RealBookTruth.read(root.resolve("releng/truth/reading"));
        judge(library(Path.of(options.get(0)), truth), truth, worst);
    }

    private static Path library(Path texts, List<RealBookTruth> truth) throws IOException {
        Path library = Files.createTempDirectory("stillroom-books");
        for (RealBookTruth book : truth) {
            Path text = texts.resolve(book.book() + ".txt");
            if (Files.exists(text)) {
                Files.copy(text, library.resolve(text.getFileName()));
            } else {
                System.out.println("left out: there is no " + text.getFileName());
            }
        }
        return library;
    }

    private static void judge(Path library, List<RealBookTruth> truth, int worst)
            throws IOException {
        try (StudyDesk desk = new StudyDesk(Files.createTempDirectory("stillroom-caches"))) {
            desk.lay(library);
            Study study = desk.study(Progress.SILENT);
            for (RealBookTruth book : truth) {
                for (BookStudy read : study.books()) {
                    if (read.source().id().startsWith(book.book())) {
                        RealBookScore score = new RealBookScore(book, read.versions());
                        score.print();
                        if (worst > 0) {
                            score.printWorst(worst);
                        }
                    }
                }
            }
        }
    }
}
