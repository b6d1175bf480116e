package org.stillroom.model.progress;

import java.util.concurrent.CancellationException;

/**
 * Hears how far a long piece of work has come, and can end it.
 *
 * <p>The engine's own contract, so that it needs no toolkit; a window or a command line adapts it.
 */
public interface Progress {

    /** A listener that hears nothing and never cancels. */
    Progress SILENT =
            new Progress() {
                @Override
                public void begin(String task, int steps) {
                    // nobody listens
                }

                @Override
                public void step(int steps) {
                    // nobody listens
                }

                @Override
                public boolean isCancelled() {
                    return false;
                }
            };

    /**
     * Starts a task, or the next part of one.
     *
     * @param task what is being done, in words for the user
     * @param steps how many steps it takes, 0 where that is not known
     */
    void begin(String task, int steps);

    /** Tells that so many more steps are done. */
    void step(int steps);

    /** Tells whether the user wants the work to end. */
    boolean isCancelled();

    /** Ends the work by a {@link CancellationException} where the user wants it to end. */
    default void check() {
        if (isCancelled()) {
            throw new CancellationException("Cancelled");
        }
    }
}
