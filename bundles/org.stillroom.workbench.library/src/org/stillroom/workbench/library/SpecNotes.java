package org.stillroom.workbench.library;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.stillroom.inquiry.Doubts;
import org.stillroom.model.spec.Caution;
import org.stillroom.model.spec.Spec;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;
import org.stillroom.workbench.Ink;
import org.stillroom.workbench.widgets.Names;

/** Cautions first, with a mark and a word each; then doubts and other senses of ingredients. */
final class SpecNotes {
    private final StyledText text;
    private final Ink ink;
    private Optional<Version> shown = Optional.empty();
    private int wholeFrom = -1;
    private int wholeTo = -1;

    /** Makes empty notes; opening the figures of the whole runs the action. */
    SpecNotes(Composite parent, Consumer<Version> explain) {
        text = new StyledText(parent, SWT.READ_ONLY | SWT.WRAP | SWT.MULTI | SWT.V_SCROLL);
        text.setData("org.eclipse.e4.ui.css.CssClassName", "Inked");
        text.setMargins(12, 8, 12, 8);
        text.setLineSpacing(3);
        text.setAlwaysShowScrollBars(false);
        Names.give(text, "Cautions and doubts");
        ink = Ink.of(text, this::write);
        text.setToolTipText("Enter, or a click on “The whole”, explains its figures");
        text.addListener(SWT.MouseUp, e -> open(e, explain));
        text.addListener(
                SWT.KeyDown,
                e -> {
                    if (e.keyCode == SWT.CR || e.keyCode == SWT.KEYPAD_CR) {
                        shown.ifPresent(explain);
                    }
                });
    }

    /** A click on the line of the whole asks why; one that selects words does not. */
    private void open(Event e, Consumer<Version> explain) {
        if (e.button != 1 || text.getSelectionCount() > 0) {
            return;
        }
        int at = text.getOffsetAtPoint(new Point(e.x, e.y));
        if (at >= wholeFrom && at < wholeTo) {
            shown.ifPresent(explain);
        }
    }

    StyledText control() {
        return text;
    }

    void show(Version version) {
        shown = Optional.of(version);
        write();
    }

    private void write() {
        Notes notes = new Notes();
        shown.ifPresent(version -> notes.add(version.spec()));
        text.setText(notes.words.toString().stripTrailing());
        int length = text.getCharCount();
        text.setStyleRanges(
                notes.styles.stream()
                        .filter(s -> s.start + s.length <= length)
                        .toArray(StyleRange[]::new));
    }

    /** Collects words with their styles. */
    private final class Notes {
        private final StringBuilder words = new StringBuilder();
        private final List<StyleRange> styles = new ArrayList<>();

        void add(Spec spec) {
            spec.cautions().forEach(this::caution);
            shown.map(Doubts::of).orElse(List.of()).forEach(this::doubt);
            spec.lines().forEach(this::senses);
            if (words.isEmpty()) {
                words.append("Nothing here needs a caution, and nothing was doubtful.");
            }
            String whole = SpecRows.whole(spec);
            wholeFrom = words.length();
            lead(whole.isEmpty() ? "" : "The whole", Ink.Use.ACCENT, whole);
            wholeTo = words.length();
            lead("Measures", Ink.Use.ACCENT, spec.system() + ": " + spec.systemReason());
        }

        private void caution(Caution caution) {
            String level =
                    switch (caution.level()) {
                        case STOP -> "⚠ Do not serve";
                        case RESTRICTED -> "⚠ Restricted";
                        case CARE -> "⚠ Take care";
                    };
            String rule = caution.source().work();
            lead(
                    level + " – " + caution.subject(),
                    Ink.Use.CAUTION,
                    caution.words() + (rule.isEmpty() ? "" : " (" + rule + ")"));
        }

        private void doubt(String reason) {
            lead("? Doubtful", Ink.Use.DOUBT, reason);
        }

        private void senses(SpecLine line) {
            if (!line.candidates().isEmpty()) {
                String others =
                        String.join(", ", line.candidates().stream().map(c -> c.label()).toList());
                lead("May also be", Ink.Use.QUIET, line.ingredient().label() + ": " + others);
            }
        }

        private void lead(String head, Ink.Use use, String body) {
            if (body.isBlank()) {
                return;
            }
            if (!words.isEmpty()) {
                words.append('\n');
            }
            StyleRange style = new StyleRange();
            style.start = words.length();
            style.length = head.length();
            style.fontStyle = SWT.BOLD;
            style.foreground = ink.colour(use);
            styles.add(style);
            words.append(head).append(":  ").append(body);
        }
    }
}
