package org.stillroom.workbench.library;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.text.Anchor;
import org.stillroom.workbench.widgets.Names;

/** A strip over the words of a page while a decision looks for its words. */
final class PlaceStrip {
    private final Composite strip;
    private final Label words;
    private final Consumer<Assertion> place;
    private Optional<Assertion> lost = Optional.empty();

    PlaceStrip(Composite parent, Consumer<Assertion> place) {
        this.place = place;
        strip = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(strip);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(20, 6).applyTo(strip);
        words = new Label(strip, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).applyTo(words);
        button("Place it here", () -> lost.ifPresent(this.place));
        button("Leave it", () -> show(Optional.empty()));
        strip.setVisible(false);
    }

    private void button(String label, Runnable action) {
        Button button = new Button(strip, SWT.PUSH);
        button.setText(label);
        Names.give(button, label);
        button.addListener(SWT.Selection, e -> action.run());
    }

    /** Shows the decision that looks for its words, or nothing. */
    void show(Optional<Assertion> decision) {
        lost = decision;
        decision.ifPresent(
                d ->
                        words.setText(
                                "Select the words that “"
                                        + d.anchor()
                                                .map(Anchor::exact)
                                                .orElse("")
                                                .replace("&", "&&")
                                                .replace('\n', ' ')
                                        + "” stands for now, then place the correction."));
        strip.setVisible(decision.isPresent());
        ((GridData) strip.getLayoutData()).exclude = decision.isEmpty();
        strip.getParent().layout();
    }
}
