package org.stillroom.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.stillroom.inquiry.Premises;

/**
 * Where the command line was started.
 *
 * @param library the library that the start script names, if it names one
 * @param premises where this copy keeps its example and its caches
 * @param folder the folder that commands are relative to
 * @param command what was typed to start the program, for hints (“releng/stillroom”)
 */
record Surroundings(Optional<Path> library, Premises premises, Path folder, String command) {}
