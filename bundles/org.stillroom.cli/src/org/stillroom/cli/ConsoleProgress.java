package org.stillroom.cli;

import java.io.PrintStream;
import org.stillroom.model.progress.Progress;

/**
 * Tells on standard error how far work has come, once it takes longer than a second.
 *
 * <p>One line, written over; on close it is wiped, so that nothing is left between answers.
 */
final class ConsoleProgress implements Progress, AutoCloseable {

    private static final long PATIENCE = 1_000_000_000L;
    private static final long REFRESH = 200_000_000L;

    private final PrintStream err;
    private final long start = System.nanoTime();
    private long lastShown;
    private String task = "";
    private int steps;
    private int done;
    private int shownLength;

    ConsoleProgress(PrintStream err) {
        this.err = err;
    }

    @Override
    public synchronized void begin(String newTask, int newSteps) {
        task = newTask;
        steps = newSteps;
        done = 0;
        show();
    }

    @Override
    public synchronized void step(int more) {
        done += more;
        show();
    }

    @Override
    public boolean isCancelled() {
        return Thread.currentThread().isInterrupted();
    }

    private void show() {
        long now = System.nanoTime();
        if (now - start < PATIENCE || now - lastShown < REFRESH) {
            return;
        }
        lastShown = now;
        String words =
                task + (steps > 0 ? " " + Math.min(done, steps) + " of " + steps : "") + " …";
        err.print("\r" + words + " ".repeat(Math.max(0, shownLength - words.length())));
        err.flush();
        shownLength = words.length();
    }

    @Override
    public synchronized void close() {
        if (shownLength > 0) {
            err.print("\r" + " ".repeat(shownLength) + "\r");
            err.flush();
            shownLength = 0;
        }
    }
}
