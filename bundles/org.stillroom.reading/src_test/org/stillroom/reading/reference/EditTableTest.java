package org.stillroom.reading.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Reference;
import org.stillroom.model.reading.Reference.Edit;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.Folding;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;
import org.stillroom.reading.grammar.RecipeReader;

/** What a second recipe changes of a first, by a table of invented pairs. */
class EditTableTest {

    private static final RecipeReader READER = RecipeReader.standard();

    static Stream<String> rows() throws IOException {
        try (BufferedReader in =
                new BufferedReader(
                        new InputStreamReader(
                                Objects.requireNonNull(
                                        EditTableTest.class.getResourceAsStream("edits.txt")),
                                StandardCharsets.UTF_8))) {
            return in.lines().filter(l -> !l.startsWith("#") && !l.isBlank()).toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void editsAreThoseOfTheTable(String row) {
        String[] cells = row.split(" => ");
        Reading second = pair(cells[0], cells[1], cells[2], cells[3]).get(1);
        if (cells[4].equals("none")) {
            assertEquals(Optional.empty(), second.reference(), row);
            return;
        }
        Reference reference = second.reference().orElseThrow();
        assertEquals(List.of("page#1"), reference.chain(), row);
        TreeSet<String> wanted = new TreeSet<>();
        for (String edit : cells[4].split("; ")) {
            wanted.add(sorted(edit));
        }
        TreeSet<String> got = new TreeSet<>();
        reference.edits().forEach(e -> got.add(sorted(shown(e))));
        assertEquals(wanted, got, row);
    }

    /** A changed amount stands in the line that is taken over. */
    @Test
    void amountsChange() {
        List<Reading> pair =
                pair(
                        "Pier Sour",
                        "One teaspoonful of sugar, one jigger of whiskey, one dash of bitters.",
                        "Quay Sour",
                        "Same as Pier Sour, with half the sugar and three dashes of bitters.");
        List<String> amounts = new ArrayList<>();
        for (ReadingLine line : pair.get(1).inherited()) {
            amounts.add(line.amount().quantity().orElseThrow() + " " + line.measure());
        }
        assertEquals(List.of("1/2 teaspoon", "1 jigger", "3 dash"), amounts);
    }

    /** “Double everything” is one change to all lines. */
    @Test
    void everyAmountMayChange() {
        Reading second =
                pair(
                                "Pier Sour",
                                "One teaspoonful of sugar, one jigger of whiskey.",
                                "Large Sour",
                                "Same as Pier Sour, doubling all the ingredients.")
                        .get(1);
        assertEquals(
                "2 teaspoon",
                second.inherited().get(0).amount().quantity().orElseThrow()
                        + " "
                        + second.inherited().get(0).measure());
        Edit.Change change = (Edit.Change) second.reference().orElseThrow().edits().get(0);
        assertEquals(Edit.Change.ALL, change.ingredient());
    }

    private static String shown(Edit edit) {
        return switch (edit) {
            case Edit.Replace x -> x.from() + " > " + x.to();
            case Edit.Add x -> "+ " + x.line().ingredientName();
            case Edit.Remove x -> "- " + x.ingredient();
            case Edit.Change x -> "~ " + x.ingredient();
        };
    }

    /** Names are compared as sets of words, signs of the change kept in their place. */
    private static String sorted(String edit) {
        List<String> sides = new ArrayList<>();
        for (String side : edit.split(" > ")) {
            String folded = Folding.foldWord(side.strip()).replace('-', ' ');
            TreeSet<String> words = new TreeSet<>(List.of(folded.split(" +")));
            words.remove("of");
            words.remove("");
            sides.add(String.join(" ", words));
        }
        return String.join(" > ", sides);
    }

    private static List<Reading> pair(String title, String body, String second, String words) {
        SourceText text = SourceText.of(title + "\n" + body + "\n\n" + second + "\n" + words);
        int start = title.length() + body.length() + 3;
        List<Reading> readings =
                List.of(
                        READER.read(
                                text, witness(1, title, 0, body.length()), Circumstances.UNKNOWN),
                        READER.read(
                                text,
                                witness(2, second, start, words.length()),
                                Circumstances.UNKNOWN));
        return References.resolve(
                readings, text, phrase -> READER.readLine(phrase, Circumstances.UNKNOWN));
    }

    private static Witness witness(int ordinal, String title, int start, int length) {
        int body = start + title.length() + 1;
        return new Witness(
                "page",
                ordinal,
                Optional.empty(),
                title,
                new Span(start, start + title.length()),
                new Span(start, body + length),
                new Span(body, body + length),
                Optional.empty());
    }
}
