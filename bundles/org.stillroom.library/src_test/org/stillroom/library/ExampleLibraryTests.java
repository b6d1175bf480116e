package org.stillroom.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The user's copy of the example outlives every copy of the program. */
class ExampleLibraryTests {

    @TempDir Path folder;

    private Path shipped;
    private Path data;

    @BeforeEach
    void ship() throws IOException {
        shipped = folder.resolve("program/example-that-ships");
        data = folder.resolve("mine");
        write(shipped, "stillroom.json", "{}");
        write(shipped, "sources/card.md", "# Card, first printing");
        write(shipped, "sources/book.md", "# Book");
        write(shipped, "research/journal.jsonl", "of whoever opened the shipped folder");
        write(shipped, ".stillroom/stamp", "a cache");
    }

    @Test
    void copyHoldsTheSourcesAndNothingOfAnotherUser() {
        Path copy = ExampleLibrary.inHand(shipped, data);
        assertTrue(copy.startsWith(data));
        assertTrue(Files.exists(copy.resolve("sources/card.md")));
        assertFalse(Files.exists(copy.resolve("research")));
        assertFalse(Files.exists(copy.resolve(".stillroom")));
    }

    @Test
    void decisionsOutliveTheProgram() throws IOException {
        Path copy = ExampleLibrary.inHand(shipped, data);
        write(copy, "research/journal.jsonl", "a decision");
        Path next = folder.resolve("program/next");
        write(next, "stillroom.json", "{}");
        write(next, "sources/card.md", "# Card, second printing");
        assertEquals(copy, ExampleLibrary.inHand(next, data));
        assertEquals("a decision", Files.readString(copy.resolve("research/journal.jsonl")));
        assertEquals("# Card, second printing", Files.readString(copy.resolve("sources/card.md")));
        assertFalse(Files.exists(copy.resolve("sources/book.md")), "no longer shipped");
    }

    @Test
    void whatTheUserChangedOrDeletedStaysSo() throws IOException {
        Path copy = ExampleLibrary.inHand(shipped, data);
        write(copy, "sources/card.md", "# Card, my own reading of it");
        Files.delete(copy.resolve("sources/book.md"));
        write(copy, "sources/own.md", "# A card of my own");
        write(shipped, "sources/card.md", "# Card, second printing");
        write(shipped, "sources/book.md", "# Book, mended");
        write(shipped, "sources/own.md", "# Another card of that name");
        ExampleLibrary.inHand(shipped, data);
        assertEquals(
                "# Card, my own reading of it", Files.readString(copy.resolve("sources/card.md")));
        assertFalse(Files.exists(copy.resolve("sources/book.md")));
        assertEquals("# A card of my own", Files.readString(copy.resolve("sources/own.md")));
    }

    @Test
    void deletedCopyIsMadeAnew() throws IOException {
        Path copy = ExampleLibrary.inHand(shipped, data);
        Files.delete(copy.resolve(ExampleLibrary.GIVEN));
        Files.delete(copy.resolve("sources/book.md"));
        ExampleLibrary.inHand(shipped, data);
        assertTrue(Files.exists(copy.resolve("sources/book.md")));
    }

    @Test
    void withoutAPlaceToWriteTheShippedFolderServes() throws IOException {
        write(folder, "mine", "a file where the folder would go");
        assertEquals(shipped, ExampleLibrary.inHand(shipped, data));
    }

    private static void write(Path folder, String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }
}
