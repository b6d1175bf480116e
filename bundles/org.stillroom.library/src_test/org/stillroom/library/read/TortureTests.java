package org.stillroom.library.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.library.Library;
import org.stillroom.library.LibraryFolder;
import org.stillroom.library.LibraryLayout;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Source;

/** Bad and odd files of every kind: none stops the others, each is reported with a remedy. */
class TortureTests {

    private static final Limits SMALL =
            new Limits(
                    1 << 20,
                    1 << 20,
                    1 << 20,
                    1 << 20,
                    2 << 20,
                    50,
                    20,
                    1_000,
                    Duration.ofSeconds(60));

    private static final String DEEP = "<div>".repeat(20_000);

    @TempDir Path folder;

    private final Map<String, byte[]> refused = new LinkedHashMap<>();
    private final Map<String, byte[]> opened = new LinkedHashMap<>();

    private void bad(String name, String text) {
        bad(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private void bad(String name, byte[] bytes) {
        refused.put(name, bytes);
    }

    private void odd(String name, String text) {
        odd(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private void odd(String name, byte[] bytes) {
        opened.put(name, bytes);
    }

    private void plainFiles() {
        bad("empty.txt", "");
        bad("blank.txt", " \n\r\n\t");
        bad("zero.txt", new byte[] {'a', '\n', 0, 'b'});
        bad("late-zero.txt", ("words\n".repeat(2000) + "\0").getBytes(StandardCharsets.UTF_8));
        bad("picture.txt", new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0, 13});
        bad("latin.txt", "cura\u00e7ao".getBytes(StandardCharsets.ISO_8859_1));
        bad("windows.txt", "\u201cGrog\u201d".getBytes(Charset.forName("windows-1252")));
        bad("utf16-unmarked.txt", "Grog and rum".getBytes(StandardCharsets.UTF_16LE));
        bad("utf16-cut.txt", new byte[] {(byte) 0xFF, (byte) 0xFE, 'a'});
        bad("utf32.txt", "\ufeffGrog".getBytes(Charset.forName("UTF-32LE")));
        bad("overlong.txt", new byte[] {'a', (byte) 0xC0, (byte) 0x80});
        bad("surrogate.txt", new byte[] {'a', (byte) 0xED, (byte) 0xA0, (byte) 0x80});
        bad("large.txt", "a".repeat((1 << 20) + 1));
        odd("utf16.txt", "\ufeffGrog".getBytes(StandardCharsets.UTF_16LE));
        odd("utf16be.txt", "\ufeffGrog".getBytes(StandardCharsets.UTF_16BE));
        odd("marked.txt", "\ufeffGrog");
        odd("old-mac.txt", "Grog\rrum\rwater");
        odd("long-line.txt", "rum ".repeat(100_000));
        odd("astral.txt", "\ud83c\udf4b".repeat(5000));
    }

    private void markdown() {
        bad("empty.md", "");
        bad("fields-only.md", "---\ntitle: x\n---\n");
        bad("anchors.md", "---\na: &x [*x]\n---\n");
        odd("unclosed.md", "---\ntitle: x\nGrog");
        odd("quote.md", "---\ntitle: 'x\n---\nGrog");
        odd("alias.md", "---\ntitle: &a Book\nauthor: *a\n---\nGrog");
        odd("twice.md", "---\ntitle: a\ntitle: b\n---\nGrog");
        odd("laughs.md", "---\na: &a [x,x]\nb: &b [*a,*a]\nc: [*b,*b]\n---\nGrog");
        odd("flow.md", "---\n" + "[".repeat(5000) + "\n---\nGrog");
        odd("scalar.md", "---\njust words\n---\nGrog");
        odd("tag.md", "---\ntitle: !!javax.script.ScriptEngineManager [x]\n---\nGrog");
        odd("control.md", "---\ntitle: a\u0007b\n---\nGrog");
        odd("tabs.md", "---\n\ttitle: a\n---\nGrog");
        odd("quotes.md", ">".repeat(20_000) + " Grog");
        odd("brackets.md", "[".repeat(20_000) + "Grog");
        odd("stars.md", "*a _b ".repeat(10_000));
    }

    private void markUp() {
        bad("empty.xml", "");
        bad("words.xml", "Grog, rum and water");
        bad("open.xml", "<TEI><text><p>Grog</text></TEI>");
        bad("no-text.xml", "<TEI><teiHeader/></TEI>");
        bad("other.xml", "<rss><channel>Grog</channel></rss>");
        bad(
                "external.xml",
                "<!DOCTYPE TEI [<!ENTITY x SYSTEM 'file:///etc/hostname'>]><TEI><text><p>&x;</p>"
                        + "</text></TEI>");
        bad(
                "laughs.xml",
                "<!DOCTYPE TEI [<!ENTITY a 'ha'><!ENTITY b '&a;&a;'>]><TEI><text><p>&b;</p></text>"
                        + "</TEI>");
        bad("undeclared.xml", "<TEI><text><p>&rum;</p></text></TEI>");
        bad(
                "deep.xml",
                "<TEI><text>" + "<p>".repeat(5000) + "x" + "</p>".repeat(5000) + "</text></TEI>");
        bad("encoding.xml", "<?xml version='1.0' encoding='no-such'?><TEI><text>x</text></TEI>");
        bad("empty.html", "");
        bad("script.html", "<script>var grog</script>");
        bad("charset.html", "<meta charset='no-such'><p>Grog");
        bad(
                "lies.html",
                "<meta charset='utf-8'><p>cura\u00e7ao".getBytes(StandardCharsets.ISO_8859_1));
        bad(
                "external.xhtml",
                "<!DOCTYPE html [<!ENTITY x SYSTEM 'file:///etc/hostname'>]><html>&x;");
        odd(
                "latin.html",
                "<meta charset='iso-8859-1'><p>cura\u00e7ao".getBytes(StandardCharsets.ISO_8859_1));
        odd("deep.html", DEEP + "Grog");
        odd("deep-inline.html", "<b>".repeat(20_000) + "Grog");
        odd("tables.html", "<table><tr><td>".repeat(2_000) + "Grog");
        odd("unclosed.html", "<p>Grog <b>rum <i>water</p><li>ale<td>x");
        odd("attributes.html", "<p " + "a='b' ".repeat(20_000) + ">Grog");
        odd(
                "external.dtd.xml",
                "<!DOCTYPE TEI SYSTEM 'file:///no/such.dtd'><TEI><text><p>Grog</p>"
                        + "</text></TEI>");
    }

    private void packed() {
        Map<String, byte[]> good = FormatsTests.one("Grog");
        for (String ending : List.of(".docx", ".odt", ".epub", ".pdf")) {
            bad("empty-" + ending.substring(1) + ending, "");
            bad("words-" + ending.substring(1) + ending, "Grog, rum and water");
            byte[] whole = good.get(ending);
            bad("cut-" + ending.substring(1) + ending, Arrays.copyOf(whole, whole.length / 3));
        }
        bad("other.docx", good.get(".odt"));
        bad("other.odt", good.get(".docx"));
        bad("other.epub", good.get(".docx"));
        bad("a-pdf.docx", good.get(".pdf"));
        bad("rtf.docx", "{\\rtf1 Grog}");
        bad("old.docx", new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0, 0, 0, 0});
        bad("blank.docx", SampleFiles.docx("<w:p/>"));
        bad("broken.docx", SampleFiles.docx("<w:p>"));
        bad(
                "entity.docx",
                SampleFiles.zip(
                        Map.of(
                                "word/document.xml",
                                "<!DOCTYPE d [<!ENTITY x SYSTEM 'file:///etc/hostname'>]><d>&x;</d>")));
        bad(
                "bomb.docx",
                SampleFiles.docx("<w:p><w:r><w:t>" + "a".repeat(3 << 20) + "</w:t></w:r></w:p>"));
        bad("deep.docx", SampleFiles.docx("<w:p>".repeat(2000) + "</w:p>".repeat(2000)));
        Map<String, String> many = SampleFiles.docxParts("<w:p><w:r><w:t>x</w:t></w:r></w:p>");
        for (int i = 0; i < 60; i++) {
            many.put("extra" + i, "");
        }
        bad("parts.docx", SampleFiles.zip(many));
        Map<String, String> odt = SampleFiles.odtParts("", "<text:p>Grog</text:p>");
        odt.put("META-INF/manifest.xml", "<m><file-entry><encryption-data/></file-entry></m>");
        bad("password.odt", SampleFiles.zip(odt));
        Map<String, String> epub = SampleFiles.epubParts("", Map.of("a.xhtml", "<p>Grog</p>"));
        epub.put(
                "META-INF/encryption.xml",
                "<encryption><EncryptedData><EncryptionMethod"
                        + " Algorithm='http://www.w3.org/2001/04/xmlenc#aes256-cbc'/><CipherReference"
                        + " URI='OEBPS/a.xhtml'/></EncryptedData></encryption>");
        bad("rights.epub", SampleFiles.zip(epub));
        bad("no-order.epub", SampleFiles.zip(Map.of("book.opf", "<package/>")));
        bad("no-package.epub", SampleFiles.zip(Map.of("mimetype", "application/epub+zip")));
        Map<String, String> fonts = SampleFiles.epubParts("", Map.of("a.xhtml", "<p>Grog</p>"));
        fonts.put(
                "META-INF/encryption.xml",
                "<encryption><EncryptedData><EncryptionMethod"
                        + " Algorithm='http://www.idpf.org/2008/embedding'/><CipherReference"
                        + " URI='OEBPS/a.xhtml'/></EncryptedData></encryption>");
        odd("fonts.epub", SampleFiles.zip(fonts));
        Map<String, String> lost =
                SampleFiles.epubParts(
                        "", new TreeMap<>(Map.of("a.xhtml", "<p>Grog</p>", "b.xhtml", "x")));
        lost.remove("OEBPS/b.xhtml");
        odd("lost.epub", SampleFiles.zip(lost));
        odd(
                "climbing.docx",
                SampleFiles.zip(
                        new LinkedHashMap<>(
                                Map.of(
                                        "../../evil",
                                        "x",
                                        "word/document.xml",
                                        "<d><p><r><t>Grog</t></r></p></d>"))));
    }

    private void portable() throws IOException {
        String lines = SampleFiles.lines("Grog");
        bad("no-pages.pdf", SampleFiles.pdf(List.of(), "", ""));
        bad("white.pdf", SampleFiles.pdf(List.of(" "), "", ""));
        bad("pages.pdf", SampleFiles.pdf(java.util.Collections.nCopies(30, lines), "", ""));
        bad(
                "cycle.pdf",
                SampleFiles.pdfOf(
                        List.of(
                                "<< /Type /Catalog /Pages 2 0 R >>",
                                "<< /Type /Pages /Kids [2 0 R] /Count 1 >>",
                                "<< >>")));
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DeflaterOutputStream out = new DeflaterOutputStream(packed, new Deflater(9))) {
            out.write(" ".repeat(3 << 20).getBytes(StandardCharsets.US_ASCII));
        }
        bad(
                "swollen.pdf",
                SampleFiles.pdfOf(
                        List.of(
                                "<< /Type /Catalog /Pages 2 0 R >>",
                                "<< /Type /Pages /Kids [4 0 R] /Count 1 >>",
                                "<< >>",
                                "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 9 9] /Contents 5 0 R >>",
                                "<< /Filter /FlateDecode /Length "
                                        + packed.size()
                                        + " >>\nstream\n"
                                        + packed.toString(StandardCharsets.ISO_8859_1)
                                        + "\nendstream")));
        bad(
                "scan.pdf",
                SampleFiles.pdfOf(
                        List.of(
                                "<< /Type /Catalog /Pages 2 0 R >>",
                                "<< /Type /Pages /Kids [4 0 R] /Count 1 >>",
                                "<< >>",
                                "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 9 9] /Contents 5 0 R /Resources <<"
                                        + " /XObject << /I 6 0 R >> >> >>",
                                "<< /Length 5 >>\nstream\n/I Do\nendstream",
                                "<< /Type /XObject /Subtype /Image /Width 1 /Height 1 /ColorSpace /DeviceGray"
                                        + " /BitsPerComponent 8 /Length 1 >>\nstream\nx\nendstream")));
        bad(
                "locked.pdf",
                new String(SampleFiles.pdf(List.of(lines), "", ""), StandardCharsets.ISO_8859_1)
                        .replace(
                                "/Root 1 0 R",
                                "/Root 1 0 R /Encrypt << /Filter /Standard /V 1 /R 2 /O <"
                                        + "41".repeat(32)
                                        + "> /U <"
                                        + "42".repeat(32)
                                        + "> /P -4 >> /ID [<41> <41>]")
                        .getBytes(StandardCharsets.ISO_8859_1));
        odd(
                "no-table.pdf",
                new String(SampleFiles.pdf(List.of(lines), "", ""), StandardCharsets.ISO_8859_1)
                        .replaceAll("startxref\n\\d+", "startxref\n9")
                        .getBytes(StandardCharsets.ISO_8859_1));
        odd("bad-page.pdf", SampleFiles.pdf(List.of(lines, "BT /F9 1 Tf ( Tj [[[ << ET"), "", ""));
    }

    private Library open(FileAccess access) {
        LibraryLayout layout = LibraryLayout.of(folder, folder.resolve("caches"));
        return new LibraryFolder(layout, SourceReaders.of(access))
                .open(Optional.empty(), Progress.SILENT);
    }

    private static List<Problem> of(Library library, String name) {
        return library.allProblems().stream().filter(p -> p.file().equals(name)).toList();
    }

    @Test
    void everyBadFileIsReportedAndEveryOtherOpens() throws IOException {
        plainFiles();
        markdown();
        markUp();
        packed();
        portable();
        assertTrue(refused.size() >= 60, "bad files: " + refused.size());
        Path sources = Files.createDirectories(folder.resolve("sources"));
        for (Map<String, byte[]> files : List.of(refused, opened)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Files.write(sources.resolve(file.getKey()), file.getValue());
            }
        }
        Library library = open(new FileAccess(Opener.SYSTEM, SMALL));
        StringBuilder wrong = new StringBuilder();
        for (String name : refused.keySet()) {
            List<Problem> said = of(library, name);
            boolean errors = said.stream().anyMatch(p -> p.severity() == Problem.Severity.ERROR);
            boolean clear =
                    said.stream()
                            .noneMatch(
                                    p ->
                                            p.reason().contains("failed (")
                                                    || p.reason().contains("null")
                                                    || p.remedy().isBlank());
            if (library.source(name).isPresent() || !errors || !clear) {
                wrong.append(name).append(": ").append(said).append('\n');
            }
        }
        for (String name : opened.keySet()) {
            if (library.source(name).isEmpty()) {
                wrong.append(name)
                        .append(" is odd and should open: ")
                        .append(of(library, name))
                        .append('\n');
            }
        }
        assertEquals("", wrong.toString());
        assertEquals("cura\u00e7ao", library.source("latin.html").orElseThrow().text().toString());
        assertTrue(library.source("deep.html").orElseThrow().text().toString().contains("Grog"));
    }

