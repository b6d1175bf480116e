package org.stillroom.report;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;
import org.stillroom.inquiry.Figure;
import org.stillroom.report.figure.DriftChart;
import org.stillroom.report.figure.LineageDrawing;
import org.stillroom.report.figure.MeasureChart;

/**
 * Draws what inquiries found.
 *
 * <p>Layout of graphs is by the Eclipse Layout Kernel, charts are by JFreeChart; both are drawn into
 * one SVG document, from which pictures of points are made. The same figure gives the same bytes.
 */
public final class Figures {

    private Figures() {}

    /** Draws a figure. */
    public static Drawing draw(Figure figure, Look look) {
        return switch (figure) {
            case Figure.LineageFigure f -> LineageDrawing.draw(f.lineage(), look);
            case Figure.DriftFigure f -> DriftChart.draw(f.drink(), f.drift(), look);
            case Figure.MeasureFigure f -> MeasureChart.draw(f.account(), look);
        };
    }

    /**
     * Makes a PNG of a drawing.
     *
     * @param scale pixels for each point, more than 0
     */
    public static byte[] toPng(Drawing drawing, double scale) {
        BufferedImage image = toImage(drawing, scale);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static BufferedImage toImage(Drawing drawing, double scale) {
        int width = (int) Math.ceil(drawing.width() * scale);
        int height = (int) Math.ceil(drawing.height() * scale);
        SVGDocument document =
                new SVGLoader()
                        .load(
                                new ByteArrayInputStream(
                                        drawing.svg().getBytes(StandardCharsets.UTF_8)),
                                null,
                                LoaderContext.createDefault());
        if (document == null) {
            throw new IllegalStateException("The drawing “" + drawing.title() + "” is no SVG");
        }
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        document.render(null, pen, new ViewBox(0, 0, width, height));
        pen.dispose();
        return image;
    }
}
