package org.stillroom.reading.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.measures.Matter;
import org.stillroom.measures.book.Equation;
import org.stillroom.measures.book.Side;
import org.stillroom.measures.knowledge.Dimension;
import org.stillroom.measures.knowledge.MeasureWord;
import org.stillroom.measures.knowledge.MeasureWords;
import org.stillroom.measures.phrase.MeasurePhrase;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Section;
import org.stillroom.model.source.Source;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.FoldedText;
import org.stillroom.model.text.Folding;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;
import org.stillroom.reading.cut.Cut;
import org.stillroom.reading.cut.Pages;
import org.stillroom.reading.grammar.LanguageGuess;
import org.stillroom.reading.table.Statements.Setting;
import org.stillroom.reading.table.Statements.Stated;

/**
 * Finds the table of measures that a book itself prints: rows in columns, with dots, rules, commas
 * or signs of equality, and sentences such as “a wine-glass holds two ounces”.
 *
 * <p>Immutable, and safe for several threads at once.
 */
public final class OwnTableFinder {

    private static final int WIDEST_ROW = 120;
    private static final int LONGEST_SENTENCE = 1200;
    private static final int WIDEST_GAP = 2;

    private static final Pattern SENTENCE_END =
            Pattern.compile("(?<=[.!?])[)”\"]?\\s+(?=[\\p{Lu}“\"(—])");

    private static final Pattern HEAD =
            Pattern.compile(
                    "(?:measures?|holds?|contents?|amount|mesures?|contenance|contenu|poids|valeur"
                            + "|masse?|maasse|inhalt|gewicht|betrag|medidas?|contenido|cabida|peso"
                            + "|equivalencias?|of|de|der|des|und|et|y|en|in| )+");

    private static final Pattern MARKS = Pattern.compile("^[\\s>|*•·–—-]*");

    private static final Set<String> FLUID_BESIDE =
            Set.of("fluid ounce", "minim", "fluid scruple", "teaspoon", "drop", "drachm");

    private final Map<String, Items> items = new LinkedHashMap<>();
    private final Joins joins = new Joins();
    private final MeasureWords words;

    /** Makes a finder that knows these measures. */
    public OwnTableFinder(MeasureWords words) {
        this.words = words;
        items.put("en", new Items(words));
        for (String language : List.of("fr", "de", "es")) {
            items.put(language, new Items(words, language));
        }
    }

    /**
     * Returns what a book says of its measures, in the order of its text.
     *
     * @param cut the book cut into recipes and the rest; inside a recipe only the plainest
     *     sentences are taken
     */
    public Found find(Source source, Cut cut) {
        Search search = new Search(source, cut);
        search.rows();
        search.sentences();
        search.found.sort(Comparator.comparing(OwnStatement::span));
        return new Found(search.found, search.problems);
    }

    /**
     * What a book says of its measures.
     *
     * @param statements what was understood, in the order of the text
     * @param problems rows that name a measure which is not known
     */
    public record Found(List<OwnStatement> statements, List<Problem> problems) {

        /** Keeps the lists unchangeable. */
        public Found {
            statements = List.copyOf(statements);
            problems = List.copyOf(problems);
        }
    }

    /** A row that may be one of a table. */
    private record Row(int line, List<OwnStatement> statements, boolean strong) {}

    /** The search through one book. */
    private final class Search {
        private final Source source;
        private final SourceText text;
        private final Cut cut;
        private final Pages pages;
        private final Stretches recipes;
        private final Stretches bodies;
        private final List<OwnStatement> found = new ArrayList<>();
        private final Set<Integer> taken = new TreeSet<>();
        private final List<Row> block = new ArrayList<>();
        private final List<Problem> doubtful = new ArrayList<>();
        private final List<Problem> problems = new ArrayList<>();
        private final Strangers strangers = new Strangers(joins, words);
        private final Optional<String> language;
        private Optional<String> unit = Optional.empty();
        private Optional<String> above = Optional.empty();
        private int gap;

