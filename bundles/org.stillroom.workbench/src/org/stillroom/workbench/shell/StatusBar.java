package org.stillroom.workbench.shell;

import jakarta.annotation.PostConstruct;
import jakarta.inject.Inject;
import org.eclipse.e4.core.di.annotations.Optional;
import org.eclipse.e4.ui.di.UIEventTopic;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;
import org.stillroom.workbench.Topics;
import org.stillroom.workbench.Work;
import org.stillroom.workbench.widgets.Names;

/** The line at the bottom of the window: what was done last, what is being done, and a way out. */
public final class StatusBar {
    private final Work work;
    private Composite bar;
    private Label words;
    private ProgressBar progress;
    private Button stop;

    /** Makes a status bar that can stop the work. */
    @Inject
    public StatusBar(Work work) {
        this.work = work;
    }

    /** Lays words, progress and the button to stop side by side. */
    @PostConstruct
    void create(Composite parent) {
        bar = new Composite(parent, SWT.NONE);
        bar.setData("org.eclipse.e4.ui.css.CssClassName", "StatusBar");
        GridLayout grid = new GridLayout(3, false);
        grid.marginHeight = 3;
        grid.marginWidth = 10;
        grid.horizontalSpacing = 10;
        bar.setLayout(grid);
        words = new Label(bar, SWT.NONE);
        words.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, true));
        progress = new ProgressBar(bar, SWT.SMOOTH);
        GridData width = new GridData(SWT.RIGHT, SWT.CENTER, false, false);
        width.widthHint = 180;
        progress.setLayoutData(width);
        Names.give(progress, "How far the work has come");
        stop = new Button(bar, SWT.PUSH | SWT.FLAT);
        stop.setText("Stop");
        stop.setToolTipText("Stop what is running (Ctrl+.)");
        Names.give(stop, "Stop what is running");
        stop.addListener(SWT.Selection, e -> work.stop());
        show(new Work.State("Ready", 0, 0, false));
    }

    /** Shows how far the work has come. */
    @Inject
    @Optional
    void show(@UIEventTopic(Topics.WORK) Work.State state) {
        if (words == null || words.isDisposed()) {
            return;
        }
        if (!state.words().isEmpty()) {
            words.setText(line(state));
            words.setToolTipText(state.words());
        }
        progress.setMaximum(Math.max(1, state.total()));
        progress.setSelection(state.total() > 0 ? state.done() : 0);
        progress.setVisible(state.busy());
        stop.setVisible(state.busy());
    }

    private static String line(Work.State state) {
        String flat = state.words().replace('&', '＆').replace('\n', ' ');
        return state.busy() && state.total() > 0
                ? flat + "  " + state.done() + " of " + state.total()
                : flat;
    }
}
