package org.stillroom.reading.grammar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.stillroom.model.number.Rational;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.reading.Size;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Trade;

/** Single lines, one case to a row of {@code lines.txt}. */
final class LineTableTests {

    private static final RecipeReader READER = RecipeReader.standard();

    static Stream<String> cases() throws IOException {
        return Stream.concat(rows("lines.txt"), rows("period-lines.txt"));
    }

    static Stream<String> vague() throws IOException {
        return rows("vague.txt");
    }

    private static Stream<String> rows(String file) throws IOException {
        try (BufferedReader in =
                new BufferedReader(
                        new InputStreamReader(
                                Objects.requireNonNull(
                                        LineTableTests.class.getResourceAsStream(file)),
                                StandardCharsets.UTF_8))) {
            return in.lines().filter(l -> !l.startsWith("#") && !l.isBlank()).toList().stream();
        }
    }

    /** Words such as “to taste” keep their kind and never become a number. */
    @ParameterizedTest
    @MethodSource("vague")
    void vagueAmountsGetNoNumber(String words) {
        Circumstances english =
                new Circumstances(
                        Optional.empty(), Optional.empty(), Optional.empty(), Optional.of("en"));
        List<ReadingLine> lines = READER.readLine(words, english);
        assertFalse(lines.isEmpty(), words);
        assertEquals(Optional.empty(), lines.get(0).amount().quantity(), words);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void readsTheLine(String row) {
        String[] sides = row.split(" => ");
        String words = sides[0];
        Optional<Trade> trade = Optional.empty();
        Optional<String> language = Optional.of("en");
        if (words.startsWith("@")) {
            String tag = words.substring(1, words.indexOf(' '));
            words = words.substring(words.indexOf(' ') + 1);
            trade = Trade.of(tag);
            language = trade.isPresent() ? language : Optional.of(tag);
        }
        List<ReadingLine> lines =
                READER.readLine(
                        words,
                        new Circumstances(Optional.empty(), Optional.empty(), trade, language));
        assertFalse(lines.isEmpty(), words);
        assertEquals(plain(sides[1]), plain(show(lines.get(0))), words);
    }

    private static String plain(String row) {
        return String.join("|", Stream.of(row.split("\\|", -1)).map(String::strip).toList());
    }

    private static String show(ReadingLine line) {
        String low = line.amount().quantity().map(Rational::toString).orElse("");
        String high = line.amount().quantityMax().map(q -> "–" + q).orElse("");
        return String.join(
                "|",
                line.kind().word(),
                low + high,
                line.measure(),
                line.size().map(Size::word).orElse(""),
                line.ingredientName());
    }
}
