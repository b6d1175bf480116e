package org.stillroom.workbench.widgets;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ScrollBar;
import org.stillroom.workbench.Lane;
import org.stillroom.workbench.Work;

/**
 * Shows a figure, sharp in any size.
 *
 * <p>The figure is seen whole until the user enlarges it, unless it would be too small to read:
 * plus, minus and nought change the size, the arrow keys and the wheel move it. It is drawn away
 * from the window's thread.
 */
public final class FigureCanvas extends Canvas {
    private static final double STEP = 1.25;
    private static final double LARGEST = 6;

    /** A figure that would have to be smaller than this to be seen whole is moved instead. */
    private static final double READABLE = 0.6;

    private static final double NATURAL = 0.95;
    private static final double ENLARGED = 1.6;
    private static final int MARGIN = 12;

    private final Lane drawing;
    private Optional<SvgPicture> picture = Optional.empty();
    private Optional<Image> image = Optional.empty();
    private String description = "";
    private double zoom = 1;
    private double drawn;

    /** Makes an empty canvas. */
    public FigureCanvas(Composite parent, Work work) {
        super(parent, SWT.H_SCROLL | SWT.V_SCROLL | SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
        drawing = work.lane("Drawing");
        Names.give(this, "Figure");
        describe();
        addListener(SWT.Paint, e -> paint(e.gc));
        addListener(SWT.Resize, e -> redrawSharp());
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.MouseDown, e -> setFocus());
        addListener(SWT.MouseVerticalWheel, this::wheel);
        addListener(SWT.FocusIn, e -> redraw());
        addListener(SWT.FocusOut, e -> redraw());
        getHorizontalBar().addListener(SWT.Selection, e -> redraw());
        getVerticalBar().addListener(SWT.Selection, e -> redraw());
        addListener(
                SWT.Dispose,
                e -> {
                    drawing.close();
                    image.ifPresent(Image::dispose);
                });
    }

    private void describe() {
        getAccessible()
                .addAccessibleControlListener(
                        new AccessibleControlAdapter() {
                            @Override
                            public void getRole(AccessibleControlEvent event) {
                                event.detail = ACC.ROLE_GRAPHIC;
                            }
                        });
        getAccessible()
                .addAccessibleListener(
                        new AccessibleAdapter() {
                            @Override
                            public void getDescription(AccessibleEvent event) {
                                event.result = description;
                            }
                        });
    }

    /** Shows a figure under a name, with a description for those who do not see it. */
    public void show(SvgPicture next, String name, String words) {
        picture = Optional.of(next);
        description = words;
        drawn = 0;
        Names.give(this, name);
        redrawSharp();
    }

    /** Shows nothing. */
    public void clear() {
        picture = Optional.empty();
        drawing.cancel();
        replace(Optional.empty());
    }

    /** Returns how many times larger the figure is shown than fits best. */
    public double zoom() {
        return zoom;
    }

    /** Tells whether a drawn figure stands on the canvas. */
    public boolean isDrawn() {
        return image.isPresent();
    }

    /** Changes the size, 1 for what fits best. */
    public void zoom(double next) {
        zoom = Math.min(LARGEST, Math.max(0.25, next));
        redrawSharp();
    }

    private void redrawSharp() {
        picture.ifPresent(
                p -> {
                    double scale =
                            fit(p) * zoom * getDisplay().getPrimaryMonitor().getZoom() / 100.0;
                    if (scale == drawn && image.isPresent()) {
                        bars();
                        redraw();
                        return;
                    }
                    drawing.run(progress -> p.draw(scale), data -> place(data, scale));
                });
    }

    private double fit(SvgPicture p) {
        Rectangle room = getClientArea();
        double wide = (room.width - 2.0 * MARGIN) / p.width();
        double high = (room.height - 2.0 * MARGIN) / p.height();
        double whole = Math.min(Math.min(wide, high), ENLARGED);
        return whole < READABLE ? NATURAL : whole;
    }

    private void place(ImageData data, double scale) {
        drawn = scale;
        replace(Optional.of(new Image(getDisplay(), data)));
    }

    private void replace(Optional<Image> next) {
        image.ifPresent(Image::dispose);
        image = next;
        bars();
        redraw();
    }

    private void bars() {
        Rectangle size = image.map(Image::getBounds).orElse(new Rectangle(0, 0, 0, 0));
        Rectangle room = getClientArea();
        bar(getHorizontalBar(), size.width + 2 * MARGIN, room.width);
        bar(getVerticalBar(), size.height + 2 * MARGIN, room.height);
    }

    private static void bar(ScrollBar bar, int whole, int seen) {
        boolean needed = whole > seen;
        bar.setVisible(needed);
        int thumb = Math.max(1, Math.min(whole, seen));
        int at = needed ? Math.min(bar.getSelection(), whole - thumb) : 0;
        bar.setValues(at, 0, Math.max(1, whole), thumb, 24, Math.max(1, seen * 3 / 4));
    }

    private void paint(GC gc) {
        Rectangle room = getClientArea();
        gc.setBackground(getBackground());
        gc.fillRectangle(room);
        image.ifPresent(
                i -> {
                    Rectangle size = i.getBounds();
                    int free = Math.max(MARGIN, (room.width - size.width) / 2);
                    int x = free - getHorizontalBar().getSelection();
                    int y = MARGIN - getVerticalBar().getSelection();
                    gc.drawImage(i, x, y);
                });
        if (isFocusControl()) {
            gc.setForeground(getForeground());
            gc.setLineStyle(SWT.LINE_DOT);
            gc.drawRectangle(1, 1, room.width - 3, room.height - 3);
        }
    }

    private void key(Event event) {
        switch (event.character) {
            case '+', '=' -> zoom(zoom * STEP);
            case '-' -> zoom(zoom / STEP);
            case '0' -> zoom(1);
            default -> arrow(event.keyCode);
        }
    }

    private void arrow(int key) {
        switch (key) {
            case SWT.ARROW_LEFT -> move(getHorizontalBar(), -40);
            case SWT.ARROW_RIGHT -> move(getHorizontalBar(), 40);
            case SWT.ARROW_UP -> move(getVerticalBar(), -40);
            case SWT.ARROW_DOWN -> move(getVerticalBar(), 40);
            case SWT.PAGE_UP -> move(getVerticalBar(), -getClientArea().height);
            case SWT.PAGE_DOWN -> move(getVerticalBar(), getClientArea().height);
            default -> {
                return;
            }
        }
    }

    private void wheel(Event event) {
        if ((event.stateMask & SWT.MOD1) != 0) {
            zoom(event.count > 0 ? zoom * STEP : zoom / STEP);
        } else {
            move(getVerticalBar(), -event.count * 24);
        }
    }

    private void move(ScrollBar bar, int distance) {
        bar.setSelection(bar.getSelection() + distance);
        redraw();
    }
}
