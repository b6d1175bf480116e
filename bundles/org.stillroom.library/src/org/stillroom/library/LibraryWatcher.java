package org.stillroom.library;

import java.io.IOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.concurrent.TimeUnit;

/**
 * Notices changes in a library's folder and tells once they have come to rest.
 *
 * <p>Editors save by writing a new file and renaming it, so a change is a burst of events; after
 * half a second without one, or where events were lost, the listener is told to open the library
 * again. What changed is found by comparing sizes and times, never by trusting the events.
 */
public final class LibraryWatcher implements AutoCloseable {

    private static final long REST_MILLIS = 500;

    private final WatchService service;
    private final LibraryLayout layout;
    private final Thread thread;

    private LibraryWatcher(WatchService service, LibraryLayout layout, Runnable onChange) {
        this.service = service;
        this.layout = layout;
        this.thread = new Thread(() -> watch(onChange), "library-watcher");
        thread.setDaemon(true);
    }

    /**
     * Starts to watch a library.
     *
     * @param onChange called on a thread of the watcher's own, after each burst of changes
     * @throws IOException where the system cannot watch the folder
     */
    public static LibraryWatcher start(LibraryLayout layout, Runnable onChange) throws IOException {
        LibraryWatcher watcher =
                new LibraryWatcher(
                        layout.root().getFileSystem().newWatchService(), layout, onChange);
        watcher.registerAll();
        watcher.thread.start();
        return watcher;
    }

    private void registerAll() throws IOException {
        register(layout.root());
        if (!layout.isBare()) {
            registerTree(layout.sources());
            registerTree(layout.knowledge());
            registerTree(layout.research());
        }
    }

    private void registerTree(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return;
        }
        Files.walkFileTree(
                folder,
                new SimpleFileVisitor<>() {
                    @Override
                    public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes a)
                            throws IOException {
                        register(dir);
                        return FileVisitResult.CONTINUE;
                    }

                    @Override
                    public FileVisitResult visitFileFailed(Path file, IOException e) {
                        return FileVisitResult.CONTINUE;
                    }
                });
    }

    private void register(Path folder) throws IOException {
        folder.register(
                service,
                StandardWatchEventKinds.ENTRY_CREATE,
                StandardWatchEventKinds.ENTRY_MODIFY,
                StandardWatchEventKinds.ENTRY_DELETE);
    }

    private void watch(Runnable onChange) {
        try {
            while (true) {
                boolean relevant = take(service.take());
                WatchKey next = service.poll(REST_MILLIS, TimeUnit.MILLISECONDS);
                while (next != null) {
                    relevant |= take(next);
                    next = service.poll(REST_MILLIS, TimeUnit.MILLISECONDS);
                }
                if (relevant) {
                    registerAll();
                    onChange.run();
                }
            }
        } catch (InterruptedException | ClosedWatchServiceException closed) {
            Thread.currentThread().interrupt();
        } catch (IOException folderGone) {
            onChange.run();
        }
    }

    /** Tells whether one of the events concerns a part that the user writes. */
    private boolean take(WatchKey key) {
        boolean relevant = false;
        for (var event : key.pollEvents()) {
            boolean lost = event.kind() == StandardWatchEventKinds.OVERFLOW;
            String name = String.valueOf(event.context());
            relevant |= lost || !name.startsWith(".");
        }
        key.reset();
        return relevant;
    }

    /** Stops to watch. */
    @Override
    public void close() throws IOException {
        service.close();
        thread.interrupt();
    }
}
