package org.stillroom.workbench;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.core.runtime.jobs.Job;

/**
 * A place for tasks of one sort: starting one ends the one before, whose result is dropped.
 *
 * <p>A part keeps one lane for each thing that it shows and closes it when the part goes, so that
 * no result reaches a widget that is gone.
 */
public final class Lane implements AutoCloseable {
    private final Work work;
    private final String family;
    private Optional<Job> current = Optional.empty();
    private Ticket ticket = new Ticket();
    private boolean closed;

    Lane(Work work, String family) {
        this.work = work;
        this.family = family;
    }

    /** Stands for one started task. */
    static final class Ticket {}

    /** Starts a task; a failure is told in the status bar alone. */
    public <T> void run(Work.Task<T> task, Consumer<T> done) {
        run(task, done, words -> {});
    }

    /** Starts a task; a failure is told in the status bar and to the consumer. */
    public synchronized <T> void run(Work.Task<T> task, Consumer<T> done, Consumer<String> failed) {
        if (closed) {
            return;
        }
        current.ifPresent(Job::cancel);
        ticket = new Ticket();
        current = Optional.of(work.start(family, this, ticket, task, done, failed));
    }

    /** Ends the running task and drops its result. */
    public synchronized void cancel() {
        current.ifPresent(Job::cancel);
        ticket = new Ticket();
    }

    @Override
    public synchronized void close() {
        closed = true;
        cancel();
    }

    synchronized boolean isCurrent(Ticket asked) {
        return !closed && ticket == asked;
    }
}
