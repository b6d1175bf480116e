package org.stillroom.workbench.library;

import java.util.Map;
import java.util.Optional;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import org.stillroom.inquiry.Study;
import org.stillroom.inquiry.Trial;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.reading.ReadingLine;
import org.stillroom.model.source.Source;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.Anchor;
import org.stillroom.model.text.Span;
import org.stillroom.reading.anchor.LineCorrections;
import org.stillroom.reading.anchor.WordCorrection;
import org.stillroom.workbench.Decider;
import org.stillroom.workbench.Lane;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Work;

/** Turns words that are selected on a page into decisions about them. */
final class PageCorrections {
    private final PageText words;
    private final OpenLibrary library;
    private final Decider decider;
    private final Work work;
    private final Lane trying;
    private Optional<MarkedPage> page = Optional.empty();
    private Optional<CorrectionForm> form = Optional.empty();

    PageCorrections(PageText words, OpenLibrary library, Decider decider, Work work) {
        this.words = words;
        this.library = library;
        this.decider = decider;
        this.work = work;
        this.trying = work.lane("Trying the correction");
    }

    void show(MarkedPage next) {
        page = Optional.of(next);
    }

    /** Tells whether a page is shown that decisions can be made about. */
    boolean isReady() {
        return page.isPresent();
    }

    /** The words that are meant: those selected, or the line that was read at the caret. */
    private Optional<Span> meant() {
        return words.selection().or(words::readAtCaret);
    }

    /** Opens the form for the words that are meant. */
    void correct() {
        Optional<Span> span = meant();
        Optional<Version> recipe = span.flatMap(s -> page.flatMap(p -> p.recipe(s)));
        if (span.isEmpty()) {
            work.say("Select the words first: drag over them, or hold Shift and use the arrows.");
        } else if (recipe.isEmpty()) {
            work.say("These words stand in no recipe. Say first where the recipe begins.");
        } else {
            library.study().ifPresent(study -> open(study, recipe.get(), span.get()));
        }
    }

    private void open(Study study, Version recipe, Span span) {
        form.ifPresent(CorrectionForm::close);
        words.select(span);
        Optional<ReadingLine> read = LineCorrections.lineAt(recipe.reading(), span);
        CorrectionForm next =
                new CorrectionForm(
                        words.control(),
                        recipe.source().text().slice(span),
                        CorrectionValues.of(read, recipe.source().text().slice(span)),
                        Completions.of(
                                study.knowledge(), recipe.source().bibliography().circumstances()));
        next.onChange(values -> preview(study, recipe, span, values, next));
        next.onSave(values -> save(recipe.source(), span, values));
        next.open(words.below());
        form = Optional.of(next);
    }

    private void preview(
            Study study,
            Version recipe,
            Span span,
            Map<String, String> values,
            CorrectionForm shown) {
        trying.run(
                progress -> Trial.of(study, recipe.id(), span, values),
                trial -> shown.preview(trial.map(SpecRows::words).orElse("")));
    }

    private void save(Source source, Span span, Map<String, String> values) {
        decider.decide("line", source.id(), Optional.of(Anchor.of(source.text(), span)), values);
    }

    /** Decides about the line at the words that are meant: {@code remove} or {@code right}. */
    void line(String action) {
        Optional<Span> span = meant();
        Optional<Version> recipe = span.flatMap(s -> page.flatMap(p -> p.recipe(s)));
        Optional<Span> line =
                recipe.flatMap(r -> LineCorrections.lineAt(r.reading(), span.orElseThrow()))
                        .map(ReadingLine::span);
        if (line.isPresent()) {
            save(recipe.orElseThrow().source(), line.get(), Map.of("action", action));
        } else {
            work.say("No ingredient is read at these words.");
        }
    }

    /**
     * Asks for the right words in the place of the selected ones, or of the word at the caret.
     *
     * <p>Words put right before are put right anew; the words as they stand in the file take the
     * correction back.
     */
    void putRight() {
        Optional<Span> span = words.selection().or(words::wordAtCaret);
        if (span.isEmpty() || page.isEmpty()) {
            work.say("Select the words first: drag over them, or hold Shift and use the arrows.");
            return;
        }
        Source source = page.get().source();
        Optional<WordCorrection> before = page.get().putRight(span.get());
        Span at = before.map(WordCorrection::span).orElse(span.get());
        String printed = source.text().slice(at);
        words.select(at);
        InputDialog dialog =
                new InputDialog(
                        words.control().getShell(),
                        "Put the words right",
                        "In the file, which stays as it is: “" + printed + "”. Right is:",
                        before.map(WordCorrection::reads).orElse(printed),
                        null);
        if (dialog.open() == Window.OK) {
            putRight(source, at, before, dialog.getValue().strip());
        }
    }

    private void putRight(Source source, Span at, Optional<WordCorrection> before, String right) {
        boolean same = right.equals(source.text().slice(at));
        Map<String, String> values = Map.of(WordCorrection.READS, right);
        if (before.isPresent() && same) {
            decider.takeBack(before.get().decision());
        } else if (before.isPresent()) {
            decider.replace(before.get().decision(), values);
        } else if (!same) {
            Anchor anchor = Anchor.of(source.text(), at);
            decider.decide(WordCorrection.KIND, source.id(), Optional.of(anchor), values);
        }
    }

    /** Cuts the page at the selected words, or at the line that the caret stands in. */
    void cut(String action) {
        Optional<Span> at = words.selection().or(words::line).filter(s -> !s.isEmpty());
        if (at.isEmpty() || page.isEmpty()) {
            work.say("Put the caret into a line with words first.");
            return;
        }
        Source source = page.get().source();
        Anchor anchor = Anchor.of(source.text(), at.get());
        decider.decide("cut", source.id(), Optional.of(anchor), Map.of("action", action));
    }

    /** Lets a decision that lost its words hold for the selected ones. */
    void place(Assertion lost) {
        Optional<Span> span = words.selection();
        if (span.isEmpty() || page.isEmpty()) {
            work.say("Select the words that the correction is about now.");
            return;
        }
        decider.placeAgain(lost, Anchor.of(page.get().source().text(), span.get()));
    }

    /** Returns the shell of the form, while it is open. */
    Optional<Shell> form() {
        return form.flatMap(CorrectionForm::shell);
    }

    void close() {
        trying.close();
        form.ifPresent(CorrectionForm::close);
    }
}
