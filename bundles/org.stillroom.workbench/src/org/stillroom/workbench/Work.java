package org.stillroom.workbench;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.ui.di.UISynchronize;
import org.stillroom.model.progress.Progress;

/**
 * Runs engine work away from the window's thread and brings the results back to it.
 *
 * <p>Every task runs as a job whose progress the status bar shows and whose end the user can ask
 * for. Safe to call from any thread; consumers are always called on the window's thread.
 */
public final class Work {
    private final UISynchronize window;
    private final IEventBroker events;
    private final List<Job> running = new CopyOnWriteArrayList<>();

    /** Makes a runner that reports its progress as events. */
    public Work(UISynchronize window, IEventBroker events) {
        this.window = window;
        this.events = events;
    }

    /** A piece of engine work. */
    @FunctionalInterface
    public interface Task<T> {
        /** Does the work, telling how far it has come. */
        T run(Progress progress) throws Exception;
    }

    /**
     * How far the work in hand has come, for the status bar.
     *
     * @param words what is being done, or what is said
     * @param done steps done
     * @param total steps in all, 0 where that is not known
     * @param busy whether something is running
     * @param said whether the words are to stay once all work is done
     */
    public record State(String words, int done, int total, boolean busy, boolean said) {}

    /** Returns a place for tasks of one sort, where a later task takes the place of an earlier. */
    public Lane lane(String family) {
        return new Lane(this, family);
    }

    /** Asks every running task to end. */
    public void stop() {
        running.forEach(Job::cancel);
    }

    /** Tells whether anything is running. */
    public boolean isBusy() {
        return !running.isEmpty();
    }

    /** Tells the user something in the status bar. */
    public void say(String words) {
        events.post(Topics.WORK, new State(words, 0, 0, isBusy(), true));
    }

    /** Starts a task; the lane decides whether its result is still wanted. */
    <T> Job start(
            String name,
            Lane lane,
            Lane.Ticket ticket,
            Task<T> task,
            Consumer<T> done,
            Consumer<String> failed) {
        Job job =
                Job.create(
                        name,
                        (ICoreRunnable)
                                monitor -> {
                                    JobProgress progress = new JobProgress(name, monitor, events);
                                    try {
                                        T result = task.run(progress);
                                        deliver(lane, ticket, () -> done.accept(result));
                                    } catch (CancellationException cancelled) {
                                        deliver(lane, ticket, () -> say(name + ": stopped"));
                                    } catch (Exception | LinkageError failure) {
                                        log(name, failure);
                                        String words = Failures.words(name, failure);
                                        deliver(
                                                lane,
                                                ticket,
                                                () -> {
                                                    say(words);
                                                    failed.accept(words);
                                                });
                                    }
                                });
        job.setSystem(true);
        running.add(job);
        job.addJobChangeListener(new EndOfJob(this::ended));
        job.schedule();
        return job;
    }

    private void ended(Job job) {
        running.remove(job);
        if (running.isEmpty()) {
            events.post(Topics.WORK, new State("", 0, 0, false, false));
        }
    }

    private void deliver(Lane lane, Lane.Ticket ticket, Runnable action) {
        window.asyncExec(
                () -> {
                    if (lane.isCurrent(ticket)) {
                        action.run();
                    }
                });
    }

    private static void log(String name, Throwable failure) {
        Platform.getLog(Work.class)
                .log(
                        new org.eclipse.core.runtime.Status(
                                IStatus.ERROR, Work.class, name + " failed", failure));
    }
}
