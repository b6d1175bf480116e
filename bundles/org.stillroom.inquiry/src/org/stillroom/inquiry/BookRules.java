package org.stillroom.inquiry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.source.Source;
import org.stillroom.model.text.Span;
import org.stillroom.reading.BookReading;
import org.stillroom.reading.idiom.Idiom;
import org.stillroom.reading.idiom.IdiomLearner;
import org.stillroom.reading.idiom.Proposal;

/**
 * The rules of a book: those that hold, and those that its corrections propose.
 *
 * <p>Each comes with the lines that it changes, found by reading the book with it and without it.
 */
public final class BookRules {

    private final Source source;
    private final Knowledge knowledge;
    private final List<Assertion> decisions;

    private BookRules(Source source, Knowledge knowledge, List<Assertion> decisions) {
        this.source = source;
        this.knowledge = knowledge;
        this.decisions = decisions;
    }

    /**
     * A rule of a book.
     *
     * @param source the book
     * @param idiom what it says
     * @param decision the decision that accepted it; none while it is proposed
     * @param evidence corrections that speak for it
     * @param against decided lines that speak against it
     * @param changes what it changes, in the order of the book
     */
    public record Rule(
            Source source,
            Idiom idiom,
            Optional<Assertion> decision,
            int evidence,
            int against,
            List<Change> changes) {

        /** Keeps the changes as an unchangeable list. */
        public Rule {
            changes = List.copyOf(changes);
        }
    }

    /**
     * A line, or a recipe, that a rule changes.
     *
     * @param recipe the title of the recipe
     * @param words where the words stand
     * @param printed the words as printed, in one line
     * @param before how they are read without the rule, “not read” where they are not
     * @param after how they are read with it
     */
    public record Change(String recipe, Span words, String printed, String before, String after) {}

    /** Returns the rules of every book about which something was decided, book by book. */
    public static List<Rule> all(Study study, Progress progress) {
        List<Rule> rules = new ArrayList<>();
        for (BookStudy book : study.books()) {
            progress.check();
            rules.addAll(of(study, book, progress));
        }
        return List.copyOf(rules);
    }

    /** Returns the rules of one book: those that hold first, then those proposed. */
    public static List<Rule> of(Study study, BookStudy book, Progress progress) {
        String id = book.source().id();
        List<Assertion> decisions =
                study.library().decisions().stream().filter(d -> d.source().equals(id)).toList();
        if (decisions.stream().noneMatch(BookRules::isOfReading)) {
            return List.of();
        }
        return new BookRules(book.source(), study.knowledge(), decisions).rules(progress);
    }

    private static boolean isOfReading(Assertion d) {
        return d.kind().equals("line") || d.kind().equals("cut") || d.kind().equals(Idiom.KIND);
    }

    private List<Rule> rules(Progress progress) {
        List<Rule> rules = new ArrayList<>();
        BookReading now = read(decisions);
        for (Assertion decision : decisions) {
            Optional<Idiom> idiom =
                    Idiom.of(decision).filter(i -> decision.kind().equals(Idiom.KIND));
            if (idiom.isPresent()) {
                progress.check();
                List<Assertion> others = new ArrayList<>(decisions);
                others.remove(decision);
                List<Change> changes = changes(read(others), now);
                rules.add(new Rule(source, idiom.get(), Optional.of(decision), 0, 0, changes));
            }
        }
        for (Proposal p : proposals()) {
            progress.check();
            List<Change> changes = changes(now, readWith(p.idiom()));
            if (!changes.isEmpty()) {
                int evidence = p.evidence().size();
                rules.add(
                        new Rule(
                                source,
                                p.idiom(),
                                Optional.empty(),
                                evidence,
                                p.against(),
                                changes));
            }
        }
        return rules;
    }

    private List<Proposal> proposals() {
        List<Assertion> rules = decisions.stream().filter(d -> !d.kind().equals("line")).toList();
        return new IdiomLearner(read(rules), decisions).propose();
    }

    private BookReading read(List<Assertion> some) {
        return knowledge.reader().read(source, some, Progress.SILENT);
    }

    private BookReading readWith(Idiom idiom) {
        List<Assertion> more = new ArrayList<>(decisions);
        more.add(
                new Assertion(
                        "~",
                        "",
                        "",
                        Idiom.KIND,
                        source.id(),
                        Optional.empty(),
                        new TreeMap<>(idiom.decision()),
                        Optional.empty()));
        return read(more);
    }

    private List<Change> changes(BookReading before, BookReading after) {
        List<Change> changes = new ArrayList<>();
        for (Reading reading : after.readings()) {
            List<ReadingLine> old =
                    at(before, reading.witness().span()).map(Reading::lines).orElse(List.of());
            for (ReadingLine line : reading.lines()) {
                Optional<ReadingLine> was =
                        old.stream().filter(l -> l.span().overlaps(line.span())).findFirst();
                if (was.map(BookRules::words).filter(words(line)::equals).isEmpty()) {
                    changes.add(change(reading, line.span(), was, Optional.of(line)));
                }
            }
        }
        for (Reading reading : before.readings()) {
            Span span = reading.witness().span();
            Optional<Reading> now = at(after, span);
            if (now.isEmpty()) {
                changes.add(whole(reading, "a recipe", "no recipe"));
            }
            for (ReadingLine line : now.isEmpty() ? List.<ReadingLine>of() : reading.lines()) {
                boolean gone =
                        now.orElseThrow().lines().stream()
                                .noneMatch(l -> l.span().overlaps(line.span()));
                if (gone && now.orElseThrow().witness().span().contains(line.span())) {
                    changes.add(change(reading, line.span(), Optional.of(line), Optional.empty()));
                }
            }
        }
        return changes;
    }

    private Change change(
            Reading in, Span span, Optional<ReadingLine> was, Optional<ReadingLine> now) {
        return new Change(
                in.witness().title(),
                span,
                source.text().slice(span).strip().replaceAll("\\s+", " "),
                was.map(BookRules::words).orElse("not read"),
                now.map(BookRules::words).orElse("not read"));
    }

    private Change whole(Reading recipe, String before, String after) {
        Span title = recipe.witness().titleSpan();
        return new Change(
                recipe.witness().title(),
                title.isEmpty() ? recipe.witness().span() : title,
                recipe.witness().title(),
                before,
                after);
    }

    private static Optional<Reading> at(BookReading book, Span span) {
        return book.readings().stream().filter(r -> r.witness().span().overlaps(span)).findFirst();
    }

    /** Returns what a line was read as: “2 teaspoon sugar”. */
    public static String words(ReadingLine line) {
        String low = line.amount().quantity().map(Object::toString).orElse("");
        String high = line.amount().quantityMax().map(q -> "–" + q).orElse("");
        String measure =
                line.measure().equals("unstated") || line.measure().equals("whole")
                        ? ""
                        : line.measure();
        return String.join(" ", low + high, measure, line.ingredientName())
                .strip()
                .replaceAll("\\s+", " ");
    }
}