    @Test
    void whatMayNotBeReadIsSaidSoForEveryUser() throws IOException {
        Path sources = Files.createDirectories(folder.resolve("sources"));
        for (Map.Entry<String, byte[]> file : FormatsTests.one("Grog").entrySet()) {
            Files.write(
                    sources.resolve("shut" + file.getKey().substring(1) + file.getKey()),
                    file.getValue());
        }
        Files.writeString(sources.resolve("good.txt"), "Grog");
        Opener opener =
                file -> {
                    if (file.getFileName().toString().startsWith("shut")) {
                        throw new AccessDeniedException(file.toString());
                    }
                    return Opener.SYSTEM.open(file);
                };
        Library library = open(new FileAccess(opener, SMALL));
        assertEquals(List.of("good.txt"), library.sources().stream().map(Source::id).toList());
        assertEquals(8, library.allProblems().size());
        assertTrue(library.allProblems().stream().allMatch(p -> p.reason().contains("may not be")));
    }

    @Test
    void hugeFilesAreRefusedUnread() throws IOException {
        Path sources = Files.createDirectories(folder.resolve("sources"));
        for (String name : List.of("huge.txt", "huge.md", "huge.xml", "huge.html")) {
            try (RandomAccessFile file =
                    new RandomAccessFile(sources.resolve(name).toFile(), "rw")) {
                file.setLength(200L << 20);
            }
        }
        for (String name : List.of("huge.docx", "huge.odt", "huge.epub", "scan.pdf")) {
            try (RandomAccessFile file =
                    new RandomAccessFile(sources.resolve(name).toFile(), "rw")) {
                file.setLength(600L << 20);
            }
        }
        Library library = open(FileAccess.USUAL);
        assertEquals(8, library.allProblems().size());
        assertTrue(
                library.allProblems().stream().allMatch(p -> p.reason().contains("00 MB")),
                library.allProblems().toString());
    }

