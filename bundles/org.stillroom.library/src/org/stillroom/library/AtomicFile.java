package org.stillroom.library;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes a file whole or not at all.
 *
 * <p>The new content goes to a file beside it, is forced to the disk and then takes the old one's
 * name in one step; a crash leaves either the old file or the new one.
 */
public final class AtomicFile {

    private AtomicFile() {}

    /** Writes a text in UTF-8. */
    public static void write(Path file, String text) throws IOException {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Writes bytes. */
    public static void write(Path file, byte[] bytes) throws IOException {
        Path target = file.toAbsolutePath();
        Files.createDirectories(target.getParent());
        String name = "." + target.getFileName() + "." + ProcessHandle.current().pid();
        Path fresh = target.resolveSibling(name + "." + System.nanoTime() + ".writing");
        try {
            try (FileChannel out =
                    FileChannel.open(
                            fresh, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                ByteBuffer buffer = ByteBuffer.wrap(bytes);
                while (buffer.hasRemaining()) {
                    out.write(buffer);
                }
                out.force(true);
            }
            Files.move(
                    fresh,
                    target,
                    StandardCopyOption.ATOMIC_MOVE,
                    StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }
}