        Search(Source source, Cut cut) {
            this.source = source;
            this.text = source.text();
            this.cut = cut;
            this.pages = new Pages(source);
            this.recipes = new Stretches(cut.witnesses().stream().map(Witness::span).toList());
            this.bodies = new Stretches(cut.witnesses().stream().map(Witness::body).toList());
            Optional<String> declared = source.bibliography().language();
            String guess = LanguageGuess.of(text.toString(), declared);
            this.language = guess.equals("en") ? declared : Optional.of(guess);
        }

        /** Returns what finds amounts in words of their language. */
        private Items items(String words) {
            List<String> tokens = List.of(Folding.foldWord(words).split("[^\\p{L}]+"));
            String best = language.orElse("en");
            int most = 1;
            for (Items other : items.values()) {
                int telling = other.telling(tokens);
                boolean first = other.language().equals(best) && telling == most;
                if (telling > most || first) {
                    best = other.language();
                    most = telling;
                }
            }
            return items.getOrDefault(best, items.get("en"));
        }

        void rows() {
            for (int n = 1; n <= text.lineCount(); n++) {
                String line = text.slice(text.line(n));
                Optional<Row> row = line.length() <= WIDEST_ROW ? row(n, line) : Optional.empty();
                if (row.isPresent()) {
                    block.add(row.get());
                    gap = 0;
                } else if (line.isBlank() || line.matches("[\\s|:=.*_–—-]+")) {
                    gap++;
                } else if (!isHead(line) && !isStrange(n, line)) {
                    flush();
                }
                if (gap > WIDEST_GAP) {
                    flush();
                }
            }
            flush();
        }

        /** Tells whether a line would be a row if its word were known as a measure. */
        private boolean isStrange(int n, String line) {
            if (line.length() > WIDEST_ROW || inRecipe(text.line(n).start())) {
                return false;
            }
            Optional<String> word =
                    strangers.in(line, items(line).scan(Folding.foldWord(bare(line))));
            word.ifPresent(w -> doubtful.add(strangers.problem(source.id(), n, line, w)));
            return word.isPresent();
        }

        private boolean inRecipe(int place) {
            return bodies.holds(place);
        }

        /** Tells whether a line heads columns; the last measure in it is that of bare numbers. */
        private boolean isHead(String line) {
            String folded = Folding.foldWord(line.replaceAll("[|*_]", " "));
            List<Item> named = folded.length() < 60 ? items(line).scan(folded) : List.of();
            boolean bare =
                    !named.isEmpty()
                            && named.stream()
                                    .allMatch(i -> i.kind() == Item.Kind.AMOUNT && !i.counted());
            if (bare) {
                unit = Optional.of(named.get(named.size() - 1).word());
            }
            return bare || HEAD.matcher(folded).matches();
        }

        private void flush() {
            boolean inTable =
                    !block.isEmpty()
                            && cut.sections().stream()
                                    .filter(s -> s.kind() == Section.Kind.MEASURES)
                                    .anyMatch(
                                            s -> s.span().overlaps(text.line(block.get(0).line())));
            boolean table = block.size() > 1 || inTable || block.stream().anyMatch(Row::strong);
            if (table) {
                problems.addAll(doubtful);
                block.forEach(
                        r -> {
                            found.addAll(r.statements());
                            taken.add(r.line());
                        });
            }
            block.clear();
            doubtful.clear();
            unit = Optional.empty();
            above = Optional.empty();
            gap = 0;
        }

        private Optional<Row> row(int n, String line) {
            FoldedText folded = Folding.fold(bare(line));
            String all = folded.folded();
            List<Item> amounts = dittos(items(all).scan(all));
            if (amounts.size() < 2 || !isWhole(all, amounts)) {
                return Optional.empty();
            }
            List<Stated> stated = new Statements(joins, all, amounts, Setting.ROW, unit).read();
            if (stated.isEmpty()) {
                return Optional.empty();
            }
            above = Optional.of(stated.get(0).one().word());
            List<OwnStatement> statements = new ArrayList<>();
            Span span = text.line(n);
            stated.forEach(
                    s ->
                            equation(s, span, span)
                                    .ifPresent(
                                            e -> statements.add(new OwnStatement(e, span, true))));
            boolean strong = all.contains("=");
            return statements.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Row(n, statements, strong));
        }

        private static String bare(String line) {
            return MARKS.matcher(line).replaceFirst("");
        }

