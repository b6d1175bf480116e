package org.stillroom.workbench.tests;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Watches how long our own code keeps the window's thread in one go.
 *
 * <p>Looks at the thread's stack every few milliseconds and adds up the processor time of what we
 * wrote, as long as one event is being worked at; the toolkit's own layout, drawing and styling
 * do not count. Processor time, not time by the clock, so that a busy machine changes nothing.
 */
final class UiWatch implements AutoCloseable {
    private static final int PAUSE_MILLIS = 2;
    private static final String OURS = "org.stillroom.";
    private static final List<String> TOOLKIT =
            List.of(
                    "org.eclipse.",
                    "org.osgi.",
                    "org.apache.felix.",
                    "org.w3c.",
                    "org.apache.batik.");
    private static final List<String> JAVA = List.of("java.", "javax.", "jdk.", "sun.", "com.sun.");

    private final ThreadMXBean times = ManagementFactory.getThreadMXBean();
    private final Thread watched;
    private final Thread watcher = new Thread(this::watch, "watch over the window");
    private volatile boolean over;
    private long longest;
    private String where = "";

    private UiWatch(Thread watched) {
        this.watched = watched;
        watcher.setDaemon(true);
    }

    /** Starts to watch a thread. */
    static UiWatch on(Thread thread) {
        UiWatch watch = new UiWatch(thread);
        watch.watcher.start();
        return watch;
    }

    private void watch() {
        long before = times.getThreadCpuTime(watched.threadId());
        long run = 0;
        while (!over) {
            pause();
            StackTraceElement[] stack = watched.getStackTrace();
            long now = times.getThreadCpuTime(watched.threadId());
            if (isWorkingForUs(stack)) {
                run += isOurs(stack) ? now - before : 0;
                keep(run, stack);
            } else {
                run = 0;
            }
            before = now;
        }
    }

    private static void pause() {
        try {
            Thread.sleep(PAUSE_MILLIS);
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }

    private synchronized void keep(long run, StackTraceElement[] stack) {
        if (run > longest) {
            longest = run;
            where =
                    String.join(
                            "\n",
                            Arrays.stream(stack)
                                    .limit(30)
                                    .map(StackTraceElement::toString)
                                    .toList());
        }
    }

    /** Tells whether code of ours stands above the loop that hands out the events. */
    private static boolean isWorkingForUs(StackTraceElement[] stack) {
        for (StackTraceElement frame : stack) {
            if (frame.getMethodName().equals("readAndDispatch")) {
                return false;
            }
            if (frame.getClassName().startsWith(OURS)) {
                return true;
            }
        }
        return false;
    }

    /** Tells whether what runs at the very top, leaving Java's own library out, is no toolkit. */
    private static boolean isOurs(StackTraceElement[] stack) {
        Optional<String> top =
                Arrays.stream(stack)
                        .map(StackTraceElement::getClassName)
                        .filter(name -> JAVA.stream().noneMatch(name::startsWith))
                        .findFirst();
        return top.filter(name -> TOOLKIT.stream().noneMatch(name::startsWith)).isPresent();
    }

    /** Returns the longest time in one go, in milliseconds. */
    synchronized long longestMillis() {
        return longest / 1_000_000;
    }

    /** Returns what was being done then. */
    synchronized String where() {
        return longestMillis() + " ms at\n" + where;
    }

    @Override
    public void close() {
        over = true;
        try {
            watcher.join();
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }
}
