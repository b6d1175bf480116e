package org.stillroom.library.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Mark;
import org.stillroom.model.source.Source;

/** What is kept of each format. */
class FormatsTests {

    private static final String STYLES =
            "<w:styles "
                    + SampleFiles.W
                    + ">"
                    + "<w:style w:type='paragraph' w:styleId='K1'><w:name w:val='heading 1'/></w:style>"
                    + "<w:style w:type='paragraph' w:styleId='K2'><w:name w:val='Own'/>"
                    + "<w:basedOn w:val='K1'/><w:pPr><w:outlineLvl w:val='1'/></w:pPr></w:style>"
                    + "<w:style w:type='character' w:styleId='E'><w:name w:val='Emphasis'/><w:rPr>"
                    + "<w:i/></w:rPr></w:style></w:styles>";

    private static final String DOCX =
            "<w:p><w:pPr><w:pStyle w:val='K2'/></w:pPr><w:r><w:t>Quay Punch</w:t></w:r></w:p>"
                    + "<w:p><w:pPr><w:tabs><w:tab w:val='left'/></w:tabs></w:pPr>"
                    + "<w:r><w:t xml:space='preserve'>Take </w:t></w:r><w:r><w:rPr><w:rStyle"
                    + " w:val='E'/></w:rPr><w:t>two</w:t></w:r><w:r><w:t xml:space='preserve'> lemons"
                    + "</w:t><w:footnoteReference w:id='2'/><w:br/><w:t>and 1</w:t></w:r><w:r><w:rPr>"
                    + "<w:vertAlign w:val='superscript'/></w:rPr><w:t>1</w:t></w:r><w:r><w:t>/2 gill"
                    + "</w:t></w:r><w:del><w:r><w:delText>gone</w:delText></w:r></w:del></w:p>"
                    + "<w:p><w:pPr><w:numPr/></w:pPr><w:r><w:t>rum</w:t></w:r></w:p>"
                    + "<w:p><w:pPr><w:numPr/></w:pPr><w:r><w:t>water</w:t></w:r></w:p>"
                    + "<w:p><w:r><w:br w:type='page'/></w:r></w:p>"
                    + "<w:p><w:r><w:lastRenderedPageBreak/><w:t>Tar Flip</w:t></w:r></w:p>"
                    + "<w:tbl><w:tr><w:tc><w:p><w:r><w:t>½</w:t></w:r></w:p></w:tc><w:tc><w:p><w:r>"
                    + "<w:t>gill</w:t></w:r></w:p></w:tc></w:tr><w:tr><w:tc><w:p/></w:tc><w:tc><w:p>"
                    + "<w:r><w:t>egg</w:t></w:r></w:p></w:tc></w:tr></w:tbl>"
                    + "<w:p><w:r><w:t>Drink 1</w:t></w:r><m:oMath><m:f><m:num><m:r><m:t>3</m:t></m:r>"
                    + "</m:num><m:den><m:r><m:t>4</m:t></m:r></m:den></m:f></m:oMath><w:r><w:t"
                    + " xml:space='preserve'> pint</w:t></w:r><w:r><w:lastRenderedPageBreak/><w:t"
                    + " xml:space='preserve'> hot.</w:t></w:r></w:p>"
                    + "<w:sectPr><w:pgNumType w:start='7'/></w:sectPr>";

    private static final String NOTES =
            "<w:footnotes "
                    + SampleFiles.W
                    + "><w:footnote w:type='separator' w:id='0'><w:p><w:r>"
                    + "<w:t>no</w:t></w:r></w:p></w:footnote><w:footnote w:id='2'><w:p><w:r>"
                    + "<w:t>Or limes.</w:t></w:r></w:p></w:footnote><w:footnote w:id='3'><w:p><w:r>"
                    + "<w:t>A stray note.</w:t></w:r></w:p></w:footnote></w:footnotes>";

    @TempDir Path folder;

