package org.stillroom.inquiry;

import java.util.Optional;
import java.util.TreeMap;
import org.stillroom.ingredients.ThesaurusEdit;
import org.stillroom.library.journal.History;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.Span;
import org.stillroom.reading.anchor.Reanchoring;
import org.stillroom.reading.anchor.WordCorrection;
import org.stillroom.reading.idiom.Idiom;

/** Names decisions for their makers: “line of Harbour Punch corrected”. */
public final class DecisionWords {

    private final Study study;
    private final History history;

    /** Makes a namer of the decisions of a library. */
    public DecisionWords(Study study, History history) {
        this.study = study;
        this.history = history;
    }

    /** Returns what a decision did, without a stop at its end. */
    public String of(Assertion decision) {
        if (decision.kind().equals(Assertion.TAKEN_BACK)) {
            return "taken back: " + of(history.subject(decision));
        }
        return switch (decision.kind()) {
            case "line" -> line(decision);
            case "cut" -> cut(decision);
            case WordCorrection.KIND ->
                    "“"
                            + shown(decision)
                            + "” put right as “"
                            + decision.value(WordCorrection.READS).orElse("")
                            + "” in "
                            + book(decision);
            case Idiom.KIND -> "rule for " + book(decision) + ": " + sentence(decision);
            case Idiom.DECLINED -> "no rule for " + book(decision) + ": " + sentence(decision);
            case ThesaurusEdit.ASSERTION_KIND ->
                    ThesaurusEdit.fromValues(new TreeMap<>(decision.values()))
                            .map(ThesaurusEdit::toText)
                            .orElse("sense decided");
            default -> decision.kind().replace('-', ' ') + " decided" + about(decision);
        };
    }

    private String line(Assertion decision) {
        String recipe = recipe(decision);
        String part = decision.value("part").orElse("");
        if (!part.isEmpty()) {
            return part + " of " + recipe + " named";
        }
        return switch (decision.value("action").orElse("")) {
            case "remove" -> "words taken out of " + recipe;
            case "right" -> "line of " + recipe + " confirmed";
            default -> "line of " + recipe + " corrected";
        };
    }

    private static String shown(Assertion decision) {
        String words = decision.anchor().map(a -> a.exact().strip()).orElse("");
        String first = words.length() > 30 ? words.substring(0, 30) + "…" : words;
        return first.replace('\n', ' ');
    }

    private String cut(Assertion decision) {
        String at = " at “" + shown(decision) + "”";
        return switch (decision.value("action").orElse("")) {
            case "split" -> "recipe begun" + at;
            case "end" -> "recipe ended" + at;
            case "join" -> "recipes joined" + at;
            case "title" -> "title named" + at;
            case "not-a-recipe" -> "no recipe" + at;
            default -> "page cut" + at;
        };
    }

    private static String sentence(Assertion decision) {
        String words = Idiom.of(decision).map(Idiom::sentence).orElse("rule");
        return words.endsWith(".") ? words.substring(0, words.length() - 1) : words;
    }

    private String about(Assertion decision) {
        return decision.source().isEmpty() ? "" : " in " + book(decision);
    }

    private String book(Assertion decision) {
        return study.book(decision.source())
                .map(b -> b.source().bibliography().title())
                .orElse(decision.source());
    }

    /** Returns the title of the recipe that a decision is about, or its book. */
    private String recipe(Assertion decision) {
        Optional<BookStudy> book = study.book(decision.source());
        Optional<Span> at =
                book.flatMap(
                        b ->
                                decision.anchor()
                                        .flatMap(a -> Reanchoring.find(b.source().text(), a)));
        return at.flatMap(span -> at(book.orElseThrow(), span))
                .map(v -> v.witness().title())
                .orElseGet(() -> book(decision));
    }

    private static Optional<Version> at(BookStudy book, Span span) {
        return book.versions().stream().filter(v -> v.witness().span().contains(span)).findFirst();
    }
}
