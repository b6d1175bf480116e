package org.stillroom.library.read;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
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
}
