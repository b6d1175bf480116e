package org.stillroom.workbench;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.e4.core.services.events.IEventBroker;
import org.stillroom.model.progress.Progress;

/** Shows the engine's progress in the status bar, a few times a second at most. */
final class JobProgress implements Progress {
    private static final long PAUSE_NANOS = 80_000_000L;

    private final String name;
    private final IProgressMonitor monitor;
    private final IEventBroker events;
    private String task = "";
    private int total;
    private int done;
    private long told;

    JobProgress(String name, IProgressMonitor monitor, IEventBroker events) {
        this.name = name;
        this.monitor = monitor;
        this.events = events;
        tell();
    }

    @Override
    public synchronized void begin(String nextTask, int steps) {
        task = nextTask;
        total = steps;
        done = 0;
        tell();
    }

    @Override
    public synchronized void step(int steps) {
        done += steps;
        if (System.nanoTime() - told > PAUSE_NANOS) {
            tell();
        }
    }

    @Override
    public boolean isCancelled() {
        return monitor.isCanceled();
    }

    private void tell() {
        told = System.nanoTime();
        String words = task.isEmpty() ? name : name + ": " + task;
        events.post(Topics.WORK, new Work.State(words, done, total, true, false));
    }
}
