package org.stillroom.workbench;

import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.util.Optional;

/** Puts failures into words for a reader; the details go to the log. */
final class Failures {
    private Failures() {}

    static String words(String task, Throwable failure) {
        return switch (failure) {
            case NoSuchFileException gone ->
                    task + ": there is no " + gone.getFile() + ". Choose another folder.";
            case AccessDeniedException denied ->
                    task + ": " + denied.getFile()
                            + " may not be read. Give yourself the right to read it.";
            case java.io.IOException io -> task + ": " + message(io);
            case IllegalArgumentException bad -> task + ": " + message(bad);
            default -> task + " failed: " + message(failure) + " The log has the details.";
        };
    }

    private static String message(Throwable failure) {
        String words = Optional.ofNullable(failure.getMessage()).orElse("").strip();
        String sentence = words.isEmpty() ? failure.getClass().getSimpleName() : words;
        return sentence.endsWith(".") ? sentence : sentence + ".";
    }
}
