package org.stillroom.workbench.trace;

import jakarta.annotation.PostConstruct;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.Optional;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.widgets.Names;
import org.stillroom.workbench.widgets.ReasonTree;
import org.stillroom.workbench.widgets.Sheet;

/** How a figure came about, back to the words on the page and to who said what they meant. */
public final class ExplanationPart {
    private final Navigator navigator;
    private Optional<Navigator.Reason> asked = Optional.empty();
    private Label heading;
    private Button measures;
    private ReasonTree tree;

    /** Makes a part that explains nothing yet. */
    @Inject
    public ExplanationPart(Navigator navigator) {
        this.navigator = navigator;
    }

    /** Lays out a heading and the tree. */
    @PostConstruct
    void create(Composite owner) {
        Composite parent = Sheet.on(owner);
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(parent);
        Composite head = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).extendedMargins(12, 10, 6, 0).applyTo(head);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        heading = new Label(head, SWT.NONE);
        heading.setText("Open an amount with Enter or Ctrl+E, and its explanation stands here.");
        GridDataFactory.fillDefaults()
                .align(SWT.FILL, SWT.CENTER)
                .grab(true, false)
                .applyTo(heading);
        measures = new Button(head, SWT.PUSH);
        measures.setText("Show this word in Measures");
        measures.setToolTipText("Who says what of this word of measure, over time (Ctrl+M)");
        Names.give(measures, "Show this word in Measures");
        measures.addListener(SWT.Selection, e -> explore());
        measures.setVisible(false);
        tree = new ReasonTree(parent);
        tree.offer("Show this word in Measures\tCtrl+M", this::hasWord, this::explore);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(tree.control());
        tree.control().setVisible(false);
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
        tree.control().setVisible(true);
        measures.setVisible(hasWord());
    }

    private boolean hasWord() {
        return asked.flatMap(Navigator.Reason::word).isPresent();
    }

    private void explore() {
        asked.flatMap(Navigator.Reason::word).ifPresent(navigator::measure);
    }

    /** Puts the keyboard into the tree. */
    @Focus
    void focus() {
        tree.focus();
    }
}
