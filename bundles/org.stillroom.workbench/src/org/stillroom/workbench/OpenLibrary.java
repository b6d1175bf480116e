package org.stillroom.workbench;

import java.nio.file.Path;
import java.util.Optional;
import jakarta.inject.Inject;

/** The library that is open in the window. */
public final class OpenLibrary {
    private final Work work;
    private Optional<Path> folder = Optional.empty();

    /** Makes a window's library, none being open. */
    @Inject
    public OpenLibrary(Work work) {
        this.work = work;
    }

    public Optional<Path> folder() {
        return folder;
    }

    public void open(Path path) {
        folder = Optional.of(path);
        work.say("Open " + path);
    }

    public void reread() {}
}
