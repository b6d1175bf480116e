package org.stillroom.workbench.tests;

import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

/** A thread that runs one thing after another until the tests end. */
final class UiThread {
    private final BlockingQueue<Runnable> waiting = new LinkedBlockingQueue<>();
    private final Thread thread = new Thread(this::work, "window");

    UiThread() {
        thread.setDaemon(true);
        thread.start();
    }

    Thread thread() {
        return thread;
    }

    void execute(Runnable action) {
        waiting.add(action);
    }

    private void work() {
        try {
            while (true) {
                waiting.take().run();
            }
        } catch (InterruptedException over) {
            Thread.currentThread().interrupt();
        }
    }
}
