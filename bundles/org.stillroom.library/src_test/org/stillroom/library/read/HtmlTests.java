package org.stillroom.library.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Mark;
import org.stillroom.model.source.Source;

class HtmlTests {

    private static final String PAGE =
            "<html><head><title>A Harbour Book</title><meta name='author' content='Ann"
                    + " Example'><meta name='date' content='2020'><style>p{}</style></head><body><a"
                    + " id='page_12'></a><h2>Harbour Punch</h2><p>Take\n"
                    + " <i>two</i> lemons&#x1F34B; &amp;<br>one"
                    + " gill</p><ul><li>rum</li><li>water</li></ul><span"
                    + " id='page_13'></span><table><tr><td>½</td><td>gill</td></tr></table>"
                    + "<script>alert(1)</script></body></html>";

    @TempDir Path folder;

    private SourceReader.Result read(String name, String text) throws IOException {
        Path file = Files.writeString(folder.resolve(name), text);
        return SourceReaders.shipped().read(name, file, Circumstances.UNKNOWN);
    }

    private static List<String> marked(Source source, Mark.Kind kind) {
        return source.marks().stream()
                .filter(m -> m.kind() == kind)
                .map(m -> m.label() + ":" + source.text().slice(m.span()))
                .toList();
    }

    @Test
    void wordsAndMarksAreKept() throws IOException {
        Source source = read("book.html", PAGE).source().orElseThrow();
        assertEquals(
                "Harbour Punch\n\nTake two lemons🍋 &\none gill\n\nrum\nwater\n\n½ gill",
                source.text().toString());
        assertEquals(List.of("2:Harbour Punch"), marked(source, Mark.Kind.HEADING));
        assertEquals(List.of(":rum", ":water"), marked(source, Mark.Kind.ITEM));
        assertEquals(List.of("italic:two"), marked(source, Mark.Kind.EMPHASIS));
        assertEquals(List.of(":½ gill"), marked(source, Mark.Kind.ROW));
        List<String> pages = marked(source, Mark.Kind.PAGE);
        assertEquals(2, pages.size());
        assertTrue(pages.get(0).startsWith("12:Harbour Punch"));
        assertEquals("13:½ gill", pages.get(1));
    }

    @Test
    void theSidecarOutranksTheFileAndNoDateOfTheFileIsTaken() throws IOException {
        Source alone = read("a.html", PAGE).source().orElseThrow();
        assertEquals("A Harbour Book", alone.bibliography().title());
        assertEquals("Ann Example", alone.bibliography().author().orElseThrow());
        assertTrue(alone.bibliography().date().isEmpty());
        Files.writeString(folder.resolve("b.yaml"), "title: Another\ntext-date: 1871\n");
        Source both = read("b.html", PAGE).source().orElseThrow();
        assertEquals("Another", both.bibliography().title());
        assertEquals("Ann Example", both.bibliography().author().orElseThrow());
        assertEquals("1871", both.bibliography().date().orElseThrow().toString());
    }

    @Test
    void badFilesGiveAReasonAndARemedy() throws IOException {
        List<String> bad = List.of("", "<p></p><script>x</script>", "a\0b");
        for (String text : bad) {
            SourceReader.Result result = read("bad.htm", text);
            assertTrue(result.source().isEmpty());
            assertFalse(result.problems().get(0).reason().isBlank());
            assertFalse(result.problems().get(0).remedy().isBlank());
        }
        assertFalse(
                read("deep.html", "<div>".repeat(20000) + "x").problems().stream()
                        .anyMatch(p -> p.remedy().isBlank()));
    }

    private String words(String html) throws IOException {
        return read("words.html", html).source().orElseThrow().text().toString();
    }

    @Test
    void layoutThatCarriesMeaningIsKept() throws IOException {
        assertEquals("Grog\nrum\n\nFlip", words("<pre>Grog\nrum\n\n\nFlip</pre>"));
        assertEquals("a\n\nb\nc", words("a<br><br>b<br>c"));
        assertEquals("1 1/2 gill", words("1<sup>1</sup>/<sub>2</sub> gill"));
        assertEquals("1 3/4", words("1<math><mfrac><mn>3</mn><mn>4</mn></mfrac></math>"));
        assertEquals("½ gill\nale", words("<table><tr><td><p>½</p><td><p>gill</p><tr><td>ale"));
        assertEquals("Take rum", words("<img alt='T'>ake <img alt='A bottle'>rum"));
    }

    @Test
    void aBareNumberOfAPageIsNoAmount() throws IOException {
        Source bare =
                read("p.html", "Take two <span class='pagenum'>12</span>lemons")
                        .source()
                        .orElseThrow();
        assertEquals("Take two lemons", bare.text().toString());
        assertEquals(List.of("12:lemons"), marked(bare, Mark.Kind.PAGE));
        Source said =
                read("p.html", "two <span class='pagenum'>[Pg 12]</span> lemons")
                        .source()
                        .orElseThrow();
        assertEquals("two [Pg 12] lemons", said.text().toString());
        assertEquals(1, marked(said, Mark.Kind.PAGE).size());
    }

    @Test
    void recognisedPagesAreRead() throws IOException {
        Source source =
                read(
                                "scan.hocr",
                                "<div class='ocr_page' title='image a.png; ppageno 6'><p"
                                        + " class='ocr_par'><span class='ocr_line'><span>Quay</span>"
                                        + " <span>Grog</span></span><span class='ocr_line'>rum</span>"
                                        + "</p></div>")
                        .source()
                        .orElseThrow();
        assertEquals("Quay Grog\nrum", source.text().toString());
        assertEquals(List.of("7:Quay Grog\nrum"), marked(source, Mark.Kind.PAGE));
    }

    @Test
    void problemsNameTheFileThatTheFieldCameFrom() throws IOException {
        Files.writeString(folder.resolve("c.yaml"), "text-date: soon\n");
        SourceReader.Result result = read("c.html", "<title>T</title><p>Grog");
        assertEquals("c.yaml", result.problems().get(0).file());
        assertEquals(1, result.problems().size());
    }

    @Test
    void aDateBeforeAnyFileIsThatOfTheBook() throws IOException {
        Source source =
                read("d.html", "<head><meta name='dc.date' content='1862-05'></head>Grog")
                        .source()
                        .orElseThrow();
        assertEquals("1862?", source.bibliography().textDate().orElseThrow().toString());
    }
}
