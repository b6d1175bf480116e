package org.stillroom.cli;

/** What a command tells the shell. */
final class ExitCode {

    /** Answered. */
    static final int OK = 0;

    /** It cannot be answered as it was put. */
    static final int REFUSED = 1;

    /** The command's words are wrong. */
    static final int USAGE = 2;

    /** A fault of the program. */
    static final int FAULT = 70;

    /** A file could not be written. */
    static final int NOT_WRITTEN = 74;

    /** The user stopped it. */
    static final int STOPPED = 130;

    private ExitCode() {}
}
