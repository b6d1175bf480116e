package org.stillroom.workbench.shell;

import jakarta.annotation.PostConstruct;
import jakarta.inject.Inject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;
import org.stillroom.workbench.Signals;
import org.stillroom.workbench.Topics;
import org.stillroom.workbench.Work;
import org.stillroom.workbench.widgets.Names;

/** The line at the bottom of the window: what was done last, what is being done, and a way out. */
public final class StatusBar {
    private final Signals signals;

    /** Work that is done sooner is not worth a flicker. */
    private static final int PATIENCE_MILLIS = 250;

    private final Work work;
    private String said = "Ready";
    private Work.State latest = new Work.State(said, 0, 0, false, true);
    private boolean waiting;
    private Label words;
    private ProgressBar progress;
    private Button stop;

    /** Makes a status bar that can stop the work. */
    @Inject
    public StatusBar(Signals signals, Work work) {
        this.signals = signals;
        this.work = work;
    }

    /** Lays words, progress and the button to stop side by side. */
    @PostConstruct
    void create(Composite parent) {
        Composite bar = new Composite(parent, SWT.NONE);
        bar.setData("org.eclipse.e4.ui.css.CssClassName", "StatusBar");
        GridLayoutFactory.fillDefaults().numColumns(3).margins(10, 1).spacing(10, 0).applyTo(bar);
        words = new Label(bar, SWT.NONE);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, true).applyTo(words);
        progress = new ProgressBar(bar, SWT.SMOOTH);
        GridDataFactory.fillDefaults()
                .align(SWT.END, SWT.CENTER)
                .hint(180, SWT.DEFAULT)
                .applyTo(progress);
        Names.give(progress, "How far the work has come");
        stop = new Button(bar, SWT.PUSH | SWT.FLAT);
        stop.setText("Stop");
        stop.setToolTipText("Stop what is running (Ctrl+.)");
        Names.give(stop, "Stop what is running");
        stop.addListener(SWT.Selection, e -> work.stop());
        signals.on(Topics.WORK, Work.State.class, bar, this::hear);
        draw();
    }

    /** Hears how far the work has come. */
    private void hear(Work.State state) {
        latest = state;
        if (state.said()) {
            said = state.words();
        }
        if (words == null || words.isDisposed()) {
            return;
        }
        if (!state.busy() || state.said()) {
            draw();
        } else if (!waiting) {
            waiting = true;
            words.getDisplay().timerExec(PATIENCE_MILLIS, this::waited);
        }
    }

    private void waited() {
        waiting = false;
        if (!words.isDisposed()) {
            draw();
        }
    }

    private void draw() {
        boolean busy = latest.busy() && !latest.said();
        String line = busy ? doing() : said;
        words.setText(line.replace("&", "&&").replace('\n', ' '));
        words.setToolTipText(line);
        progress.setMaximum(Math.max(1, latest.total()));
        progress.setSelection(latest.total() > 0 ? latest.done() : 0);
        progress.setVisible(busy);
        stop.setVisible(busy);
    }

    private String doing() {
        return latest.total() > 0
                ? latest.words() + "  " + latest.done() + " of " + latest.total()
                : latest.words();
    }
}
