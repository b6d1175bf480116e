package org.stillroom.workbench.trace;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.stillroom.inquiry.Figure;
import org.stillroom.report.Drawing;
import org.stillroom.report.Figures;
import org.stillroom.report.Look;
import org.stillroom.workbench.Lane;
import org.stillroom.workbench.Themes;
import org.stillroom.workbench.Work;
import org.stillroom.workbench.widgets.FigureCanvas;
import org.stillroom.workbench.widgets.FileChooser;
import org.stillroom.workbench.widgets.Names;
import org.stillroom.workbench.widgets.SvgPicture;

/** A figure in the colours of the theme, with ways to enlarge it and to save it. */
final class FigurePane {
    private static final double PNG_SCALE = 2;

    private final Work work;
    private final IThemeEngine themes;
    private final FileChooser files;
    private final Lane drawing;
    private final Lane saving;
    private final Composite pane;
    private final FigureCanvas canvas;
    private Optional<Figure> figure = Optional.empty();
    private String fileName = "figure";

    /** A drawing with its picture made ready. */
    private record Drawn(Drawing drawing, SvgPicture picture) {}

    FigurePane(Composite parent, Work work, IThemeEngine themes, FileChooser files) {
        this.files = files;
        this.work = work;
        this.themes = themes;
        drawing = work.lane("Drawing the figure");
        saving = work.lane("Saving the figure");
        pane = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(pane);
        canvas = new FigureCanvas(pane, work);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
        createButtons();
        pane.addListener(
                SWT.Dispose,
                e -> {
                    drawing.close();
                    saving.close();
                });
    }

    private void createButtons() {
        Composite row = new Composite(pane, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        GridLayoutFactory.fillDefaults().numColumns(5).margins(10, 4).spacing(6, 0).applyTo(row);
        Label hint = new Label(row, SWT.NONE);
        hint.setData("org.eclipse.e4.ui.css.CssClassName", "Quiet");
        hint.setText("Keys:  +  −  0  arrows");
        hint.setToolTipText("In the figure + and − change the size, 0 fits it, arrows move it.");
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).applyTo(hint);
        button(row, "Larger", () -> canvas.zoom(canvas.zoom() * 1.25));
        button(row, "Smaller", () -> canvas.zoom(canvas.zoom() / 1.25));
        button(row, "Fit", () -> canvas.zoom(1));
        button(row, "Save figure…", this::save);
    }

    private static void button(Composite row, String words, Runnable action) {
        Button button = new Button(row, SWT.PUSH);
        button.setText(words);
        Names.give(button, words);
        button.addListener(SWT.Selection, e -> action.run());
    }

    Composite control() {
        return pane;
    }

    FigureCanvas canvas() {
        return canvas;
    }

    /** Draws a figure; the name is proposed for its file. */
    void show(Figure next, String name) {
        figure = Optional.of(next);
        fileName = name;
        redraw();
    }

    /** Shows nothing. */
    void clear() {
        figure = Optional.empty();
        drawing.cancel();
        canvas.clear();
    }

    /** Draws the figure again, as when the theme changed. */
    void redraw() {
        Look look = Looks.of(Themes.shown(themes).equals(Themes.DARK));
        figure.ifPresent(f -> drawing.run(progress -> draw(f, look), this::place));
    }

    private static Drawn draw(Figure figure, Look look) {
        Drawing drawing = Figures.draw(figure, look);
        return new Drawn(drawing, SvgPicture.of(drawing.svg()));
    }

    private void place(Drawn drawn) {
        canvas.show(drawn.picture(), drawn.drawing().title(), drawn.drawing().description());
    }

    private void save() {
        FileChooser.Question question =
                new FileChooser.Question(
                        "Save figure",
                        fileName + ".svg",
                        List.of(
                                new FileChooser.Form("Drawing (SVG)", "svg"),
                                new FileChooser.Form("Picture of points (PNG)", "png")));
        files.toSave(pane.getShell(), question).ifPresent(this::save);
    }

    /** Writes the figure, light as for paper, into a file whose ending says in which form. */
    private void save(Path file) {
        figure.ifPresent(
                f ->
                        saving.run(
                                progress -> {
                                    Drawing light = Figures.draw(f, Look.LIGHT);
                                    boolean png =
                                            file.toString()
                                                    .toLowerCase(Locale.ROOT)
                                                    .endsWith(".png");
                                    byte[] bytes =
                                            png
                                                    ? Figures.toPng(light, PNG_SCALE)
                                                    : light.svg().getBytes(StandardCharsets.UTF_8);
                                    return Files.write(file, bytes);
                                },
                                written -> work.say("Saved " + written)));
    }
}
