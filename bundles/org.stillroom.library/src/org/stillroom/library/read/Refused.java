package org.stillroom.library.read;

import org.stillroom.model.explain.Problem;

/** Tells why a source cannot be had from a file. */
final class Refused extends Exception {

    private static final long serialVersionUID = 1L;
    private final transient Problem problem;

    Refused(Problem problem) {
        super(problem.reason());
        this.problem = problem;
    }

    /** Returns a refusal of a whole file. */
    static Refused of(String id, String reason, String remedy) {
        return new Refused(Problem.error(id, reason, remedy));
    }

    Problem problem() {
        return problem;
    }
}
