package org.stillroom.inquiry;

import java.util.List;
import org.stillroom.model.progress.Progress;

/**
 * One question that the tool answers, the same from every face.
 *
 * <p>Registering an implementation as an OSGi service is all that it takes to appear in the command
 * line's help and in the workbench's list. Implementations are stateless; the caller owns the
 * thread.
 */
public interface Inquiry {

    /** Returns its name, one lower-case word. */
    String name();

    /** Returns what it answers, one line. */
    String summary();

    /** Returns a command that shows it at work, without the program's name. */
    String example();

    /** Returns what it wants to be told, in the order of a command. */
    List<Parameter> parameters();

    /**
     * Answers the question.
     *
     * @param desk the knowledge and the open library that it may use
     * @param arguments what it was told
     * @param progress hears how far it has come, and may cancel it
     * @throws InquiryException where the question cannot be answered as it was put
     */
    Answer answer(Desk desk, Arguments arguments, Progress progress);
}
