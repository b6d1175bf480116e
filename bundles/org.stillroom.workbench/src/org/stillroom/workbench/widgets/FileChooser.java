package org.stillroom.workbench.widgets;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

/**
 * Asks where something is to be saved.
 *
 * <p>The system's own dialog asks, unless whoever drives the window answers in its place. Belongs
 * to the window's thread.
 */
public final class FileChooser {
    private Optional<Function<Question, Optional<Path>>> answers = Optional.empty();

    /**
     * A form that something can be saved in.
     *
     * @param words its name for people
     * @param ending the ending of its files, without a dot
     */
    public record Form(String words, String ending) {}

    /**
     * What is asked.
     *
     * @param title what is to be saved, over the dialog
     * @param fileName the proposed name of the file
     * @param forms the forms to choose from, the usual one first
     */
    public record Question(String title, String fileName, List<Form> forms) {
        /** Keeps the forms as an unchangeable list. */
        public Question {
            forms = List.copyOf(forms);
        }
    }

    /** Lets a function answer in the place of the dialog. */
    public void answerBy(Function<Question, Optional<Path>> function) {
        answers = Optional.of(function);
    }

    /** Asks for a file to save to; empty where the user would rather not. */
    public Optional<Path> toSave(Shell shell, Question question) {
        return answers.map(a -> a.apply(question)).orElseGet(() -> ask(shell, question));
    }

    private static Optional<Path> ask(Shell shell, Question question) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(question.title());
        dialog.setFileName(question.fileName());
        dialog.setFilterExtensions(strings(question, f -> "*." + f.ending()));
        dialog.setFilterNames(strings(question, Form::words));
        dialog.setOverwrite(true);
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }

    private static String[] strings(Question question, Function<Form, String> part) {
        return question.forms().stream().map(part).toArray(String[]::new);
    }
}
