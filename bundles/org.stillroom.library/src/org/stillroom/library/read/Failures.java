package org.stillroom.library.read;

import org.stillroom.model.explain.Problem;

/** Says what went wrong where a parser failed in a way that its caller could not foresee. */
final class Failures {

    private static final String AGAIN =
            "Open it in the program that it comes from and save it again, or save its words as "
                    + "plain text.";

    private Failures() {}

    static Problem problem(String id, TimeBudget budget, Throwable failure) {
        if (failure instanceof Refused refused) {
            return refused.problem();
        }
        for (Throwable t = failure; t != null; t = t.getCause()) {
            if (t instanceof TimeBudget.Over) {
                return budget.problem();
            }
        }
        return problem(id, failure);
    }

    static Problem problem(String id, Throwable failure) {
        if (failure instanceof StackOverflowError) {
            return Problem.error(id, "Its parts are nested too deeply to be read.", AGAIN);
        }
        if (failure instanceof OutOfMemoryError) {
            return Problem.error(id, "Reading it takes more memory than there is.", AGAIN);
        }
        return Problem.error(
                id,
                "Reading it failed (" + failure.getClass().getSimpleName() + ").",
                AGAIN + " Everything else opened.");
    }
}
