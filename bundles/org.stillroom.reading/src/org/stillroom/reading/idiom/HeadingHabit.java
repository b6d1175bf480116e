package org.stillroom.reading.idiom;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.source.Source;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.Anchor;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;
import org.stillroom.reading.anchor.Decided;
import org.stillroom.reading.cut.Cut;
import org.stillroom.reading.cut.CutCorrections;

/**
 * A way in which one book prints the heads of recipes, or of what is none.
 *
 * <p>The habit is a shape ({@code capitals}, {@code numbered}, {@code dash}) or {@code begins:} with
 * first words.
 */
final class HeadingHabit {

    private static final Map<String, Pattern> SHAPES =
            new TreeMap<>(
                    Map.of(
                            "numbered", Pattern.compile("\\W{0,4}\\d{1,4}[.)]\\s+\\p{Lu}.*"),
                            "dash",
                                    Pattern.compile(
                                            "[*_]{0,3}\\p{Lu}[\\p{L}’' ,-]{2,50}[.:*_]{0,4}\\s?[—–].*"),
                            "capitals",
                                    Pattern.compile(
                                            "[*_]{0,3}\\p{Lu}{2,}[\\p{Lu}’' ,&-]*(?:[.:*_—].*)?")));
    private static final String BEGINS = "begins:";

    private final Idiom idiom;

    HeadingHabit(Idiom idiom) {
        this.idiom = idiom;
    }

    static String sentence(String printed, String action) {
        String heads =
                printed.startsWith(BEGINS)
                        ? "that begins “" + printed.substring(BEGINS.length()) + "”"
                        : switch (printed) {
                            case "numbered" -> "with a number before it";
                            case "dash" -> "that a dash divides from its text";
                            default -> "in capitals";
                        };
        return switch (action) {
            case "split" -> "A line " + heads + " begins a recipe.";
            case "join" -> "A head " + heads + " belongs to the recipe before it.";
            default -> "A head " + heads + " is no recipe.";
        };
    }

    /** Returns the habits that a line may show, the most special first. */
    static List<String> of(String line) {
        List<String> habits = new ArrayList<>();
        firstWords(line, 2).ifPresent(w -> habits.add(BEGINS + w));
        firstWords(line, 1).ifPresent(w -> habits.add(BEGINS + w));
        SHAPES.forEach(
                (name, shape) -> {
                    if (shape.matcher(line.strip()).matches()) {
                        habits.add(name);
                    }
                });
        return habits;
    }

    private static Optional<String> firstWords(String line, int count) {
        List<String> words = Printed.words(line);
        if (words.size() < count || line.strip().matches("\\W*\\d.*")) {
            return Optional.empty();
        }
        return Optional.of(
                Printed.bare(String.join(" ", words.subList(0, count))).toLowerCase(Locale.ROOT));
    }

    private boolean shows(String line) {
        return of(line).contains(idiom.printed());
    }

    Cut apply(Cut cut, Source source) {
        String action = idiom.value("action");
        List<Span> places =
                action.equals("split") ? lines(cut, source.text()) : heads(cut, source.text());
        List<Assertion> decisions = new ArrayList<>();
        for (Span place : places) {
            decisions.add(
                    new Assertion(
                            String.format(Locale.ROOT, "%09d", place.start()),
                            "",
                            "",
                            "cut",
                            source.id(),
                            Optional.of(Anchor.of(source.text(), place)),
                            new TreeMap<>(Map.of("action", action)),
                            Optional.empty()));
        }
        return CutCorrections.apply(cut, source, new Decided(source, decisions), new ArrayList<>());
    }

    /** Returns the heads of recipes that show the habit. */
    private List<Span> heads(Cut cut, SourceText text) {
        List<Span> heads = new ArrayList<>();
        for (Witness witness : cut.witnesses()) {
            if (shows(head(witness, text))) {
                heads.add(witness.titleSpan().isEmpty() ? first(witness) : witness.titleSpan());
            }
        }
        return heads;
    }

    private static Span first(Witness witness) {
        return new Span(witness.span().start(), witness.span().start() + 1);
    }

    static String head(Witness witness, SourceText text) {
        Span line = text.line(text.lineAt(witness.span().start()));
        return text.slice(new Span(witness.span().start(), line.end()));
    }

    /** Returns the lines inside recipes that show the habit, their first lines left out. */
    private List<Span> lines(Cut cut, SourceText text) {
        List<Span> places = new ArrayList<>();
        for (Witness witness : cut.witnesses()) {
            int first = text.lineAt(witness.span().start());
            int last = text.lineAt(Math.max(witness.span().start(), witness.span().end() - 1));
            for (int i = first + 1; i <= last; i++) {
                Span line = text.line(i);
                if (!line.isEmpty() && shows(text.slice(line))) {
                    places.add(line);
                }
            }
        }
        return places;
    }
}