    @Test
    void linksFoldersAndNamesOfEveryKind() throws IOException {
        Path sources = Files.createDirectories(folder.resolve("sources"));
        Files.writeString(sources.resolve("good.txt"), "Grog");
        Files.createDirectories(sources.resolve("book.md"));
        Files.writeString(sources.resolve("book.md/inside.txt"), "Flip");
        Files.createSymbolicLink(sources.resolve("round"), sources);
        Files.createSymbolicLink(sources.resolve("gone.txt"), folder.resolve("nowhere.txt"));
        Files.createSymbolicLink(sources.resolve(".#good.txt"), folder.resolve("nobody@host.1"));
        Files.createSymbolicLink(sources.resolve("self.txt"), sources.resolve("self.txt"));
        Files.writeString(sources.resolve("cur\u00e9.txt"), "composed");
        Files.writeString(sources.resolve("cure\u0301.txt"), "decomposed");
        Files.writeString(sources.resolve("old.doc"), "x");
        Files.write(sources.resolve("good.pdf"), FormatsTests.one("Grog").get(".pdf"));
        Files.writeString(sources.resolve("Good.md"), "another case");
        Files.createSymbolicLink(sources.resolve("good.yaml"), folder.resolve("nowhere.yaml"));
        Path deep = sources;
        for (int i = 0; i < 14; i++) {
            deep = Files.createDirectory(deep.resolve("d".repeat(200)));
        }
        Library library = open(new FileAccess(Opener.SYSTEM, SMALL));
        assertEquals(
                List.of("Good.md", "book.md/inside.txt", "cur\u00e9.txt", "good.txt"),
                library.sources().stream().map(Source::id).toList());
        for (String name :
                List.of(
                        "round",
                        "gone.txt",
                        "self.txt",
                        "cur\u00e9.txt",
                        "old.doc",
                        "good.pdf",
                        "good.yaml")) {
            assertEquals(1, of(library, name).size(), name + library.allProblems());
            assertFalse(of(library, name).get(0).remedy().isBlank());
        }
        assertTrue(library.allProblems().stream().anyMatch(p -> p.reason().contains("too deep")));
        assertTrue(library.allProblems().stream().noneMatch(p -> p.file().contains(".#")));
    }