    private SourceReader.Result read(String name, byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve(name), bytes);
        return SourceReaders.shipped().read(name, file, Circumstances.UNKNOWN);
    }

    private Source source(String name, byte[] bytes) throws IOException {
        SourceReader.Result result = read(name, bytes);
        return result.source().orElseThrow(() -> new AssertionError(result.problems()));
    }

    static List<String> marked(Source source, Mark.Kind kind) {
        return source.marks().stream()
                .filter(m -> m.kind() == kind)
                .map(m -> m.label() + ":" + source.text().slice(m.span()))
                .toList();
    }

    @Test
    void docxKeepsWordsHeadingsNotesRowsAndPages() throws IOException {
        Map<String, String> parts = SampleFiles.docxParts(DOCX);
        parts.put("word/styles.xml", STYLES);
        parts.put("word/footnotes.xml", NOTES);
        parts.put(
                "docProps/core.xml",
                "<c:coreProperties xmlns:c='urn:c' xmlns:dc='urn:d'><dc:title>Quay Book</dc:title>"
                        + "<dc:creator>Ann Example</dc:creator><dc:created>2024</dc:created>"
                        + "<dc:language>en</dc:language></c:coreProperties>");
        parts.put(
                "docProps/custom.xml",
                "<Properties><property name='Text date'><lpwstr>1862</lpwstr></property>"
                        + "<property name='place'><lpwstr>Saltreath, GB</lpwstr></property>"
                        + "</Properties>");
        Source source = source("book.docx", SampleFiles.zip(parts));
        assertEquals(
                "Quay Punch\n\nTake two lemons\nand 1 1/2 gill\nOr limes.\n\nrum\nwater\n\n"
                        + "Tar Flip\n\n½ gill\negg\n\nDrink 1 3/4 pint hot.\n\nA stray note.",
                source.text().toString());
        assertEquals(List.of("2:Quay Punch"), marked(source, Mark.Kind.HEADING));
        assertEquals(List.of("italic:two"), marked(source, Mark.Kind.EMPHASIS));
        assertEquals(List.of(":rum", ":water"), marked(source, Mark.Kind.ITEM));
        assertEquals(List.of(":½ gill", ":egg"), marked(source, Mark.Kind.ROW));
        assertEquals(
                List.of("note:Or limes.", "note:A stray note."), marked(source, Mark.Kind.OTHER));
        List<String> pages = marked(source, Mark.Kind.PAGE);
        assertEquals(3, pages.size(), pages.toString());
        assertTrue(pages.get(0).startsWith("7:Quay Punch"));
        assertEquals("8:Tar Flip\n\n½ gill\negg\n\nDrink 1 3/4 pint", pages.get(1));
        assertTrue(pages.get(2).startsWith("9:hot."));
        assertEquals("Quay Book", source.bibliography().title());
        assertEquals("Ann Example", source.bibliography().author().orElseThrow());
        assertEquals("1862", source.bibliography().textDate().orElseThrow().toString());
        assertEquals("GB", source.bibliography().place().orElseThrow().country().orElseThrow());
    }

    @Test
    void aTextTypedLineByLineKeepsItsLinesTogether() throws IOException {
        String line = "<w:p><w:r><w:t>%s</w:t></w:r></w:p>";
        String body =
                String.format(line, "Grog")
                        + String.format(line, "rum")
                        + "<w:p/><w:p/>"
                        + String.format(line, "Flip")
                        + String.format(line, "ale")
                        + "<w:p/>"
                        + String.format(line, "Negus");
        assertEquals(
                "Grog\nrum\n\nFlip\nale\n\nNegus",
                source("typed.docx", SampleFiles.docx(body)).text().toString());
        assertTrue(marked(source("typed.docx", SampleFiles.docx(body)), Mark.Kind.PAGE).isEmpty());
    }

    @Test
    void whoOnlyTypedIsNoAuthor() throws IOException {
        Map<String, String> parts = SampleFiles.docxParts("<w:p><w:r><w:t>Grog</w:t></w:r></w:p>");
        parts.put(
                "docProps/core.xml",
                "<c:coreProperties xmlns:c='urn:c' xmlns:dc='urn:d'><dc:title>Microsoft Word -"
                        + " x</dc:title><dc:creator>Typist</dc:creator></c:coreProperties>");
        Source source = source("my-book.docx", SampleFiles.zip(parts));
        assertEquals("My book", source.bibliography().title());
        assertTrue(source.bibliography().author().isEmpty());
        assertEquals("Typist", source.bibliography().transcriber().orElseThrow());
    }

    private static final String ODT_STYLES =
            "<style:style style:name='T1'><style:text-properties fo:font-style='italic'/>"
                    + "</style:style><style:style style:name='T2'><style:text-properties"
                    + " style:text-position='super 58%'/></style:style><style:style"
                    + " style:name='P1'><style:paragraph-properties fo:break-before='page'/>"
                    + "</style:style>";

    private static final String ODT =
            "<text:tracked-changes><text:p>gone</text:p></text:tracked-changes>"
                    + "<text:h text:outline-level='2'>Quay<text:s/>Punch</text:h>"
                    + "<text:p>Take <text:span text:style-name='T1'>two</text:span> lemons"
                    + "<text:note><text:note-citation>1</text:note-citation><text:note-body><text:p>"
                    + "Or limes.</text:p></text:note-body></text:note><text:line-break/>and 1"
                    + "<text:span text:style-name='T2'>1</text:span>/2 gill<office:annotation>"
                    + "<dc:creator>N</dc:creator><text:p>a comment</text:p></office:annotation></text:p>"
                    + "<text:list><text:list-item><text:p>rum</text:p></text:list-item>"
                    + "<text:list-item><text:p>water</text:p></text:list-item></text:list>"
                    + "<text:p text:style-name='P1'>Tar Flip</text:p>"
                    + "<table:table><table:table-row><table:table-cell><text:p>½</text:p>"
                    + "</table:table-cell><table:table-cell><text:p>gill</text:p></table:table-cell>"
                    + "</table:table-row></table:table><text:p>Drink <text:soft-page-break/>hot."
                    + "</text:p>";

    @Test
    void odtKeepsWordsHeadingsNotesRowsAndPages() throws IOException {
        Map<String, String> parts = SampleFiles.odtParts(ODT_STYLES, ODT);
        parts.put(
                "meta.xml",
                "<office:document-meta "
                        + SampleFiles.O
                        + "><office:meta><dc:title>Quay Book"
                        + "</dc:title><meta:initial-creator>Ann Example</meta:initial-creator>"
                        + "<dc:creator>Typist</dc:creator><dc:date>2024-01-01</dc:date>"
                        + "<meta:user-defined meta:name='text-date'>1862</meta:user-defined>"
                        + "</office:meta></office:document-meta>");
        Source source = source("book.odt", SampleFiles.zip(parts));
        check(source);
        assertEquals("Quay Book", source.bibliography().title());
        assertEquals("Ann Example", source.bibliography().author().orElseThrow());
        assertEquals("1862", source.bibliography().textDate().orElseThrow().toString());
    }

    @Test
    void odtInOneFileIsRead() throws IOException {
        String flat =
                "<office:document "
                        + SampleFiles.O
                        + "><office:meta><dc:title>Flat</dc:title>"
                        + "</office:meta><office:automatic-styles>"
                        + ODT_STYLES
                        + "</office:automatic-styles><office:body><office:text>"
                        + ODT
                        + "</office:text></office:body></office:document>";
        Source source = source("book.fodt", flat.getBytes(StandardCharsets.UTF_8));
        check(source);
        assertEquals("Flat", source.bibliography().title());
    }

    private static void check(Source source) {
        assertEquals(
                "Quay Punch\n\nTake two lemons\nand 1 1/2 gill\n1 Or limes.\n\nrum\nwater\n\n"
                        + "Tar Flip\n\n½ gill\n\nDrink hot.",
                source.text().toString());
        assertEquals(List.of("2:Quay Punch"), marked(source, Mark.Kind.HEADING));
        assertEquals(List.of("italic:two"), marked(source, Mark.Kind.EMPHASIS));
        assertEquals(List.of(":rum", ":water"), marked(source, Mark.Kind.ITEM));
        assertEquals(List.of(":½ gill"), marked(source, Mark.Kind.ROW));
        assertEquals(List.of("note:1 Or limes."), marked(source, Mark.Kind.OTHER));
        List<String> pages = marked(source, Mark.Kind.PAGE);
        assertEquals(3, pages.size(), pages.toString());
        assertTrue(pages.get(0).startsWith("1:Quay Punch"));
        assertTrue(pages.get(1).startsWith("2:Tar Flip"), pages.toString());
        assertEquals("3:hot.", pages.get(2));
    }

    @Test
    void epubKeepsItsChaptersInOrderAndThePagesOfTheBook() throws IOException {
        Map<String, String> chapters = new LinkedHashMap<>();
        chapters.put("toc.xhtml", "<nav epub:type='toc'><ol><li>Quay Punch</li></ol></nav>");
        chapters.put(
                "a%20b.xhtml",
                "<h2>Quay Punch</h2><p>Take <span epub:type='pagebreak' id='x1'>12</span><em>two"
                        + "</em> lemons&nbsp;&amp; 1<sup>1</sup>/<sub>2</sub> gill<a id='e'/>, hot."
                        + "</p><aside epub:type='footnote'><p>Or limes.</p></aside>");
        chapters.put(
                "c.xhtml",
                "<p id='here'><img src='t.png' alt='T'/>ar Flip</p><table><tr><td><p>½</p></td><td>"
                        + "gill</td></tr></table>");
        Map<String, String> parts =
                SampleFiles.epubParts(
                        "<dc:title>Quay Book</dc:title><dc:creator>Ann Example</dc:creator>"
                                + "<dc:language>en</dc:language><dc:date>1862-01-01</dc:date>",
                        chapters);
        parts.put("OEBPS/a b.xhtml", parts.remove("OEBPS/a%20b.xhtml"));
        parts.put(
                "OEBPS/toc.ncx",
                "<ncx><pageList><pageTarget><navLabel><text>Page 13</text></navLabel><content"
                        + " src='c.xhtml#here'/></pageTarget></pageList></ncx>");
        parts.computeIfPresent(
                "OEBPS/book.opf",
                (k, v) ->
                        v.replace(
                                "</manifest>",
                                "<item id='n' href='toc.ncx'"
                                        + " media-type='application/x-dtbncx+xml'/></manifest>"));
        Source source = source("book.epub", SampleFiles.zip(parts));
        assertEquals(
                "Quay Punch\n\nQuay Punch\n\nTake two lemons & 1 1/2 gill, hot.\n\nOr limes.\n\n"
                        + "Tar Flip\n\n½ gill",
                source.text().toString());
        assertEquals(List.of("2:Quay Punch"), marked(source, Mark.Kind.HEADING));
        assertEquals(List.of("italic:two"), marked(source, Mark.Kind.EMPHASIS));
        assertEquals(List.of(":½ gill"), marked(source, Mark.Kind.ROW));
        assertEquals(
                List.of("contents:Quay Punch", "note:Or limes."), marked(source, Mark.Kind.OTHER));
        List<String> pages = marked(source, Mark.Kind.PAGE);
        assertEquals(2, pages.size(), pages.toString());
        assertTrue(pages.get(0).startsWith("12:two lemons"));
        assertTrue(pages.get(1).startsWith("13:Tar Flip"));
        assertEquals("Quay Book", source.bibliography().title());
        assertEquals("1862?", source.bibliography().textDate().orElseThrow().toString());
    }

    private static String folio(int number, String... words) {
        String[] all = new String[words.length + 1];
        System.arraycopy(words, 0, all, 0, words.length);
        all[words.length] = Integer.toString(number);
        return SampleFiles.lines(all);
    }

    @Test
    void pdfKeepsLinesHeadingsItalicsAndThePrintedNumbers() throws IOException {
        byte[] pdf =
                SampleFiles.pdf(
                        List.of(
                                SampleFiles.lines("24:Quay Book", "by nobody in particular, ever"),
                                folio(
                                        5,
                                        "18:Quay Punch",
                                        "/Take two lemons",
                                        "and one gill of rum."),
                                folio(6, "18:Tar Flip", "A pint of ale made hot", "with an egg."),
                                folio(7, "18:Grog", "Rum and water, stirred together", "cold.")),
                        "/Lang (en)",
                        "/Title (Quay Book) /Author (Ann Example) /CreationDate (D:2024)");
        Source source = source("book.pdf", pdf);
        assertEquals(
                "Quay Book\n\nby nobody in particular, ever\nQuay Punch\n\nTake two lemons\n"
                        + "and one gill of rum.\n5\nTar Flip\n\nA pint of ale made hot\nwith an egg.\n6"
                        + "\nGrog\n\nRum and water, stirred together\ncold.\n7",
                source.text().toString().replaceAll("\n+(Quay Punch|Tar Flip|Grog)", "\n$1"));
        assertEquals(
                List.of("1:Quay Book", "2:Quay Punch", "2:Tar Flip", "2:Grog"),
                marked(source, Mark.Kind.HEADING));
        assertEquals(List.of("italic:Take two lemons"), marked(source, Mark.Kind.EMPHASIS));
        List<String> pages = marked(source, Mark.Kind.PAGE);
        assertEquals(4, pages.size(), pages.toString());
        assertTrue(pages.get(1).startsWith("5:Quay Punch"), pages.toString());
        assertTrue(pages.get(3).startsWith("7:Grog"));
        assertEquals("Quay Book", source.bibliography().title());
        assertEquals("en", source.bibliography().language().orElseThrow());
        assertTrue(source.bibliography().date().isEmpty());
    }

    @Test
    void pdfTakesTheLabelsOfTheFileFirst() throws IOException {
        byte[] pdf =
                SampleFiles.pdf(
                        List.of(SampleFiles.lines("Preface"), SampleFiles.lines("Grog")),
                        "/PageLabels << /Nums [0 << /S /r >> 1 << /S /D /St 33 >>] >>",
                        "");
        assertEquals(
                List.of("i:Preface", "33:Grog"),
                marked(source("book.pdf", pdf), Mark.Kind.PAGE).stream()
                        .map(String::strip)
                        .toList());
    }

    @Test
    void pageNumbersInTheWordsOutrankThoseOfTheTranscription() throws IOException {
        String p = "<w:p><w:r><w:t>[p. %d] Grog</w:t><w:br w:type='page'/></w:r></w:p>";
        String body = String.format(p, 41) + String.format(p, 42) + String.format(p, 43);
        assertTrue(marked(source("b.docx", SampleFiles.docx(body)), Mark.Kind.PAGE).isEmpty());
    }

    @Test
    void altoKeepsLinesAndPages() throws IOException {
        String page =
                "<Page PHYSICAL_IMG_NR='%s' PRINTED_IMG_NR='%s'><PrintSpace><TextBlock><TextLine>"
                        + "<String CONTENT='Quay' STYLE='italics'/><SP/><String CONTENT='Grog'/>"
                        + "</TextLine><TextLine><String CONTENT='two lem'/><HYP CONTENT='-'/>"
                        + "</TextLine><TextLine><String CONTENT='ons'/></TextLine></TextBlock>"
                        + "</PrintSpace></Page>";
        String alto =
                "<alto xmlns='http://www.loc.gov/standards/alto/ns-v4#'><Layout>"
                        + String.format(page, "1", "12")
                        + String.format(page, "2", "")
                        + "</Layout></alto>";
        Source source = source("scan.xml", alto.getBytes(StandardCharsets.UTF_8));
        String once = "Quay Grog\ntwo lem-\nons";
        assertEquals(once + "\n\n" + once, source.text().toString());
        assertEquals(List.of("12:" + once, "2:" + once), marked(source, Mark.Kind.PAGE));
        assertEquals(List.of("italic:Quay", "italic:Quay"), marked(source, Mark.Kind.EMPHASIS));
    }

    @Test
    void theSidecarOutranksEveryFormat() throws IOException {
        Files.writeString(folder.resolve("s.yaml"), "title: Said\ntext-date: 1871\n");
        for (Map.Entry<String, byte[]> file : one("Grog").entrySet()) {
            Source source = source("s" + file.getKey(), file.getValue());
            assertEquals("Said", source.bibliography().title(), file.getKey());
            assertEquals("1871", source.bibliography().date().orElseThrow().toString());
        }
        assertFalse(one("x").isEmpty());
    }

    /** Returns a file of each format with these words, which need no escape in XML. */
    static Map<String, byte[]> one(String words) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(".txt", words.getBytes(StandardCharsets.UTF_8));
        files.put(".md", ("---\ntitle: T\n---\n" + words).getBytes(StandardCharsets.UTF_8));
        files.put(
                ".xml",
                ("<TEI><teiHeader><fileDesc><titleStmt><title>T</title></titleStmt></fileDesc>"
                                + "</teiHeader><text><body><p>"
                                + words
                                + "</p></body></text></TEI>")
                        .getBytes(StandardCharsets.UTF_8));
        files.put(
                ".html",
                ("<html><head><title>T</title></head><body><p>" + words + "</p></body></html>")
                        .getBytes(StandardCharsets.UTF_8));
        files.put(".odt", SampleFiles.odt("", "<text:p>" + words + "</text:p>"));
        files.put(
                ".docx",
                SampleFiles.docx(
                        "<w:p><w:r><w:t xml:space='preserve'>" + words + "</w:t></w:r></w:p>"));
        files.put(
                ".epub",
                SampleFiles.epub(
                        "<dc:title>T</dc:title>", Map.of("a.xhtml", "<p>" + words + "</p>")));
        if (words.chars().allMatch(c -> c < 128)) {
            files.put(
                    ".pdf",
                    SampleFiles.pdf(
                            List.of(SampleFiles.lines(words.split("\n"))), "", "/Title (T)"));
        }
        return files;
    }
}
