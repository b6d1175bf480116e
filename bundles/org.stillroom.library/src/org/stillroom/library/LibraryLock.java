package org.stillroom.library;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * The right to write a library's caches, held by one program at a time.
 *
 * <p>The operating system gives it back when the program ends, however it ends, so that a crash
 * never locks a library.
 */
public final class LibraryLock implements AutoCloseable {

    private static final String NAME = "lock";

    private final FileChannel channel;
    private final FileLock lock;

    private LibraryLock(FileChannel channel, FileLock lock) {
        this.channel = channel;
        this.lock = lock;
    }

    /**
     * Takes the lock of a folder of caches.
     *
     * @return the lock, or nothing where another program holds it
     * @throws IOException where the folder cannot be written
     */
    public static Optional<LibraryLock> tryTake(Path caches) throws IOException {
        Files.createDirectories(caches);
        FileChannel channel =
                FileChannel.open(
                        caches.resolve(NAME), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            FileLock lock = channel.tryLock();
            if (lock == null) {
                channel.close();
                return Optional.empty();
            }
            String owner = "process " + ProcessHandle.current().pid() + "\n";
            channel.truncate(0);
            channel.write(java.nio.ByteBuffer.wrap(owner.getBytes(StandardCharsets.UTF_8)));
            return Optional.of(new LibraryLock(channel, lock));
        } catch (OverlappingFileLockException sameProgram) {
            channel.close();
            return Optional.empty();
        } catch (IOException e) {
            channel.close();
            throw e;
        }
    }

    /** Gives the lock back. */
    @Override
    public void close() throws IOException {
        lock.release();
        channel.close();
    }
}