    @Test
    void anEndlessPipeIsNotRead() throws Exception {
        Path sources = Files.createDirectories(folder.resolve("sources"));
        Files.writeString(sources.resolve("good.txt"), "Grog");
        Path pipe = sources.resolve("pipe.txt");
        boolean made;
        try {
            made = new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0;
        } catch (IOException noSuchProgram) {
            made = false;
        }
        org.junit.jupiter.api.Assumptions.assumeTrue(made, "this system makes no pipes");
        Library library = open(new FileAccess(Opener.SYSTEM, SMALL));
        assertEquals(1, library.sources().size());
        assertTrue(of(library, "pipe.txt").get(0).reason().contains("no ordinary file"));
    }

    @Test
    void aReaderThatNeverEndsIsLeftBehind() {
        Limits hasty = new Limits(1, 1, 1, 1, 1, 1, 1, 1, Duration.ofMillis(50));
        SourceReader.Result stuck =
                TimedReading.of(
                        "stuck.pdf",
                        hasty,
                        budget -> {
                            while (!Thread.currentThread().isInterrupted()) {
                                Thread.onSpinWait();
                            }
                            return null;
                        });
        assertTrue(stuck.problems().get(0).reason().contains("given up"));
        SourceReader.Result slow =
                TimedReading.of(
                        "slow.pdf",
                        hasty,
                        budget -> {
                            while (true) {
                                budget.check();
                            }
                        });
        assertTrue(slow.problems().get(0).reason().contains("given up"));
        assertFalse(slow.problems().get(0).remedy().isBlank());
    }

