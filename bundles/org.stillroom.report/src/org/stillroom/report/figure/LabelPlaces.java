package org.stillroom.report.figure;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Finds free room for labels beside their marks: off the bars first, then farther out. */
final class LabelPlaces {

    private static final int RINGS = 8;

    private final Rectangle2D area;
    private final List<Rectangle2D> taken = new ArrayList<>();

    LabelPlaces(Rectangle2D area) {
        this.area = area;
    }

    /** Keeps labels off a mark. */
    void block(double x, double y, double size) {
        taken.add(new Rectangle2D.Double(x - size / 2, y - size / 2, size, size));
    }

    /** Returns the left end of the base line of a label for the mark at a place, and keeps it. */
    double[] near(double x, double y, double width, double height) {
        for (int ring = 0; ring < RINGS; ring++) {
            double out = 6 + ring * 7.0;
            double[][] corners = {
                {x + out - 2, y - out - height + 4},
                {x + out - 2, y + out - 3},
                {x - width / 2, y - out - height},
                {x - width / 2, y + out},
                {x + out, y - height / 2},
                {x - out - width, y - height / 2},
                {x - out - width, y - out - height},
                {x - out - width, y + out}
            };
            for (double[] c : corners) {
                Rectangle2D box = new Rectangle2D.Double(c[0], c[1], width, height);
                if (area.contains(box) && taken.stream().noneMatch(box::intersects)) {
                    taken.add(box);
                    return new double[] {c[0], c[1] + height};
                }
            }
        }
        return new double[] {x + 6, y + height / 2};
    }
}
