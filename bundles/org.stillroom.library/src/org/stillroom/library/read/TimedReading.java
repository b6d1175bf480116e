package org.stillroom.library.read;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Reads a file on a thread of its own that is left behind when the file takes too long.
 *
 * <p>A parser that was not made for bad files may run for ever without looking at the time; then
 * nobody waits for it any longer.
 */
final class TimedReading {

    /** Nested mark-up is walked by recursion in the libraries used. */
    private static final long STACK = 8L * 1024 * 1024;

    /** What is left to a reader that looks at the time itself, to end by itself. */
    private static final long GRACE_MILLIS = 500;

    /** Reads a file. */
    @FunctionalInterface
    interface Task {
        /** Reads the file, in the time that the budget gives. */
        SourceReader.Result read(TimeBudget budget) throws Refused;
    }

    private TimedReading() {}

    /** Returns what a task read, or the reason why it read nothing. */
    static SourceReader.Result of(String id, Limits limits, Task task) {
        TimeBudget budget = new TimeBudget(id, limits.patience());
        FutureTask<SourceReader.Result> reading = new FutureTask<>(() -> task.read(budget));
        Thread thread = new Thread(null, reading, "reading " + id, STACK);
        thread.setDaemon(true);
        thread.start();
        try {
            return await(reading, budget);
        } catch (ExecutionException e) {
            return SourceReader.Result.failed(Failures.problem(id, budget, e.getCause()));
        } catch (TimeoutException e) {
            reading.cancel(true);
            return SourceReader.Result.failed(budget.problem());
        } catch (InterruptedException e) {
            reading.cancel(true);
            Thread.currentThread().interrupt();
            return SourceReader.Result.failed(
                    Refused.of(id, "Reading it was broken off.", "Open the library again.")
                            .problem());
        }
    }

    private static SourceReader.Result await(
            FutureTask<SourceReader.Result> reading, TimeBudget budget)
            throws ExecutionException, InterruptedException, TimeoutException {
        while (true) {
            long left = budget.leftMillis() + GRACE_MILLIS;
            try {
                return reading.get(Math.max(1, left), TimeUnit.MILLISECONDS);
            } catch (TimeoutException e) {
                if (budget.leftMillis() + GRACE_MILLIS <= 0) {
                    throw e;
                }
            }
        }
    }
}