    @Test
    void noTextIsLostInAnyFormat() {
        for (long seed = 1; seed <= 20; seed++) {
            java.util.Random random = new java.util.Random(seed);
            String words = words(random);
            for (Map.Entry<String, byte[]> file : FormatsTests.one(words).entrySet()) {
                String name = "r" + seed + file.getKey();
                SourceReader.Result result = read(name, file.getValue());
                String text = result.source().orElseThrow().text().toString();
                assertEquals(letters(words), letters(text), name);
            }
        }
    }

    private SourceReader.Result read(String name, byte[] bytes) {
        try {
            Path file = Files.write(folder.resolve(name), bytes);
            return SourceReaders.shipped().read(name, file, Circumstances.UNKNOWN);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static String words(java.util.Random random) {
        String[] choice =
                random.nextBoolean()
                        ? new String[] {"rum", "1/2", "gill", "(hot)", "No.", "3;", "\n", "\n\n"}
                        : new String[] {
                            "cura\u00e7ao",
                            "\u00bd",
                            "\ud83c\udf4b",
                            "\u017fugar",
                            "\ufb01ne",
                            "\u2125",
                            "\n\n",
                            "e\u0301au"
                        };
        StringBuilder words = new StringBuilder("Grog");
        for (int i = 0; i < 40; i++) {
            String word = choice[random.nextInt(choice.length)];
            words.append(word.isBlank() ? word : " " + word);
        }
        return words.append(" end").toString();
    }

    private static Map<Integer, Long> letters(String text) {
        Map<Integer, Long> counts = new TreeMap<>();
        text.codePoints()
                .filter(c -> !Character.isWhitespace(c))
                .forEach(c -> counts.merge(c, 1L, Long::sum));
        return counts;
    }
}
