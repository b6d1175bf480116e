package org.stillroom.workbench.widgets;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;

/**
 * A figure in Scalable Vector Graphics that can be drawn in any size.
 *
 * <p>Needs no display; may be made and drawn on any thread.
 */
public final class SvgPicture {
    private final SVGDocument document;
    private final double width;
    private final double height;

    private SvgPicture(SVGDocument document) {
        this.document = document;
        this.width = Math.max(1, document.size().getWidth());
        this.height = Math.max(1, document.size().getHeight());
    }

    /**
     * Reads a figure.
     *
     * @throws IllegalArgumentException where the words are not SVG
     */
    public static SvgPicture of(String svg) {
        byte[] bytes = svg.getBytes(StandardCharsets.UTF_8);
        SVGDocument read =
                new SVGLoader()
                        .load(new ByteArrayInputStream(bytes), null, LoaderContext.createDefault());
        if (read == null) {
            throw new IllegalArgumentException("The figure is not readable as SVG");
        }
        return new SvgPicture(read);
    }

    /** Returns the width in the figure's own units. */
    public double width() {
        return width;
    }

    /** Returns the height in the figure's own units. */
    public double height() {
        return height;
    }

    /** Draws the figure in so many times its own size. */
    public ImageData draw(double scale) {
        int w = Math.max(1, (int) Math.round(width * scale));
        int h = Math.max(1, (int) Math.round(height * scale));
        BufferedImage picture = new BufferedImage(w, h, BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = picture.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(
                RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        document.render((java.awt.Component) null, pen, new ViewBox(0, 0, w, h));
        pen.dispose();
        return toImageData(picture);
    }

    private static ImageData toImageData(BufferedImage picture) {
        int w = picture.getWidth();
        int h = picture.getHeight();
        ImageData data = new ImageData(w, h, 24, new PaletteData(0xFF0000, 0xFF00, 0xFF));
        data.alphaData = new byte[w * h];
        int[] row = new int[w];
        for (int y = 0; y < h; y++) {
            picture.getRGB(0, y, w, 1, row, 0, w);
            for (int x = 0; x < w; x++) {
                data.alphaData[y * w + x] = (byte) (row[x] >>> 24);
                row[x] &= 0xFFFFFF;
            }
            data.setPixels(0, y, w, row, 0);
        }
        return data;
    }
}
