package org.stillroom.workbench;

import java.util.function.Consumer;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;

/** Hears that a job is over, however it ended. */
final class EndOfJob extends JobChangeAdapter {
    private final Consumer<Job> ended;

    EndOfJob(Consumer<Job> ended) {
        this.ended = ended;
    }

    @Override
    public void done(IJobChangeEvent event) {
        ended.accept(event.getJob());
    }
}
