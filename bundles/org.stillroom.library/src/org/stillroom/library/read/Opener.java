package org.stillroom.library.read;

import java.io.IOException;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;

/** Opens files to be read, and only read. */
@FunctionalInterface
interface Opener {

    /** Opens files as the system does. */
    Opener SYSTEM = file -> Files.newByteChannel(file);

    /**
     * Opens a file.
     *
     * @throws IOException where it is not there, may not be read or cannot be
     */
    SeekableByteChannel open(Path file) throws IOException;
}
