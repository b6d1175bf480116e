package org.stillroom.workbench.trace;

import jakarta.annotation.PostConstruct;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.Optional;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.widgets.ReasonTree;
import org.stillroom.workbench.widgets.Sheet;

/** How a figure came about, back to the words on the page and to who said what they meant. */
public final class ExplanationPart {
    private Optional<Navigator.Reason> asked = Optional.empty();
    private Label heading;
    private ReasonTree tree;

    /** Lays out a heading and the tree. */
    @PostConstruct
    void create(Composite owner) {
        Composite parent = Sheet.on(owner);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(parent);
        heading = new Label(parent, SWT.NONE);
        heading.setText("Open an amount on a page, and its explanation stands here.");
        GridDataFactory.fillDefaults().grab(true, false).indent(12, 6).applyTo(heading);
        tree = new ReasonTree(parent);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(tree.control());
        asked.ifPresent(this::fill);
    }

    /** Shows the explanation that was asked for. */
    @Inject
    @org.eclipse.e4.core.di.annotations.Optional
    void show(@Named(Navigator.REASON) Navigator.Reason reason) {
        asked = Optional.of(reason);
        if (tree != null && !tree.control().isDisposed()) {
            fill(reason);
        }
    }

    private void fill(Navigator.Reason reason) {
        heading.setText("Why: " + reason.heading().replace("&", "&&"));
        tree.show(reason.explanation());
    }

    /** Puts the keyboard into the tree. */
    @Focus
    void focus() {
        tree.focus();
    }
}
