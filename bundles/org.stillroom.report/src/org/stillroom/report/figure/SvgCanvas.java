package org.stillroom.report.figure;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.function.Consumer;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.DefaultErrorHandler;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGGraphics2DIOException;
import org.stillroom.report.Drawing;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Turns strokes of a pen into an SVG document with title and description. */
final class SvgCanvas {

    private static final String SVG = "http://www.w3.org/2000/svg";

    private SvgCanvas() {}

    static Drawing draw(
            String title, String description, int width, int height, Consumer<Graphics2D> strokes) {
        SVGGraphics2D pen = new SVGGraphics2D(context(), false);
        pen.setSVGCanvasSize(new Dimension(width, height));
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        strokes.accept(pen);
        return new Drawing(title, description, width, height, toText(pen, title, description));
    }

    private static SVGGeneratorContext context() {
        try {
            Document document =
                    DocumentBuilderFactory.newDefaultNSInstance()
                            .newDocumentBuilder()
                            .getDOMImplementation()
                            .createDocument(SVG, "svg", null);
            SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
            context.setComment(null);
            context.setPrecision(4);
            context.setErrorHandler(new DefaultErrorHandler());
            return context;
        } catch (ParserConfigurationException impossible) {
            throw new IllegalStateException("Every Java platform has an XML parser", impossible);
        }
    }

    private static String toText(SVGGraphics2D pen, String title, String description) {
        Element root = pen.getRoot();
        Document document = root.getOwnerDocument();
        Dimension size = pen.getSVGCanvasSize();
        root.setAttributeNS(null, "role", "img");
        root.setAttributeNS(null, "viewBox", "0 0 " + size.width + " " + size.height);
        Element desc = document.createElementNS(SVG, "desc");
        desc.appendChild(document.createTextNode(description));
        root.insertBefore(desc, root.getFirstChild());
        Element head = document.createElementNS(SVG, "title");
        head.appendChild(document.createTextNode(title));
        root.insertBefore(head, desc);
        StringWriter out = new StringWriter();
        try {
            pen.stream(root, out, true, false);
        } catch (SVGGraphics2DIOException e) {
            throw new UncheckedIOException(new IOException(e));
        }
        return out.toString().replace("\r\n", "\n");
    }
}
