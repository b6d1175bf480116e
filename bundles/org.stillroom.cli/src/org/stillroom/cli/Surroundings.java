package org.stillroom.cli;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Where the command line was started.
 *
 * @param library the library that the start script names, if it names one
 * @param example the example library, if this copy has it
 * @param caches where caches go that must not lie in a library
 * @param folder the folder that commands are relative to
 */
record Surroundings(Optional<Path> library, Optional<Path> example, Path caches, Path folder) {}
