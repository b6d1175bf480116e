package org.stillroom.report.figure;

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
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.RectangleEdge;
import org.stillroom.report.Look;

/** What all charts have in common: axes, grid, title, legend, and marks told apart by shape. */
final class ChartStyle {

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

    private final Look look;
    private final Fonts fonts = Fonts.load();

    ChartStyle(Look look) {
        this.look = look;
    }

    Fonts fonts() {
        return fonts;
    }

    /** Returns the mark of the nth series. */
    static Shape mark(int n) {
        return MARKS.get(n % MARKS.size());
    }

    NumberAxis years() {
        NumberAxis years = new NumberAxis("year");
        dress(years);
        years.setAutoRangeIncludesZero(false);
        years.setNumberFormatOverride(
                new DecimalFormat("0", DecimalFormatSymbols.getInstance(Locale.ROOT)));
        return years;
    }

    void dress(ValueAxis axis) {
        axis.setLabelFont(fonts.regular(11));
        axis.setTickLabelFont(fonts.regular(10));
        axis.setLabelPaint(look.ink());
        axis.setTickLabelPaint(look.ink());
        axis.setAxisLinePaint(look.ink());
        axis.setTickMarkPaint(look.ink());
    }

    JFreeChart chart(String title, XYPlot plot) {
        plot.setBackgroundPaint(look.paper());
        plot.setDomainGridlinePaint(look.faint());
        plot.setRangeGridlinePaint(look.faint());
        plot.setOutlinePaint(look.faint());
        JFreeChart chart = new JFreeChart(title, fonts.bold(15), plot, false);
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
