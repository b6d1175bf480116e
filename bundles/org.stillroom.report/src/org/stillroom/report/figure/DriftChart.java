package org.stillroom.report.figure;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;
import org.stillroom.drift.Drift;
import org.stillroom.report.Drawing;
import org.stillroom.report.Look;

/** Draws shares of the whole over time with their ranges, one mark and line for each role. */
public final class DriftChart {

    private static final int WIDTH = 760;
    private static final int HEIGHT = 440;
    private static final double LEAST = 0.005;

    private DriftChart() {}

    /** Draws a drift. */
    public static Drawing draw(String drink, Drift drift, Look look) {
        String title = "Shares of the whole over time: " + drink;
        JFreeChart chart = chart(title, drift, look, Fonts.load());
        return SvgCanvas.draw(
                title,
                description(drift),
                WIDTH,
                HEIGHT,
                pen -> chart.draw(pen, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT)));
    }

    private static String description(Drift drift) {
        return String.join(" ", drift.words());
    }

    private static JFreeChart chart(String title, Drift drift, Look look, Fonts fonts) {
        YIntervalSeriesCollection data = data(drift);
        NumberAxis years = axis("year", look, fonts);
        years.setAutoRangeIncludesZero(false);
        years.setNumberFormatOverride(
                new DecimalFormat("0", DecimalFormatSymbols.getInstance(Locale.ROOT)));
        NumberAxis shares = axis("share of the whole, %", look, fonts);
        shares.setRange(0, 100);
        XYPlot plot = new XYPlot(data, years, shares, renderer(data, look));
        plot.setBackgroundPaint(look.paper());
        plot.setDomainGridlinePaint(look.faint());
        plot.setRangeGridlinePaint(look.faint());
        plot.setOutlinePaint(look.faint());
        Font head = fonts.bold(15);
        JFreeChart chart = new JFreeChart(title, head, plot, false);
        chart.setBackgroundPaint(look.paper());
        chart.getTitle().setPaint(look.ink());
        LegendTitle legend = new LegendTitle(plot);
        legend.setPosition(RectangleEdge.BOTTOM);
        legend.setItemFont(fonts.regular(11));
        legend.setItemPaint(look.ink());
        legend.setBackgroundPaint(look.paper());
        legend.setFrame(BlockBorder.NONE);
        chart.addLegend(legend);
        return chart;
    }

    private static NumberAxis axis(String label, Look look, Fonts fonts) {
        NumberAxis axis = new NumberAxis(label);
        axis.setLabelFont(fonts.regular(11));
        axis.setTickLabelFont(fonts.regular(10));
        axis.setLabelPaint(look.ink());
        axis.setTickLabelPaint(look.ink());
        axis.setAxisLinePaint(look.ink());
        axis.setTickMarkPaint(look.ink());
        return axis;
    }

    private static YIntervalSeriesCollection data(Drift drift) {
        YIntervalSeriesCollection data = new YIntervalSeriesCollection();
        for (int role = 0; role < drift.roles().size(); role++) {
            YIntervalSeries series = new YIntervalSeries(drift.roles().get(role));
            for (Drift.Point point : drift.points()) {
                if (point.independent() && !Double.isNaN(point.year())) {
                    Drift.Share s = point.shares().get(role);
                    series.add(point.year(), s.likely() * 100, s.low() * 100, s.high() * 100);
                }
            }
            if (occurs(series)) {
                data.addSeries(series);
            }
        }
        return data;
    }

    private static boolean occurs(YIntervalSeries series) {
        for (int i = 0; i < series.getItemCount(); i++) {
            if (series.getYHighValue(i) > LEAST * 100) {
                return true;
            }
        }
        return false;
    }

    private static XYErrorRenderer renderer(YIntervalSeriesCollection data, Look look) {
        XYErrorRenderer renderer = new XYErrorRenderer();
        renderer.setDefaultLinesVisible(true);
        renderer.setDrawXError(false);
        renderer.setErrorStroke(new BasicStroke(1f));
        for (int i = 0; i < data.getSeriesCount(); i++) {
            renderer.setSeriesPaint(i, look.series(i));
            renderer.setSeriesShape(i, MARKS.get(i % MARKS.size()));
            renderer.setSeriesStroke(i, stroke(i));
        }
        return renderer;
    }

    private static BasicStroke stroke(int series) {
        float[][] dashes = {{1, 0}, {7, 4}, {2, 3}, {9, 3, 2, 3}};
        float[] dash = dashes[series % dashes.length];
        return dash[1] == 0
                ? new BasicStroke(1.6f)
                : new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
    }

    private static final List<Shape> MARKS =
            List.of(
                    new Ellipse2D.Double(-4, -4, 8, 8),
                    new Rectangle2D.Double(-3.5, -3.5, 7, 7),
                    polygon(0, -5, 4.5, 4, -4.5, 4),
                    polygon(0, -5, 5, 0, 0, 5, -5, 0),
                    polygon(0, 5, 4.5, -4, -4.5, -4),
                    polygon(-5, -2, 5, -2, 5, 2, -5, 2),
                    polygon(-2, -5, 2, -5, 2, 5, -2, 5),
                    polygon(-4, -4, 4, 4, 4, -4, -4, 4));

    private static Shape polygon(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        path.closePath();
        return path;
    }
}
