package org.stillroom.library.read;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Makes files of every format, by the standards of the formats and without the readers. */
final class SampleFiles {

    static final String W =
            "xmlns:w='http://schemas.openxmlformats.org/wordprocessingml/2006/main'"
                    + " xmlns:m='http://schemas.openxmlformats.org/officeDocument/2006/math'"
                    + " xmlns:mc='http://schemas.openxmlformats.org/markup-compatibility/2006'";
    static final String O =
            "xmlns:office='urn:oasis:names:tc:opendocument:xmlns:office:1.0'"
                    + " xmlns:text='urn:oasis:names:tc:opendocument:xmlns:text:1.0'"
                    + " xmlns:table='urn:oasis:names:tc:opendocument:xmlns:table:1.0'"
                    + " xmlns:style='urn:oasis:names:tc:opendocument:xmlns:style:1.0'"
                    + " xmlns:fo='urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0'"
                    + " xmlns:meta='urn:oasis:names:tc:opendocument:xmlns:meta:1.0'"
                    + " xmlns:dc='http://purl.org/dc/elements/1.1/'";

    private SampleFiles() {}

    static byte[] zip(Map<String, String> parts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, String> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    static Map<String, String> docxParts(String body) {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put(
                "_rels/.rels",
                "<Relationships xmlns='http://schemas.openxmlformats.org/package/2006/relationships'>"
                        + "<Relationship Id='r1' Type='http://schemas.openxmlformats.org/"
                        + "officeDocument/2006/relationships/officeDocument'"
                        + " Target='word/document.xml'/></Relationships>");
        parts.put(
                "word/document.xml",
                "<w:document " + W + "><w:body>" + body + "</w:body></w:document>");
        return parts;
    }

    static byte[] docx(String body) {
        return zip(docxParts(body));
    }

    static Map<String, String> odtParts(String styles, String body) {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("mimetype", "application/vnd.oasis.opendocument.text");
        parts.put(
                "content.xml",
                "<office:document-content "
                        + O
                        + "><office:automatic-styles>"
                        + styles
                        + "</office:automatic-styles><office:body><office:text>"
                        + body
                        + "</office:text></office:body></office:document-content>");
        return parts;
    }

    static byte[] odt(String styles, String body) {
        return zip(odtParts(styles, body));
    }

    static Map<String, String> epubParts(String metadata, Map<String, String> chapters) {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("mimetype", "application/epub+zip");
        parts.put(
                "META-INF/container.xml",
                "<container xmlns='urn:oasis:names:tc:opendocument:xmlns:container'><rootfiles>"
                        + "<rootfile full-path='OEBPS/book.opf'"
                        + " media-type='application/oebps-package+xml'/></rootfiles></container>");
        StringBuilder items = new StringBuilder();
        StringBuilder order = new StringBuilder();
        int n = 0;
        for (String name : chapters.keySet()) {
            n++;
            items.append("<item id='c")
                    .append(n)
                    .append("' href='")
                    .append(name)
                    .append("' media-type='application/xhtml+xml'/>");
            order.append("<itemref idref='c").append(n).append("'/>");
        }
        parts.put(
                "OEBPS/book.opf",
                "<package xmlns='http://www.idpf.org/2007/opf' version='3.0'><metadata"
                        + " xmlns:dc='http://purl.org/dc/elements/1.1/'"
                        + " xmlns:opf='http://www.idpf.org/2007/opf'>"
                        + metadata
                        + "</metadata><manifest>"
                        + items
                        + "</manifest><spine>"
                        + order
                        + "</spine></package>");
        chapters.forEach(
                (name, body) ->
                        parts.put(
                                "OEBPS/" + name,
                                "<?xml version='1.0' encoding='utf-8'?><html"
                                        + " xmlns='http://www.w3.org/1999/xhtml'"
                                        + " xmlns:epub='http://www.idpf.org/2007/ops'><head><title/>"
                                        + "</head><body>"
                                        + body
                                        + "</body></html>"));
        return parts;
    }

    static byte[] epub(String metadata, Map<String, String> chapters) {
        return zip(epubParts(metadata, chapters));
    }

    /**
     * Makes a PDF of lines of Latin letters in Helvetica, one text object a page.
     *
     * @param pages content streams, see {@link #lines}
     * @param catalog more entries of the catalogue
     * @param info entries of the information dictionary
     */
    static byte[] pdf(List<String> pages, String catalog, String info) {
        List<String> objects = new ArrayList<>();
        StringBuilder kids = new StringBuilder();
        int first = 6;
        for (int i = 0; i < pages.size(); i++) {
            kids.append(first + 2 * i).append(" 0 R ");
        }
        objects.add("<< /Type /Catalog /Pages 2 0 R " + catalog + " >>");
        objects.add("<< /Type /Pages /Kids [" + kids + "] /Count " + pages.size() + " >>");
        objects.add("<< " + info + " >>");
        objects.add(font("Helvetica"));
        objects.add(font("Helvetica-Oblique"));
        for (int i = 0; i < pages.size(); i++) {
            objects.add(
                    "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 400 600] /Resources << /Font <<"
                            + " /F1 4 0 R /F2 5 0 R >> >> /Contents "
                            + (first + 2 * i + 1)
                            + " 0 R >>");
            String content = pages.get(i);
            objects.add(
                    "<< /Length " + content.length() + " >>\nstream\n" + content + "\nendstream");
        }
        return pdfOf(objects);
    }

    private static String font(String name) {
        return "<< /Type /Font /Subtype /Type1 /BaseFont /"
                + name
                + " /Encoding /WinAnsiEncoding >>";
    }

    static byte[] pdfOf(List<String> objects) {
        StringBuilder out = new StringBuilder("%PDF-1.4\n");
        List<Integer> offsets = new ArrayList<>();
        for (int i = 0; i < objects.size(); i++) {
            offsets.add(out.length());
            out.append(i + 1).append(" 0 obj\n").append(objects.get(i)).append("\nendobj\n");
        }
        int xref = out.length();
        out.append("xref\n0 ").append(objects.size() + 1).append("\n0000000000 65535 f \n");
        offsets.forEach(
                o -> out.append(String.format(java.util.Locale.ROOT, "%010d 00000 n \n", o)));
        out.append("trailer\n<< /Size ")
                .append(objects.size() + 1)
                .append(" /Root 1 0 R /Info 3 0 R >>\nstartxref\n")
                .append(xref)
                .append("\n%%EOF\n");
        return out.toString().getBytes(StandardCharsets.ISO_8859_1);
    }

    /** Sets lines under one another; “18:” before a line sets its size, “/” in italics. */
    static String lines(String... lines) {
        StringBuilder out = new StringBuilder();
        int y = 560;
        for (String line : lines) {
            int colon = line.indexOf(':');
            boolean sized = colon > 0 && line.substring(0, colon).matches("\\d+");
            String size = sized ? line.substring(0, colon) : "10";
            String text = sized ? line.substring(colon + 1) : line;
            boolean italic = text.startsWith("/");
            String words =
                    (italic ? text.substring(1) : text)
                            .replace("\\", "\\\\")
                            .replace("(", "\\(")
                            .replace(")", "\\)");
            out.append("BT /")
                    .append(italic ? "F2 " : "F1 ")
                    .append(size)
                    .append(" Tf 50 ")
                    .append(y)
                    .append(" Td (")
                    .append(words)
                    .append(") Tj ET\n");
            y -= Integer.parseInt(size) > 10 ? 30 : 13;
        }
        return out.toString();
    }
}
