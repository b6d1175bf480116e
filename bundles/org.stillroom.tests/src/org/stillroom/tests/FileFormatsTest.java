package org.stillroom.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.inquiry.Study;
import org.stillroom.inquiry.StudyDesk;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.reading.Reading;
import org.stillroom.model.source.Witness;

/** A library with one file of each format opens inside OSGi, recipes under their pages. */
class FileFormatsTest {

    private static final List<String> WORDS =
            List.of(
                    "One wineglass of rum, one gill of water and a lump of sugar. Stir and serve.",
                    "Two wineglasses of brandy, half a pint of hot water. Shake well.",
                    "A wineglass of gin, a teaspoonful of sugar. Fill with ice.");

    private static final List<String> TITLES = List.of("Quay Grog", "Tar Punch", "Rope Sling");

    @TempDir Path folder;

    @BeforeEach
    void write() throws IOException {
        Path sources = Files.createDirectories(folder.resolve("sources"));
        StringBuilder md = new StringBuilder("---\ntitle: T\n---\n");
        StringBuilder html = new StringBuilder("<html><head><title>T</title></head><body>");
        StringBuilder tei = new StringBuilder("<TEI><teiHeader/><text><body>");
        StringBuilder docx = new StringBuilder();
        StringBuilder odt = new StringBuilder();
        for (int i = 0; i < 3; i++) {
            String title = TITLES.get(i);
            String words = WORDS.get(i);
            int page = i + 1;
            md.append("{")
                    .append(page)
                    .append("}\n\n# ")
                    .append(title)
                    .append("\n\n")
                    .append(words)
                    .append("\n\n");
            html.append("<a id='page_")
                    .append(page)
                    .append("'></a><h2>")
                    .append(title)
                    .append("</h2><p>")
                    .append(words)
                    .append("</p>");
            tei.append("<pb n='")
                    .append(page)
                    .append("'/><div><head>")
                    .append(title)
                    .append("</head><p>")
                    .append(words)
                    .append("</p></div>");
            docx.append("<w:p><w:pPr><w:outlineLvl w:val='1'/></w:pPr><w:r>")
                    .append(i > 0 ? "<w:br w:type='page'/>" : "")
                    .append("<w:t>")
                    .append(title)
                    .append("</w:t></w:r></w:p><w:p><w:r><w:t>")
                    .append(words)
                    .append("</w:t></w:r></w:p>");
            odt.append(i > 0 ? "<text:soft-page-break/>" : "")
                    .append("<text:h text:outline-level='2'>")
                    .append(title)
                    .append("</text:h><text:p>")
                    .append(words)
                    .append("</text:p>");
        }
        Files.writeString(sources.resolve("a.md"), md);
        Files.writeString(
                sources.resolve("b.txt"), md.toString().replaceAll("(?s)^---.*?---\n|# ", ""));
        Files.writeString(sources.resolve("c.html"), html + "</body></html>");
        Files.writeString(sources.resolve("d.xml"), tei + "</body></text></TEI>");
        zip(
                sources.resolve("e.docx"),
                Map.of(
                        "word/document.xml",
                        "<w:document xmlns:w='urn:w'><w:body>" + docx + "</w:body></w:document>"));
        zip(
                sources.resolve("f.odt"),
                Map.of(
                        "content.xml",
                        "<office:document-content xmlns:office='urn:oasis:names:tc:opendocument:xmlns:"
                                + "office:1.0' xmlns:text='urn:t'><office:body><office:text>"
                                + odt
                                + "</office:text></office:body></office:document-content>"));
        zip(
                sources.resolve("g.epub"),
                Map.of(
                        "book.opf",
                        "<package><manifest><item id='a' href='a.xhtml'/></manifest><spine><itemref"
                                + " idref='a'/></spine></package>",
                        "a.xhtml",
                        html + "</body></html>"));
        Files.write(sources.resolve("h.pdf"), pdf());
        Files.writeString(sources.resolve("bad.pdf"), "%PDF-1.4\nno more");
    }

    private static void zip(Path file, Map<String, String> parts) throws IOException {
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, String> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    /** Three pages without a table of objects, which a reader of PDF has to find by itself. */
    private static byte[] pdf() {
        StringBuilder out =
                new StringBuilder(
                        "%PDF-1.4\n1 0 obj\n<< /Type /Catalog /Pages 2 0 R >>\n"
                                + "endobj\n2 0 obj\n<< /Type /Pages /Kids [4 0 R 6 0 R 8 0 R] /Count 3 >>\nendobj\n"
                                + "3 0 obj\n<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>\nendobj\n");
        for (int i = 0; i < 3; i++) {
            String content =
                    "BT /F 20 Tf 50 560 Td ("
                            + TITLES.get(i)
                            + ") Tj ET\nBT /F 10 Tf 50 520 Td ("
                            + WORDS.get(i)
                            + ") Tj ET";
            out.append(4 + 2 * i)
                    .append(
                            " 0 obj\n<< /Type /Page /Parent 2 0 R /MediaBox [0 0 600 600]"
                                    + " /Resources << /Font << /F 3 0 R >> >> /Contents ")
                    .append(5 + 2 * i)
                    .append(" 0 R >>\nendobj\n")
                    .append(5 + 2 * i)
                    .append(" 0 obj\n<< /Length ")
                    .append(content.length())
                    .append(" >>\nstream\n")
                    .append(content)
                    .append("\nendstream\nendobj\n");
        }
        out.append("trailer\n<< /Root 1 0 R /Size 10 >>\nstartxref\n0\n%%EOF\n");
        return out.toString().getBytes(StandardCharsets.ISO_8859_1);
    }

    @Test
    void everyFormatGivesItsRecipesUnderTheirPages() {
        try (StudyDesk desk = new StudyDesk(folder.resolve("caches"))) {
            desk.lay(folder);
            Study study = desk.study(Progress.SILENT);
            assertEquals(
                    8, study.library().sources().size(), study.library().allProblems().toString());
            study.books()
                    .forEach(
                            b -> {
                                List<Witness> found =
                                        b.reading().readings().stream()
                                                .map(Reading::witness)
                                                .toList();
                                assertEquals(
                                        TITLES,
                                        found.stream().map(Witness::title).toList(),
                                        b.source().id());
                                assertEquals(
                                        List.of(
                                                Optional.of("1"),
                                                Optional.of("2"),
                                                Optional.of("3")),
                                        found.stream().map(Witness::page).toList(),
                                        b.source().id());
                            });
            assertTrue(
                    study.library().allProblems().stream()
                            .anyMatch(p -> p.file().equals("bad.pdf") && !p.remedy().isBlank()));
        }
    }
}
