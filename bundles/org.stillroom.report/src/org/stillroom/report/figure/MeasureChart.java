package org.stillroom.report.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import org.stillroom.measures.MeasureMeaning;
import org.stillroom.measures.WordAccount;
import org.stillroom.measures.format.AmountFormat;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.report.Drawing;
import org.stillroom.report.Look;

/**
 * Draws who says what about a word of measure: years from left to right, amounts upward.
 *
 * <p>A mark stands for a statement and bears its number in the table; its shape tells the place, a
 * filled one counts in the circumstances asked for, a hollow one next to nothing. Bars show the years
 * and the range that a statement speaks for. The band is what the word is taken to have held.
 */
public final class MeasureChart {

    private static final int WIDTH = 820;
    private static final int HEIGHT = 500;

    /** Amounts that differ by more than this are drawn on a logarithmic axis. */
    private static final double WIDE = 12;

    private final WordAccount account;
    private final Look look;
    private final ChartStyle style;
    private final MeasureMarks marks;

    private MeasureChart(WordAccount account, Look look) {
        this.account = account;
        this.look = look;
        this.style = new ChartStyle(look);
        this.marks = MeasureMarks.of(account);
    }

    /** Draws what is said about a word. */
    public static Drawing draw(WordAccount account, Look look) {
        MeasureChart chart = new MeasureChart(account, look);
        String title = "What is said of the " + account.word();
        return SvgCanvas.draw(
                title, chart.description(), WIDTH, HEIGHT, pen -> chart.paint(pen, title));
    }

    private String description() {
        StringBuilder words = new StringBuilder(account.meaning().reason());
        if (!account.disagreement().equals(account.meaning().reason())) {
            words.append(' ').append(account.disagreement());
        }
        for (MeasureMarks.Mark m : marks.all()) {
            words.append(' ').append(m.words()).append('.');
        }
        return words.toString();
    }

    private void paint(Graphics2D pen, String title) {
        XYIntervalSeriesCollection data = data();
        ValueAxis amounts = amounts();
        NumberAxis years = style.years();
        years.setRange(marks.firstYear() - 3.0, marks.lastYear() + 3.0);
        XYPlot plot = new XYPlot(data, years, amounts, renderer(data));
        estimate().ifPresent(e -> band(plot, e));
        account.years()
                .ifPresent(
                        y ->
                                plot.addDomainMarker(
                                        new IntervalMarker(
                                                y.from() - 0.4, y.to() + 0.4, faint(look.ink())),
                                        Layer.BACKGROUND));
        JFreeChart chart = style.chart(title, plot);
        TextTitle under = new TextTitle(subtitle(), style.fonts().regular(11));
        under.setPaint(look.ink());
        chart.addSubtitle(0, under);
        ChartRenderingInfo info = new ChartRenderingInfo();
        chart.draw(pen, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT), info);
        label(pen, plot, info.getPlotInfo().getDataArea());
    }

    private String subtitle() {
        String amount =
                estimate()
                        .map(e -> AmountFormat.write(e, account.dimension().symbol()))
                        .orElse("no amount");
        return account.where()
                + ": "
                + amount
                + " (the band). Filled marks count there and then; numbers are those of the table.";
    }

    private Optional<Estimate> estimate() {
        return account.meaning() instanceof MeasureMeaning.Measured m
                ? Optional.of(m.one())
                : Optional.empty();
    }

    private ValueAxis amounts() {
        double low = Math.min(marks.least(), estimate().map(Estimate::low).orElse(marks.least()));
        double high = Math.max(marks.most(), estimate().map(Estimate::high).orElse(marks.most()));
        String words = account.dimension().symbol();
        if (high > WIDE * low) {
            LogAxis axis = new LogAxis(words);
            style.dress(axis);
            axis.setRange(low / 1.3, high * 1.3);
            axis.setNumberFormatOverride(new AmountTicks());
            return axis;
        }
        NumberAxis axis = new NumberAxis(words);
        style.dress(axis);
        axis.setNumberFormatOverride(new AmountTicks());
        double room = Math.max((high - low) * 0.12, high * 0.06);
        axis.setRange(Math.max(0, low - room), high + room);
        return axis;
    }

    private void band(XYPlot plot, Estimate e) {
        Color colour = look.series(0);
        if (!e.isExact()) {
            plot.addRangeMarker(
                    new IntervalMarker(e.low(), e.high(), faint(colour)), Layer.BACKGROUND);
        }
        ValueMarker likely = new ValueMarker(e.likely());
        likely.setPaint(colour);
        likely.setStroke(
                new BasicStroke(
                        1.4f,
                        BasicStroke.CAP_BUTT,
                        BasicStroke.JOIN_ROUND,
                        10,
                        new float[] {6, 4},
                        0));
        plot.addRangeMarker(likely, Layer.BACKGROUND);
    }

    private static Color faint(Color colour) {
        return new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), 46);
    }

    /** Makes two series of each place: one that counts here and one that does not. */
    private XYIntervalSeriesCollection data() {
        XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
        for (String place : marks.places()) {
            for (boolean counts : List.of(true, false)) {
                XYIntervalSeries series =
                        new XYIntervalSeries(counts ? place : place + " (little weight)");
                marks.all().stream()
                        .filter(m -> m.group().equals(place) && m.counts() == counts)
                        .forEach(
                                m ->
                                        series.add(
                                                m.year(),
                                                m.from(),
                                                m.to(),
                                                m.likely(),
                                                m.low(),
                                                m.high()));
                data.addSeries(series);
            }
        }
        return data;
    }

    private XYErrorRenderer renderer(XYIntervalSeriesCollection data) {
        XYErrorRenderer renderer = new XYErrorRenderer();
        renderer.setErrorStroke(new BasicStroke(1f));
        for (int i = 0; i < data.getSeriesCount(); i++) {
            int place = i / 2;
            boolean counts = i % 2 == 0;
            boolean paired = !data.getSeries(place * 2).isEmpty();
            renderer.setSeriesPaint(i, look.series(place));
            renderer.setSeriesShape(i, ChartStyle.mark(place));
            renderer.setSeriesShapesFilled(i, counts);
            boolean named = !data.getSeries(i).isEmpty() && (counts || !paired);
            renderer.setSeriesVisibleInLegend(i, named);
        }
        return renderer;
    }

    private void label(Graphics2D pen, XYPlot plot, Rectangle2D area) {
        LabelPlaces places = new LabelPlaces(area);
        List<MeasureMarks.Mark> all = marks.all();
        for (MeasureMarks.Mark m : all) {
            places.block(x(plot, area, m), y(plot, area, m), 9);
        }
        for (MeasureMarks.Mark m : all) {
            pen.setFont(m.counts() ? style.fonts().bold(10) : style.fonts().regular(10));
            pen.setColor(look.ink());
            String words = Integer.toString(m.number());
            double wide = pen.getFontMetrics().stringWidth(words);
            double[] at = places.near(x(plot, area, m), y(plot, area, m), wide, 9);
            pen.drawString(words, (float) at[0], (float) at[1]);
        }
    }

    private static double x(XYPlot plot, Rectangle2D area, MeasureMarks.Mark m) {
        return plot.getDomainAxis().valueToJava2D(m.year(), area, plot.getDomainAxisEdge());
    }

    private static double y(XYPlot plot, Rectangle2D area, MeasureMarks.Mark m) {
        return plot.getRangeAxis().valueToJava2D(m.likely(), area, plot.getRangeAxisEdge());
    }
}
