package org.stillroom.cli;

import java.io.PrintStream;

/**
 * The two streams that a command writes to.
 *
 * @param out the answer
 * @param err progress and what went wrong
 */
record Terminal(PrintStream out, PrintStream err) {}
