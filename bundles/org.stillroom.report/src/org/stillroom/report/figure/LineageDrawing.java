package org.stillroom.report.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.stillroom.lineage.Descent;
import org.stillroom.lineage.Lineage;
import org.stillroom.report.Drawing;
import org.stillroom.report.Look;

/** Draws who took a drink from whom: a box a version, an arrow a borrowing. */
public final class LineageDrawing {

    private static final double BOX_WIDTH = 176;
    private static final double BOX_HEIGHT = 52;
    private static final int HEAD = 60;
    private static final int KEY = 40;
    private static final int LEAST_WIDTH = 680;

    private static final Stroke SOLID = new BasicStroke(1.4f);
    private static final Stroke THICK = new BasicStroke(2.4f);
    private static final Stroke DASHED =
            new BasicStroke(
                    1.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {5, 4}, 0);

    private final Lineage lineage;
    private final Look look;
    private final LineageLayout layout;
    private final Fonts fonts = Fonts.load();

    private LineageDrawing(Lineage lineage, Look look) {
        this.lineage = lineage;
        this.look = look;
        this.layout = LineageLayout.of(lineage, BOX_WIDTH, BOX_HEIGHT);
    }

    /** Draws a lineage. */
    public static Drawing draw(Lineage lineage, Look look) {
        LineageDrawing drawing = new LineageDrawing(lineage, look);
        int width = (int) Math.ceil(Math.max(LEAST_WIDTH, drawing.layout.width()));
        int height = (int) Math.ceil(drawing.layout.height()) + HEAD + KEY;
        String title = "Lineage of " + lineage.drink().name();
        return SvgCanvas.draw(
                title,
                drawing.description(),
                width,
                height,
                pen -> drawing.paint(pen, title, width, height));
    }

    private String description() {
        return lineage.descents().stream()
                .map(d -> d.version().source().shortName() + ": " + sentence(d))
                .collect(Collectors.joining(" "));
    }

    private static String sentence(Descent d) {
        List<String> near =
                d.candidates().stream()
                        .limit(2)
                        .map(
                                c ->
                                        c.parent().source().shortName()
                                                + String.format(
                                                        Locale.ROOT,
                                                        " (%.0f %%)",
                                                        c.support() * 100))
                        .toList();
        return d.standing().words()
                + (near.isEmpty() ? "." : "; nearest " + String.join(", ", near) + ".");
    }

    private void paint(Graphics2D pen, String title, int width, int height) {
        pen.setColor(look.paper());
        pen.fill(new Rectangle2D.Double(0, 0, width, height));
        pen.setColor(look.ink());
        pen.setFont(fonts.bold(15));
        pen.drawString(title, 16, 28);
        pen.translate(0, HEAD);
        layout.bands().forEach(b -> band(pen, b));
        layout.arrows().forEach(a -> arrow(pen, a));
        lineage.descents().forEach(d -> box(pen, d));
        pen.translate(0, -HEAD);
        key(pen, height - KEY + 12);
    }

    private void band(Graphics2D pen, LineageLayout.Band band) {
        pen.setColor(look.faint());
        pen.setStroke(SOLID);
        double x = band.x() - 6;
        pen.draw(new Line2D.Double(x, -14, x, layout.height()));
        pen.setColor(look.ink());
        pen.setFont(fonts.regular(11));
        pen.drawString(band.label(), (float) band.x(), -4f);
    }

    private void box(Graphics2D pen, Descent d) {
        LineageLayout.Box b = layout.boxes().get(d.version().id());
        RoundRectangle2D shape =
                new RoundRectangle2D.Double(b.x(), b.y(), b.width(), b.height(), 8, 8);
        pen.setColor(look.fill());
        pen.fill(shape);
        pen.setColor(look.ink());
        pen.setStroke(d.standing() == Descent.Standing.UNPLACED ? DASHED : SOLID);
        pen.draw(shape);
        double x = b.x() + 8;
        text(pen, fonts.bold(11), look.ink(), d.version().source().shortName(), x, b.y() + 16);
        text(pen, fonts.regular(10), look.ink(), d.version().witness().title(), x, b.y() + 30);
        text(pen, fonts.regular(9), look.series(0), d.standing().words(), x, b.y() + 44);
    }

    /** Writes a text on one line, cut with an ellipsis where it is too wide for a box. */
    private static void text(
            Graphics2D pen, Font font, Color colour, String words, double x, double y) {
        pen.setFont(font);
        pen.setColor(colour);
        FontMetrics size = pen.getFontMetrics();
        String shown = words;
        while (size.stringWidth(shown) > BOX_WIDTH - 16 && shown.length() > 2) {
            shown = shown.substring(0, shown.length() - 2).stripTrailing() + "…";
        }
        pen.drawString(shown, (float) x, (float) y);
    }

    private void arrow(Graphics2D pen, LineageLayout.Arrow arrow) {
        pen.setColor(arrow.sure() ? look.ink() : look.series(1));
        pen.setStroke(arrow.reprint() ? THICK : arrow.sure() ? SOLID : DASHED);
        List<Double> p = arrow.points();
        Path2D path = new Path2D.Double();
        path.moveTo(p.get(0), p.get(1));
        for (int i = 2; i < p.size(); i += 2) {
            path.lineTo(p.get(i), p.get(i + 1));
        }
        pen.draw(path);
        tip(pen, p.get(p.size() - 2), p.get(p.size() - 1));
    }

    private static void tip(Graphics2D pen, double x, double y) {
        Path2D tip = new Path2D.Double();
        tip.moveTo(x, y);
        tip.lineTo(x - 7, y - 3.5);
        tip.lineTo(x - 7, y + 3.5);
        tip.closePath();
        pen.fill(tip);
    }

    private void key(Graphics2D pen, int y) {
        double x = 16;
        x = keyLine(pen, x, y, THICK, look.ink(), "reprint");
        x = keyLine(pen, x, y, SOLID, look.ink(), "taken from");
        keyLine(pen, x, y, DASHED, look.series(1), "tied: one of these");
    }

    private double keyLine(
            Graphics2D pen, double x, int y, Stroke stroke, Color colour, String words) {
        pen.setColor(colour);
        pen.setStroke(stroke);
        pen.draw(new Line2D.Double(x, y + 6, x + 28, y + 6));
        tip(pen, x + 34, y + 6);
        pen.setColor(look.ink());
        pen.setFont(fonts.regular(10));
        pen.drawString(words, (float) (x + 40), y + 10);
        return x + 60 + pen.getFontMetrics().stringWidth(words);
    }
}
