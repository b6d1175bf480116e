package org.stillroom.workbench;

import java.util.Optional;
import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.workbench.modeling.EPartService;
import org.eclipse.e4.ui.workbench.modeling.EPartService.PartState;
import org.stillroom.inquiry.AmountReasons;
import org.stillroom.inquiry.Arguments;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.Span;

/**
 * Leads from one part of the window to another.
 *
 * <p>What is to be shown is kept in the application's context, where a part that is made later
 * finds it as well as one that is there already. Belongs to the window's thread.
 */
public final class Navigator {
    /** Id of the witness, or of the source, whose page is shown. */
    public static final String PAGE = "org.stillroom.show.page";

    /** Id of the drink that is traced. */
    public static final String DRINK = "org.stillroom.show.drink";

    /** What is explained. */
    public static final String REASON = "org.stillroom.show.reason";

    /** The word of measure that is explored, with place, date and trade. */
    public static final String MEASURE = "org.stillroom.show.measure";

    /**
     * A heading and the explanation under it.
     *
     * @param word the word of measure that the amount is told by, with its place, date and trade;
     *     the names are those of the inquiry “word”
     */
    public record Reason(String heading, Explanation explanation, Optional<Arguments> word) {
        /** Makes a reason that hangs on no single word of measure. */
        public Reason(String heading, Explanation explanation) {
            this(heading, explanation, Optional.empty());
        }
    }

    /** Words of a source that are shown. */
    public static final String WORDS = "org.stillroom.show.words";

    /**
     * Words of a source, and what is to be done with them.
     *
     * @param page id of the witness, or of the source, whose page holds them
     * @param span where they stand in the source
     * @param correct whether the form that corrects their reading is to open
     * @param lost a decision that looks for its words here
     */
    public record Words(String page, Span span, boolean correct, Optional<Assertion> lost) {}

    private final MApplication application;

    /** Makes a navigator for the application's window. */
    public Navigator(MApplication application) {
        this.application = application;
    }

    /** Shows the page of a witness or of a source. */
    public void page(String id) {
        show(Parts.PAGE, PAGE, id, PartState.ACTIVATE);
    }

    /** Shows words on their page. */
    public void words(Words words) {
        show(Parts.PAGE, WORDS, words, PartState.ACTIVATE);
    }

    /** Traces a drink: its versions to the front, its drift ready behind them. */
    public void drink(String id) {
        show(Parts.VERSIONS, DRINK, id, PartState.ACTIVATE);
    }

    /** Shows an explanation beside what is being read, without leaving it. */
    public void explain(String heading, Explanation explanation) {
        explain(new Reason(heading, explanation));
    }

    /** Shows why the amount of a version's line is so, and which word of measure it hangs on. */
    public void explain(Version version, SpecLine line) {
        String heading = line.line().text().strip().replace('\n', ' ');
        explain(new Reason(heading, AmountReasons.line(line), WordOfLine.of(version, line)));
    }

    /** Shows an explanation beside what is being read, without leaving it. */
    public void explain(Reason reason) {
        show(Parts.EXPLANATION, REASON, reason, PartState.VISIBLE);
    }

    /** Returns what is explained at the moment. */
    public Optional<Reason> explained() {
        return Optional.ofNullable((Reason) application.getContext().get(REASON));
    }

    /** Explores a word of measure across time and place. */
    public void measure(Arguments word) {
        show(Parts.MEASURES, MEASURE, word, PartState.ACTIVATE);
    }

    /** Brings a part to the front. */
    public void part(String id) {
        service().ifPresent(parts -> parts.showPart(id, PartState.ACTIVATE));
    }

    private void show(String part, String key, Object value, PartState state) {
        application.getContext().set(key, value);
        service().ifPresent(parts -> parts.showPart(part, state));
    }

    /** Returns the part service of the window, also while a dialog is in front of it. */
    private Optional<EPartService> service() {
        return application.getChildren().stream()
                .findFirst()
                .flatMap(window -> Optional.ofNullable(window.getContext()))
                .map(context -> context.get(EPartService.class));
    }
}
