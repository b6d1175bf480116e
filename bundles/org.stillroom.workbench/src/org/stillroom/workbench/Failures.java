package org.stillroom.workbench;

import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.util.Optional;
import org.stillroom.inquiry.InquiryException;
import org.stillroom.search.SearchException;

/** Puts failures into words for a reader; the details go to the log. */
final class Failures {
    private Failures() {}

    static String words(String task, Throwable failure) {
        return switch (failure) {
            case InquiryException asked -> asked.getMessage() + " " + asked.remedy();
            case SearchException asked -> asked.getMessage() + " " + asked.remedy();
            case NoSuchFileException gone ->
                    task + ": there is no " + gone.getFile() + ". Choose another folder.";
            case AccessDeniedException denied ->
                    task
                            + ": "
                            + denied.getFile()
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
