package org.stillroom.reading.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Source;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.SourceText;

/** Small invented books, one for each habit of setting a recipe, each with its list of titles. */
class MiniatureBooksTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "bar-cards.txt",
                "bold-markdown.md",
                "bold-run-in.md",
                "centred.txt",
                "colons.txt",
                "crowded-paragraphs.txt",
                "dashes.txt",
                "headed-parts.txt",
                "italic-side-heads.txt",
                "long-s.txt",
                "numbered-lists.txt",
                "numbered-paragraphs.txt",
                "running-prose.txt",
                "scanned-noise.txt",
                "sentence-case.txt",
                "side-heads.txt",
                "terse-capitals.txt",
                "untitled-variants.txt"
            })
    void findsEveryRecipeAndNothingElse(String book) throws IOException {
        Cut cut = new BookCutter().cut(source(book, read(book)));
        List<String> found = cut.witnesses().stream().map(MiniatureBooksTest::titleLine).toList();
        assertEquals(expected(book), found);
        assertTrue(cut.witnesses().stream().noneMatch(w -> w.body().isEmpty()));
    }

    static Source source(String id, String text) {
        return new Source(id, Bibliography.titled(id), SourceText.of(text), List.of(), "");
    }

    static String read(String book) throws IOException {
        try (InputStream in = MiniatureBooksTest.class.getResourceAsStream("books/" + book)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    static List<String> expected(String book) throws IOException {
        String titles = read(book.substring(0, book.lastIndexOf('.')) + ".titles");
        return titles.lines().filter(l -> !l.isBlank()).toList();
    }

    private static String titleLine(Witness witness) {
        return witness.number().map(n -> n + "|").orElse("") + witness.title();
    }
}
