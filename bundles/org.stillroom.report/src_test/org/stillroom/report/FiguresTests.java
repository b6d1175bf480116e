package org.stillroom.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.stillroom.drift.Drift;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.inquiry.Figure;
import org.stillroom.report.page.AnswerPage;
import org.stillroom.report.page.AnswerTables;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class FiguresTests {

    private static Drift drift() {
        List<Drift.Point> points =
                IntStream.range(0, 6)
                        .mapToObj(
                                i ->
                                        new Drift.Point(
                                                "v" + i,
                                                "Book " + i,
                                                1840 + 20 * i,
                                                i != 3,
                                                List.of(
                                                        new Drift.Share(.4, .5 + .05 * i, .85),
                                                        new Drift.Share(0, 0, 0),
                                                        new Drift.Share(.1, .2, .3))))
                        .toList();
        return new Drift(
                6,
                5,
                List.of("spirit", "bitter", "sweet"),
                points,
                List.of(),
                List.of(),
                List.of(),
                List.of("The spirit rises."),
                List.of());
    }

    private static Drawing drawing() {
        return Figures.draw(new Figure.DriftFigure("Keel & “Anchor” Punch", drift()), Look.LIGHT);
    }

    private static Document parse(String svg) throws Exception {
        return DocumentBuilderFactory.newDefaultNSInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(svg.replaceFirst("<!DOCTYPE[^>]*>", ""))));
    }

    @Test
    void aChartIsSvgWithTitleDescriptionAndRealText() throws Exception {
        Document svg = parse(drawing().svg());
        assertEquals("svg", svg.getDocumentElement().getLocalName());
        assertEquals("img", svg.getDocumentElement().getAttribute("role"));
        assertEquals(
                "Shares of the whole over time: Keel & “Anchor” Punch",
                svg.getElementsByTagName("title").item(0).getTextContent());
        assertEquals(
                "The spirit rises.", svg.getElementsByTagName("desc").item(0).getTextContent());
        assertTrue(svg.getElementsByTagName("text").getLength() > 10);
        assertTrue(drawing().svg().contains(">spirit<"));
        assertFalse(drawing().svg().contains(">bitter<"), "a role that never occurs is not drawn");
    }

    @Test
    void theSameFigureGivesTheSameBytesInAnyLocale() {
        Locale before = Locale.getDefault();
        String first = drawing().svg();
        byte[] png = Figures.toPng(drawing(), 1);
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals(first, drawing().svg());
            assertTrue(java.util.Arrays.equals(png, Figures.toPng(drawing(), 1)));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void aPngHasItsSizeAndIsNotEmpty() throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(Figures.toPng(drawing(), 2)));
        assertEquals(drawing().width() * 2, image.getWidth());
        int paper = Look.LIGHT.paper().getRGB();
        long inked =
                IntStream.range(0, image.getWidth())
                        .filter(x -> image.getRGB(x, image.getHeight() / 2) != paper)
                        .count();
        assertTrue(inked > 20, "a row through the chart crosses grid, axis and lines");
    }

    /** Contrast ratio of WCAG 2.2, 1.4.3 and 1.4.11. */
    @Test
    void colourContrastIsEnoughInBothLooks() {
        for (Look look : List.of(Look.LIGHT, Look.DARK)) {
            assertTrue(contrast(look.ink(), look.paper()) >= 7, "ink");
            assertTrue(contrast(look.ink(), look.fill()) >= 7, "ink on boxes");
            look.series().forEach(c -> assertTrue(contrast(c, look.paper()) >= 4.5, "" + c));
        }
    }

    private static double contrast(java.awt.Color a, java.awt.Color b) {
        double x = luminance(a) + 0.05;
        double y = luminance(b) + 0.05;
        return Math.max(x, y) / Math.min(x, y);
    }

    private static double luminance(java.awt.Color c) {
        return 0.2126 * linear(c.getRed())
                + 0.7152 * linear(c.getGreen())
                + 0.0722 * linear(c.getBlue());
    }

    private static double linear(int part) {
        double s = part / 255.0;
        return s <= 0.04045 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4);
    }

    @Test
    void aPageHoldsTheWholeAnswerAndEscapesIt() {
        Answer answer =
                new Answer(
                        "Drift of <Keel> & Co",
                        List.of(
                                new Block.Paragraph("a < b"),
                                new Block.Table(
                                        "Shares",
                                        List.of("version", "share"),
                                        List.of(false, true),
                                        List.of(List.of("Book 1", "1/2")),
                                        List.of()),
                                new Block.Picture(
                                        "drift", new Figure.DriftFigure("Keel", drift()))),
                        com.fasterxml.jackson.databind.node.JsonNodeFactory.instance.objectNode(),
                        List.of());
        org.jsoup.nodes.Document page = org.jsoup.Jsoup.parse(AnswerPage.of(answer));
        assertEquals("en", page.selectFirst("html").attr("lang"));
        assertEquals("Drift of <Keel> & Co", page.selectFirst("h1").text());
        assertEquals("a < b", page.selectFirst("p").text());
        assertEquals(2, page.select("th[scope=col]").size());
        assertEquals(1, page.select("figure > svg").size());
    }

    @Test
    void aTableIsWrittenByRfc4180() {
        String csv =
                AnswerTables.toCsv(
                        new Block.Table(
                                "t",
                                List.of("a", "b"),
                                List.of(false, false),
                                List.of(List.of("1/2", "x, \"y\""), List.of("", "z")),
                                List.of()));
        assertEquals("a,b\r\n1/2,\"x, \"\"y\"\"\"\r\n,z\r\n", csv);
    }
}
