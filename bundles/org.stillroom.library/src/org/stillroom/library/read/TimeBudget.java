package org.stillroom.library.read;

import java.time.Duration;
import org.stillroom.model.explain.Problem;

/**
 * The time that a file may take: some seconds, and more for every word that it yields.
 *
 * <p>A large book is read to its end, while a file that yields nothing is given up soon. Used by the
 * thread that reads and by the one that waits for it.
 */
final class TimeBudget {

    /** Slower than any healthy file: a book of 1 MB may take 50 s more. */
    private static final long NANOS_PER_CHARACTER = 50_000;

    /** A large file takes its time before its first word: 1 MB some 0.3 s on a busy machine. */
    private static final long NANOS_PER_BYTE = 300;

    /** Tells a parser that takes no checked exceptions that the time is over. */
    static final class Over extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Over() {
            super("The time is over", null, false, false);
        }
    }

    private final String id;
    private final Duration patience;
    private final long start = System.nanoTime();
    private volatile long allowed;

    TimeBudget(String id, Duration patience) {
        this.id = id;
        this.patience = patience;
        this.allowed = patience.toNanos();
    }

    /** Adds the time that these words earned. */
    void gained(int characters) {
        allowed += NANOS_PER_CHARACTER * characters;
    }

    /** Adds the time that so many bytes of a file, or characters of mark-up, need to be gone through. */
    void taken(int size) {
        allowed += NANOS_PER_BYTE * size;
    }

    /** Returns what is left in milliseconds, 0 or less when it is over. */
    long leftMillis() {
        return (allowed - (System.nanoTime() - start)) / 1_000_000;
    }

    /**
     * Goes on while there is time.
     *
     * @throws Over when it is over
     */
    void check() {
        if (System.nanoTime() - start > allowed) {
            throw new Over();
        }
    }

    /** Returns what to say when it is over. */
    Problem problem() {
        return Problem.error(
                id,
                "It was given up after "
                        + Math.max(1, patience.toSeconds())
                        + " s without getting at more of its words.",
                "It is probably damaged: open it in the program that it comes from, save it "
                        + "again, or save its words as plain text.");
    }
}
