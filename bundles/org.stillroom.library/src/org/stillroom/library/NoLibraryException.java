package org.stillroom.library;

import java.nio.file.Path;

/** Tells that a folder cannot be opened as a library at all. */
public final class NoLibraryException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Path folder;
    private final String remedy;

    /**
     * Makes the exception.
     *
     * @param folder the folder that was named
     * @param reason what is wrong, a sentence
     * @param remedy the nearest thing that would work, a sentence
     */
    public NoLibraryException(Path folder, String reason, String remedy) {
        super(reason);
        this.folder = folder;
        this.remedy = remedy;
    }

    /** Returns the folder that was named. */
    public Path folder() {
        return folder;
    }

    /** Returns the nearest thing that would work. */
    public String remedy() {
        return remedy;
    }
}
