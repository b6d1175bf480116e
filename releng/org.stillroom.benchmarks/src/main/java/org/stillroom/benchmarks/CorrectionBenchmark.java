package org.stillroom.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.stillroom.inquiry.BookRules;
import org.stillroom.inquiry.BookStudy;
import org.stillroom.inquiry.Review;
import org.stillroom.inquiry.Study;
import org.stillroom.inquiry.StudyDesk;
import org.stillroom.model.number.Rational;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.text.Anchor;
import org.stillroom.model.text.Span;
import org.stillroom.reading.anchor.LineCorrections;
import org.stillroom.reading.idiom.Idiom;

/**
 * Corrects generated books of known truth and prints what corrections and the review list are worth.
 *
 * <p>Each book has habits that the reader does not know (a spoon that is a teaspoon, abbreviations of
 * its own), many lines that it reads right, and misprints that follow no habit. {@code
 * CorrectionBenchmark [SEED]}.
 */
public final class CorrectionBenchmark {

    private static final int BOOKS = 4;
    private static final int RECIPES = 60;
    private static final int CORRECTIONS = 50;

    /** How a habit prints a measure or an ingredient, and what it means. */
    private record Habit(String printed, String means) {}

    private static final List<Habit> MEASURES =
            List.of(
                    new Habit("spoon", "teaspoon"),
                    new Habit("glass", "wineglass"),
                    new Habit("measure", "jigger"),
                    new Habit("B.S.", "barspoon"),
                    new Habit("p.", "pony"),
                    new Habit("tt.", "teaspoon"));
    private static final List<Habit> NAMES =
            List.of(
                    new Habit("g. syrup", "gum syrup"),
                    new Habit("Cur.", "curaçao"),
                    new Habit("Mar.", "maraschino"),
                    new Habit("Jam. rum", "jamaica rum"),
                    new Habit("vm.", "vermouth"));
    private static final List<String> USUAL = List.of("jigger", "dash", "pint", "gill", "pony");
    private static final List<String> INGREDIENTS =
            List.of("gin", "rum", "brandy", "sugar", "lemon juice", "sherry", "port", "milk");
    private static final List<String> FIRST = List.of("Anchor", "Keel", "Bowsprit", "Capstan");
    private static final List<String> LAST = List.of("Sling", "Fizz", "Sour", "Punch", "Flip");

    /** A printed line with what it means. */
    private record Line(
            String printed, Rational quantity, String measure, String name, Span span) {}

    /** A book with its truth. */
    private record Book(String id, String text, List<Line> lines) {}

    private final SplittableRandom random;

    private CorrectionBenchmark(long seed) {
        this.random = new SplittableRandom(seed);
    }

    /** Runs the benchmark. */
    public static void main(String[] args) throws IOException {
        long seed = args.length > 0 ? Long.parseLong(args[0]) : 7;
        new CorrectionBenchmark(seed).run();
    }

    private void run() throws IOException {
        List<Book> books = new ArrayList<>();
        for (int i = 0; i < BOOKS; i++) {
            books.add(book(i));
        }
        Path folder = Files.createTempDirectory("corrections");
        try {
            learning(folder.resolve("learning"), books);
            reviewing(folder.resolve("plain"), books, false);
            reviewing(folder.resolve("rules"), books, true);
        } finally {
            delete(folder);
        }
    }

