package org.stillroom.report.figure;

import java.awt.BasicStroke;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
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
        JFreeChart chart = chart(title, drift, look);
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

    private static JFreeChart chart(String title, Drift drift, Look look) {
        ChartStyle style = new ChartStyle(look);
        YIntervalSeriesCollection data = data(drift);
        NumberAxis shares = new NumberAxis("share of the whole, %");
        style.dress(shares);
        shares.setRange(0, 100);
        return style.chart(title, new XYPlot(data, style.years(), shares, renderer(data, look)));
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
            renderer.setSeriesShape(i, ChartStyle.mark(i));
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
}
