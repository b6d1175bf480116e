package org.stillroom.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.source.Mark;
import org.stillroom.model.source.Source;
import org.stillroom.model.source.Trade;

class LibraryFolderTests {

    private static final String GOOD =
            "---\ntitle: A Book\nauthor: Ann Example\nplace: Saltreath, GB\ntext-date: 186X\n"
                    + "trade: bar\n---\n# Punch\n\nTake *two* lemons.\n";

    @TempDir Path folder;

    private void put(String name, String text) throws IOException {
        put(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private void put(String name, byte[] bytes) throws IOException {
        Path file = folder.resolve("sources").resolve(name);
        Files.createDirectories(file.getParent());
        Files.write(file, bytes);
    }

    private Library open() {
        return LibraryFolder.of(folder, folder.resolve("caches"))
                .open(Optional.empty(), Progress.SILENT);
    }

    @Test
    void markdownKeepsItsWordsAndTellsItsBibliography() throws IOException {
        put("book.md", GOOD);
        Source source = open().source("book.md").orElseThrow();
        assertEquals("# Punch\n\nTake *two* lemons.\n", source.text().toString());
        assertEquals(Optional.of(Trade.BAR), source.bibliography().trade());
        assertEquals("186X", source.bibliography().textDate().orElseThrow().toString());
        assertEquals(Optional.of("GB"), source.bibliography().place().orElseThrow().country());
        Mark heading =
                source.marks().stream()
                        .filter(m -> m.kind() == Mark.Kind.HEADING)
                        .findFirst()
                        .orElseThrow();
        assertEquals("# Punch", source.text().slice(heading.span()));
        Mark italic =
                source.marks().stream()
                        .filter(m -> m.kind() == Mark.Kind.EMPHASIS)
                        .findFirst()
                        .orElseThrow();
        assertEquals("*two*", source.text().slice(italic.span()));
    }

    @Test
    void plainTextTakesItsSidecar() throws IOException {
        put("card.txt", "Grog.\r\nOne gill of rum.\r\n");
        put("card.yaml", "title: A Card\ntext-date: 1862~\n");
        Source source = open().source("card.txt").orElseThrow();
        assertEquals("A Card", source.bibliography().title());
        assertTrue(source.bibliography().date().orElseThrow().isApproximate());
        assertEquals("Grog.\nOne gill of rum.\n", source.text().toString());
    }

    @Test
    void teiGivesWordsMarksAndBibliography() throws IOException {
        put(
                "book.xml",
                "<?xml version='1.0'?><TEI xmlns='http://www.tei-c.org/ns/1.0'><teiHeader>"
                        + "<fileDesc><titleStmt><title>File</title></titleStmt>"
                        + "<sourceDesc><bibl><title>The Book</title><author>A. N. Author</author>"
                        + "<pubPlace>Saltreath, GB</pubPlace><date when='1811'>1811</date></bibl>"
                        + "</sourceDesc></fileDesc></teiHeader><text><body>"
                        + "<pb n='3'/><div type='recipe'><head>Negus</head>"
                        + "<p>A pint of <hi>port</hi>,<lb/> a lemon &amp; sugar.</p></div>"
                        + "</body></text></TEI>");
        Source source = open().source("book.xml").orElseThrow();
        assertEquals("The Book", source.bibliography().title());
        assertEquals("1811", source.bibliography().textDate().orElseThrow().toString());
        assertEquals(
                "Negus\n\nA pint of port,\na lemon & sugar.", source.text().toString().strip());
        Mark recipe =
                source.marks().stream()
                        .filter(m -> m.kind() == Mark.Kind.RECIPE)
                        .findFirst()
                        .orElseThrow();
        assertTrue(source.text().slice(recipe.span()).startsWith("Negus"));
        assertTrue(source.marks().stream().anyMatch(m -> m.kind() == Mark.Kind.PAGE));
    }

    @Test
    void eachBadFileIsReportedAndTheRestOpens() throws IOException {
        put("good.md", GOOD);
        put("empty.txt", "");
        put("binary.txt", new byte[] {'a', '\n', 0, 1, 2});
        put("latin.txt", new byte[] {'o', 'k', '\n', 'c', 'u', 'r', 'a', (byte) 0xE7, 'a', 'o'});
        put("open-fence.md", "---\ntitle: never closed\nText.\n");
        put("bad-yaml.md", "---\ntitle: 'open\nauthor: x\n---\nText here.\n");
        put("broken.xml", "<TEI>\n<text>\n<p>never closed</text></TEI>");
        put(
                "entity.xml",
                "<!DOCTYPE TEI [<!ENTITY x SYSTEM 'file:///etc/passwd'>]><TEI><text><p>&x;</p>"
                        + "</text></TEI>");
        Library library = open();
        assertTrue(library.source("good.md").isPresent());
        assertEquals(1, line(library, "empty.txt").size());
        assertProblem(library, "binary.txt", 2, "zero byte");
        assertProblem(library, "latin.txt", 2, "UTF-8");
        assertProblem(library, "open-fence.md", 1, "no closing line");
        assertProblem(library, "bad-yaml.md", 2, "not YAML");
        assertProblem(library, "broken.xml", 3, "not well-formed");
        assertProblem(library, "entity.xml", 1, "entity");
        assertTrue(library.source("entity.xml").isEmpty());
    }

    private static List<Problem> line(Library library, String file) {
        return library.allProblems().stream().filter(p -> p.file().equals(file)).toList();
    }

    private static void assertProblem(Library library, String file, int line, String words) {
        List<Problem> found = line(library, file);
        assertTrue(
                found.stream()
                        .anyMatch(
                                p ->
                                        p.reason().contains(words)
                                                && p.line().orElse(0) >= line
                                                && !p.remedy().isBlank()),
                file + ": " + found);
    }

    @Test
    void aHugeFileIsRefusedWithAReasonAndUnread() throws IOException {
        put("good.md", GOOD);
        Path huge = folder.resolve("sources/huge.txt");
        try (var file = new java.io.RandomAccessFile(huge.toFile(), "rw")) {
            file.setLength(200L * 1024 * 1024);
        }
        Library library = open();
        assertEquals(1, library.sources().size());
        assertTrue(line(library, "huge.txt").get(0).reason().contains("200 MB"));
    }

    @Test
    void wrongFieldsNameTheNearestThatWouldWork() throws IOException {
        put("book.md", "---\ntilte: X\ntext-date: c. 1862\ntrade: barr\n---\nText.\n");
        List<Problem> problems = open().allProblems();
        assertEquals(3, problems.size(), problems.toString());
        assertTrue(problems.stream().anyMatch(p -> p.remedy().contains("“title”")));
        assertTrue(problems.stream().anyMatch(p -> p.remedy().contains("1862~")));
        assertTrue(problems.stream().anyMatch(p -> p.remedy().contains("“bar”")));
    }

    @Test
    void unchangedFilesAreTakenUnread() throws IOException {
        put("a.md", GOOD);
        put("b.md", GOOD);
        LibraryFolder opener = LibraryFolder.of(folder, folder.resolve("caches"));
        Library first = opener.open(Optional.empty(), Progress.SILENT);
        put("b.md", GOOD + "More words.\n");
        Library second = opener.open(Optional.of(first), Progress.SILENT);
        assertSame(first.files().get(0), second.files().get(0));
        assertFalse(second.files().get(1).equals(first.files().get(1)));
    }

    @Test
    void aBareFolderIsALibraryOfItsTexts() throws IOException {
        Files.writeString(folder.resolve("one.txt"), "Grog.\nRum and water.\n");
        Files.writeString(folder.resolve("README.md"), "About these texts.\n");
        Library library = open();
        assertEquals(1, library.sources().size());
        assertFalse(library.layout().cache().startsWith(folder.resolve(".stillroom")));
    }

    @Test
    void aFolderThatIsNotThereIsSaidSo() {
        LibraryFolder opener = LibraryFolder.of(folder.resolve("absent"), folder);
        NoLibraryException e =
                assertThrows(
                        NoLibraryException.class,
                        () -> opener.open(Optional.empty(), Progress.SILENT));
        assertTrue(e.getMessage().contains("There is no folder"));
        assertFalse(e.remedy().isBlank());
    }

    @Test
    void onlyOneProgramHoldsTheLock() throws IOException {
        try (LibraryLock first = LibraryLock.tryTake(folder).orElseThrow()) {
            assertTrue(LibraryLock.tryTake(folder).isEmpty());
        }
        LibraryLock.tryTake(folder).orElseThrow().close();
    }

    @Test
    void aChangeOnDiskIsNoticed() throws Exception {
        put("a.md", GOOD);
        var told = new java.util.concurrent.CountDownLatch(1);
        LibraryLayout layout = LibraryLayout.of(folder, folder.resolve("caches"));
        try (LibraryWatcher watcher = LibraryWatcher.start(layout, told::countDown)) {
            put("a.md", GOOD + "More.\n");
            assertTrue(told.await(15, java.util.concurrent.TimeUnit.SECONDS));
        }
    }
}