        private List<Item> dittos(List<Item> amounts) {
            return amounts.stream()
                    .map(
                            i ->
                                    i.kind() == Item.Kind.DITTO && above.isPresent()
                                            ? i.of(above.get())
                                            : i)
                    .toList();
        }

        /** Tells whether hardly more stands on the line than the amounts and what joins them. */
        private boolean isWhole(String all, List<Item> amounts) {
            String before = all.substring(0, amounts.get(0).start()).strip();
            String after = all.substring(amounts.get(amounts.size() - 1).end()).strip();
            return before.matches("(?:\\d{1,2}[.)])?(?:the |a |an |one )?[a-z-]{0,14}")
                    && after.matches("[ .,;|)…]*|of [a-z ]{2,30}[ .,;|]*|\\([^)]*\\)?[ .,;|]*");
        }

        void sentences() {
            int n = 1;
            while (n <= text.lineCount()) {
                int first = n;
                while (n <= text.lineCount() && goesOn(n)) {
                    n++;
                }
                if (n > first) {
                    paragraph(new Span(text.line(first).start(), text.line(n - 1).end()));
                }
                n++;
            }
        }

        private boolean goesOn(int n) {
            return !taken.contains(n) && !text.slice(text.line(n)).isBlank();
        }

        private void paragraph(Span span) {
            String printed = text.slice(span);
            Matcher end = SENTENCE_END.matcher(printed);
            int from = 0;
            int place = span.start();
            while (from < printed.length()) {
                int to = end.find(from) ? end.end() : printed.length();
                int length = printed.codePointCount(from, to);
                if (to - from <= LONGEST_SENTENCE) {
                    sentence(new Span(place, place + length));
                }
                place += length;
                from = to;
            }
        }

        private void sentence(Span span) {
            FoldedText folded = Folding.fold(text.slice(span));
            boolean recipe = recipes.holds(span.start());
            if (recipe && !joins.mayBeEqual(folded.folded())) {
                return;
            }
            List<Item> amounts = items(folded.folded()).scan(folded.folded());
            if (amounts.size() < 2) {
                return;
            }
            Setting setting = recipe ? Setting.RECIPE : Setting.PROSE;
            new Statements(joins, folded.folded(), amounts, setting, Optional.empty())
                    .read()
                    .forEach(
                            s -> {
                                Span at = folded.toPrinted(s.start(), s.end()).shift(span.start());
                                equation(s, at, span)
                                        .ifPresent(e -> found.add(new OwnStatement(e, at, false)));
                            });
        }

        private Optional<Equation> equation(Stated s, Span span, Span whole) {
            boolean solid =
                    !s.of().isEmpty()
                            && MeasurePhrase.parse("1 pint of " + s.of(), words).matter()
                                    == Matter.SOLID;
            Side one = side(s.one(), s.other(), false);
            Side other = side(s.other(), s.one(), solid);
            if (one.equals(other) || !solid && (isWeight(one) || isWeight(other))) {
                return Optional.empty();
            }
            String said = text.slice(span).strip().replaceAll("\\s+", " ");
            return Optional.of(
                    new Equation(
                            one,
                            other,
                            solid ? s.of() : "",
                            source.id(),
                            text.lineAt(span.start()),
                            pages.at(whole.start()),
                            said.replaceAll("^[|\\s*-]+|[|\\s]+$", "")
                                    .replaceAll("\\s*\\|\\s*", " = ")));
        }
    }

    private boolean isWeight(Side side) {
        return words.canonical(side.word())
                .flatMap(MeasureWord::dimension)
                .filter(d -> d == Dimension.MASS)
                .isPresent();
    }

    /** An ounce beside a volume is a fluid ounce, a dram beside it a drachm. */
    private static Side side(Item item, Item beside, boolean solid) {
        String word = item.word();
        if (word.equals("oz") && !solid) {
            word = "fluid ounce";
        }
        boolean ounce = beside.word().equals("oz") || FLUID_BESIDE.contains(beside.word());
        if (word.equals("dram") && ounce) {
            word = "drachm";
        }
        return new Side(item.low(), item.high(), item.size(), word);
    }
}