    private Book book(int number) {
        Map<String, String> habits = new TreeMap<>();
        pick(MEASURES, 2).forEach(h -> habits.put(h.means(), h.printed()));
        pick(NAMES, 2).forEach(h -> habits.put(h.means(), h.printed()));
        StringBuilder text = new StringBuilder();
        text.append("---\ntitle: Book ").append(number).append("\ntext-date: 188");
        text.append(number % 10).append("\nplace: London, GB\ntrade: bar\n---\n");
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < RECIPES; i++) {
            text.append("# ").append(one(FIRST)).append(' ').append(one(LAST)).append(' ');
            text.append((char) ('A' + i / 26)).append((char) ('a' + i % 26)).append("\n\n");
            int count = 3 + random.nextInt(3);
            for (int k = 0; k < count; k++) {
                line(text, lines, habits);
            }
            text.append("Shake and strain.\n\n");
        }
        return new Book("book" + number + ".md", text.toString(), lines);
    }

    private void line(StringBuilder text, List<Line> lines, Map<String, String> habits) {
        List<String> measures = new ArrayList<>(USUAL);
        List<String> names = new ArrayList<>(INGREDIENTS);
        for (String means : habits.keySet()) {
            boolean measure = MEASURES.stream().anyMatch(h -> h.means().equals(means));
            if (random.nextInt(100) < 60) {
                (measure ? measures : names).add(means);
            }
        }
        String measure = one(measures);
        String name = one(names);
        int quantity = 1 + random.nextInt(3);
        String printedName = habits.getOrDefault(name, name);
        String printedMeasure = habits.getOrDefault(measure, measure);
        boolean plural = quantity > 1 && !printedMeasure.endsWith(".");
        String plurals = printedMeasure.endsWith("s") || printedMeasure.endsWith("sh") ? "es" : "s";
        String printed =
                quantity + " " + printedMeasure + (plural ? plurals : "") + " " + printedName;
        if (random.nextInt(100) < 5) {
            printed = misprinted(printed);
        }
        int start = text.codePointCount(0, text.length());
        text.append(printed).append(printed.endsWith(".") ? "\n" : ".\n");
        Span span = new Span(start, start + printed.codePointCount(0, printed.length()));
        lines.add(new Line(printed, Rational.of(quantity), measure, name, span));
    }

    /** A letter that a compositor or a scan lost. */
    private String misprinted(String words) {
        int at = words.length() - 1 - random.nextInt(Math.min(4, words.length() - 3));
        return words.substring(0, at) + words.substring(at + 1);
    }

    private <T> T one(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    private <T> List<T> pick(List<T> list, int count) {
        List<T> left = new ArrayList<>(list);
        List<T> picked = new ArrayList<>();
        while (picked.size() < count) {
            picked.add(left.remove(random.nextInt(left.size())));
        }
        return picked;
    }

    private static StudyDesk desk(Path folder, List<Book> books) throws IOException {
        Path sources = folder.resolve("library/sources");
        Files.createDirectories(sources);
        for (Book book : books) {
            Files.writeString(sources.resolve(book.id()), book.text());
        }
        StudyDesk desk = new StudyDesk(folder.resolve("caches"));
        desk.lay(folder.resolve("library"));
        return desk;
    }

    /** At most fifty corrections in the first half of each book; what they do to the second. */
    private static void learning(Path folder, List<Book> books) throws IOException {
        try (StudyDesk desk = desk(folder, books)) {
            int made = 0;
            int before = 0;
            int after = 0;
            int rest = 0;
            for (Book book : books) {
                int half = book.lines().size() / 2;
                List<Line> second = book.lines().subList(half, book.lines().size());
                before += wrong(desk.study(Progress.SILENT), book, second);
                int corrections = 0;
                for (Line line : book.lines().subList(0, half)) {
                    boolean right = isRight(desk.study(Progress.SILENT), book, line);
                    if (!right && corrections < CORRECTIONS) {
                        correct(desk, book, line);
                        accept(desk, book);
                        corrections++;
                    }
                }
                made += corrections;
                after += wrong(desk.study(Progress.SILENT), book, second);
                rest += second.size();
            }
            Figures.print("corrections made in first halves", made, "");
            Figures.printShare("errors in second halves before", before, rest);
            Figures.printShare("errors in second halves after", after, rest);
            Figures.printShare("errors that the rules removed", before - after, before);
        }
    }

    /** The first twentieth of the lines, in the order of the review list. */
    private static void reviewing(Path folder, List<Book> books, boolean rules) throws IOException {
        try (StudyDesk desk = desk(folder, books)) {
            int lines = books.stream().mapToInt(b -> b.lines().size()).sum();
            int errors = errors(desk, books);
            int most = lines / 20;
            Set<Line> seen = new HashSet<>();
            List<Line> list = list(desk, books);
            while (seen.size() < most) {
                Optional<Line> next = list.stream().filter(l -> !seen.contains(l)).findFirst();
                if (next.isEmpty()) {
                    break;
                }
                Line line = next.get();
                seen.add(line);
                Book book = books.stream().filter(b -> b.lines().contains(line)).findFirst().get();
                if (!isRight(desk.study(Progress.SILENT), book, line)) {
                    correct(desk, book, line);
                    if (rules) {
                        accept(desk, book);
                    }
                    list = list(desk, books);
                }
            }
            int now = errors(desk, books);
            String how = rules ? "with rules accepted" : "by corrections alone";
            Figures.printShare(
                    "errors that the first 5 % of the list removed, " + how, errors - now, errors);
        }
    }

    private static int errors(StudyDesk desk, List<Book> books) {
        Study study = desk.study(Progress.SILENT);
        return books.stream().mapToInt(b -> wrong(study, b, b.lines())).sum();
    }

    /** Returns the lines that the review list leads to, in its order; a doubt may hold several. */
    private static List<Line> list(StudyDesk desk, List<Book> books) {
        Study study = desk.study(Progress.SILENT);
        Map<String, List<Map.Entry<Span, Line>>> places = new TreeMap<>();
        for (Book book : books) {
            int shift = shift(study.book(book.id()).orElseThrow(), book);
            places.put(
                    book.id(),
                    book.lines().stream().map(l -> Map.entry(l.span().shift(shift), l)).toList());
        }
        List<Line> list = new ArrayList<>();
        for (Review.Item item : Review.of(study, Progress.SILENT)) {
            places.get(item.version().source().id()).stream()
                    .filter(e -> e.getKey().overlaps(item.words()))
                    .forEach(e -> list.add(e.getValue()));
        }
        return list;
    }

    private static void accept(StudyDesk desk, Book book) {
        Study study = desk.study(Progress.SILENT);
        BookStudy read = study.book(book.id()).orElseThrow();
        for (BookRules.Rule rule : BookRules.of(study, read, Progress.SILENT)) {
            if (rule.decision().isEmpty()) {
                desk.decide(Idiom.KIND, book.id(), Optional.empty(), rule.idiom().decision());
            }
        }
    }

    private static void correct(StudyDesk desk, Book book, Line line) {
        Study study = desk.study(Progress.SILENT);
        Optional<ReadingLine> read = read(study, book, line);
        Map<String, String> values = new TreeMap<>();
        if (read.filter(r -> r.measure().equals(line.measure())).isEmpty()) {
            values.put("measure", line.measure());
        }
        if (read.filter(r -> r.ingredientName().equals(line.name())).isEmpty()) {
            values.put("ingredient", line.name());
        }
        if (read.flatMap(r -> r.amount().quantity()).filter(line.quantity()::equals).isEmpty()) {
            values.put("quantity", line.quantity().toString());
        }
        var text = study.book(book.id()).orElseThrow().source().text();
        Anchor anchor = Anchor.of(text, at(desk, book, line));
        desk.decide("line", book.id(), Optional.of(anchor), values);
    }

    private static int wrong(Study study, Book book, List<Line> lines) {
        return (int) lines.stream().filter(l -> !isRight(study, book, l)).count();
    }

    private static boolean isRight(Study study, Book book, Line line) {
        return read(study, book, line)
                .filter(r -> r.measure().equals(line.measure()))
                .filter(r -> r.ingredientName().equals(line.name()))
                .filter(r -> r.amount().quantity().filter(line.quantity()::equals).isPresent())
                .isPresent();
    }

    private static Optional<ReadingLine> read(Study study, Book book, Line line) {
        BookStudy read = study.book(book.id()).orElseThrow();
        Span span = line.span().shift(shift(read, book));
        return read.reading().readings().stream()
                .filter(r -> r.witness().span().overlaps(span))
                .findFirst()
                .flatMap((Reading r) -> LineCorrections.lineAt(r, span));
    }

    private static Span at(StudyDesk desk, Book book, Line line) {
        BookStudy read = desk.study(Progress.SILENT).book(book.id()).orElseThrow();
        return line.span().shift(shift(read, book));
    }

    /** The front matter may be no part of the source's words. */
    private static int shift(BookStudy read, Book book) {
        return read.source().text().length() - book.text().codePointCount(0, book.text().length());
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
