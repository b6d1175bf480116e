package org.stillroom.reading.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Mark;
import org.stillroom.model.source.Section;
import org.stillroom.model.source.Source;
import org.stillroom.model.source.Witness;
import org.stillroom.model.text.SourceText;
import org.stillroom.model.text.Span;

/** What holds for the cut of any text, tried on seeded mutations of the miniature books. */
class CutPropertiesTest {

    private static final String[] ODD = {
        "\n",
        "\n\n",
        "\r\n",
        "\t",
        " ",
        "—",
        ".—",
        "_",
        "*",
        "#",
        "# ",
        "“",
        "”",
        "(",
        "[",
        "{12}",
        "\f",
        "½",
        "ſ",
        "\u0000",
        "\ud83c\udf4b",
        "\ud800",
        "\u00a0",
        "....... 12",
        "No. 3. ",
        "XII.",
        "GIN",
        "|",
        "<",
        "%",
        "\u2028",
        "\u0301",
        "12",
        "CHAPTER I",
        "INDEX",
        "The same"
    };

    @ParameterizedTest
    @ValueSource(
            strings = {
                "bar-cards.txt", "bold-markdown.md", "centred.txt", "crowded-paragraphs.txt",
                "italic-side-heads.txt", "numbered-lists.txt", "running-prose.txt",
                        "scanned-noise.txt",
                "side-heads.txt"
            })
    void coversEveryWordOnceWhateverTheTextIs(String book) throws IOException {
        String text = MiniatureBooksTest.read(book);
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            String mutated = mutate(text, random);
            String where = book + ", seed " + seed;
            Source source = MiniatureBooksTest.source(book, mutated);
            check(source, new BookCutter().cut(source), where);
        }
    }

    @Test
    void coversEveryWordOnceInNonsense() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            StringBuilder text = new StringBuilder();
            int pieces = random.nextInt(200);
            for (int i = 0; i < pieces; i++) {
                text.append(ODD[random.nextInt(ODD.length)]);
                text.append(random.nextBoolean() ? "" : "Punch. ");
            }
            Source source = MiniatureBooksTest.source("nonsense", text.toString());
            check(source, new BookCutter().cut(source), "seed " + seed);
        }
    }

    @Test
    void cutsAlikeWhateverTheLineEnds() throws IOException {
        String text = MiniatureBooksTest.read("terse-capitals.txt");
        Cut plain = new BookCutter().cut(MiniatureBooksTest.source("a", text));
        for (String end : List.of("\r\n", "\r")) {
            Source source = MiniatureBooksTest.source("a", text.replace("\n", end));
            assertEquals(plain, new BookCutter().cut(source));
        }
    }

    @Test
    void takesTheRecipesThatTheFileMarks() {
        String text =
                "Ale Flip\n\nWarm a pint of ale.\n\nA story of two sailors.\n\nNo title here, but a pint.";
        SourceText words = SourceText.of(text);
        int flip = text.indexOf("Warm a pint of ale.") + "Warm a pint of ale.".length();
        int second = text.indexOf("No title");
        List<Mark> marks =
                List.of(
                        new Mark(Mark.Kind.RECIPE, "recipe", new Span(0, flip)),
                        new Mark(Mark.Kind.HEADING, "1", new Span(0, 8)),
                        new Mark(Mark.Kind.RECIPE, "recipe", new Span(second, text.length())));
        Source source = new Source("m.xml", Bibliography.titled("m"), words, marks, "");
        Cut cut = new BookCutter().cut(source);
        assertEquals(
                List.of(new Span(0, flip), new Span(second, text.length())),
                cut.witnesses().stream().map(Witness::span).toList());
        assertEquals("Ale Flip", cut.witnesses().get(0).title());
        check(source, cut, "marked");
    }

    @Test
    void keepsPagesAndNumbers() throws IOException {
        Cut braces =
                new BookCutter()
                        .cut(
                                MiniatureBooksTest.source(
                                        "b", MiniatureBooksTest.read("italic-side-heads.txt")));
        assertEquals("3", braces.witnesses().get(0).page().orElseThrow());
        assertEquals("4", braces.witnesses().get(2).page().orElseThrow());
        Cut heads =
                new BookCutter()
                        .cut(
                                MiniatureBooksTest.source(
                                        "h", MiniatureBooksTest.read("scanned-noise.txt")));
        assertEquals("8", heads.witnesses().get(0).page().orElseThrow());
        assertEquals("9", heads.witnesses().get(2).page().orElseThrow());
        Cut listed =
                new BookCutter()
                        .cut(
                                MiniatureBooksTest.source(
                                        "l", MiniatureBooksTest.read("side-heads.txt")));
        assertEquals(8, listed.witnesses().size());
    }

    @Test
    void tellsTheOtherPartsOfABookApart() throws IOException {
        Cut cut =
                new BookCutter()
                        .cut(
                                MiniatureBooksTest.source(
                                        "n", MiniatureBooksTest.read("numbered-lists.txt")));
        List<Section.Kind> kinds = cut.sections().stream().map(Section::kind).distinct().toList();
        assertTrue(kinds.contains(Section.Kind.FRONT), kinds.toString());
        assertTrue(kinds.contains(Section.Kind.INDEX), kinds.toString());
        Cut noise =
                new BookCutter()
                        .cut(
                                MiniatureBooksTest.source(
                                        "s", MiniatureBooksTest.read("scanned-noise.txt")));
        kinds = noise.sections().stream().map(Section::kind).distinct().toList();
        assertTrue(kinds.contains(Section.Kind.MEASURES), kinds.toString());
        assertTrue(kinds.contains(Section.Kind.ADVERTISEMENT), kinds.toString());
    }

    private static String mutate(String text, Random random) {
        StringBuilder out = new StringBuilder(text);
        int times = 1 + random.nextInt(40);
        for (int i = 0; i < times && out.length() > 10; i++) {
            int at = random.nextInt(out.length());
            switch (random.nextInt(4)) {
                case 0 -> out.insert(at, ODD[random.nextInt(ODD.length)]);
                case 1 -> out.delete(at, Math.min(out.length(), at + random.nextInt(60)));
                case 2 -> out.insert(at, out.substring(at, Math.min(out.length(), at + 80)));
                default -> out.setCharAt(at, (char) random.nextInt(0x3000));
            }
        }
        return out.toString();
    }

    static void check(Source source, Cut cut, String where) {
        List<Span> spans = new ArrayList<>();
        for (Witness w : cut.witnesses()) {
            spans.add(w.span());
            assertTrue(w.span().contains(w.titleSpan()), where + ": title of " + w);
            assertTrue(w.span().contains(w.body()), where + ": body of " + w);
            assertEquals(cut.witnesses().indexOf(w) + 1, w.ordinal(), where);
        }
        cut.sections().forEach(s -> spans.add(s.span()));
        spans.sort(null);
        int end = 0;
        for (Span span : spans) {
            assertTrue(span.start() >= end, where + ": two stretches overlap at " + span);
            assertTrue(
                    isBlank(source, end, span.start()), where + ": words left out before " + span);
            end = span.end();
        }
        assertTrue(end <= source.text().length(), where);
        assertTrue(
                isBlank(source, end, source.text().length()),
                where + ": words left out at the end");
    }

    private static boolean isBlank(Source source, int from, int to) {
        String words = source.text().slice(new Span(from, to));
        return words.chars().allMatch(c -> Lines.isBlank((char) c));
    }
}
