package org.stillroom.workbench.widgets;

import java.util.List;

/**
 * Shares the room of a table among its columns by what their words need.
 *
 * <p>Figures always get their room. Where there is too little for all, each column of words gets
 * what it needs or its fair share, whichever is less; where that would be too little to be read,
 * the table scrolls.
 * Where there is more than enough, columns of words get the rest by their weights.
 */
final class ColumnWidths {
    /** A column of words is at least so wide, or as wide as its words; else the table scrolls. */
    private static final int READABLE = 90;

    /** In a table that scrolls a column of words is no wider than this. */
    private static final int COMFORTABLE = 150;

    private ColumnWidths() {}

    /** Returns a width for each column, in points. */
    static int[] share(int room, List<DataTable.Column> columns, int[] needed) {
        int[] widths = needed.clone();
        int left = room;
        for (int width : widths) {
            left -= width;
        }
        if (left < 0) {
            shrink(room, columns, widths);
        } else {
            stretch(left, columns, widths);
        }
        return widths;
    }

    private static void stretch(int left, List<DataTable.Column> columns, int[] widths) {
        boolean words = columns.stream().anyMatch(c -> !c.numeric());
        int whole = 0;
        for (DataTable.Column column : columns) {
            whole += grows(column, words) ? column.weight() : 0;
        }
        for (int i = 0; i < widths.length && whole > 0; i++) {
            if (grows(columns.get(i), words)) {
                widths[i] += (int) ((long) left * columns.get(i).weight() / whole);
            }
        }
    }

    private static boolean grows(DataTable.Column column, boolean words) {
        return !words || !column.numeric();
    }

    /** Lowers a ceiling over the columns of words until all of them fit. */
    private static void shrink(int room, List<DataTable.Column> columns, int[] widths) {
        boolean scrolls = whole(columns, widths, READABLE) > room;
        int low = scrolls ? COMFORTABLE : READABLE;
        int high = scrolls ? COMFORTABLE : Math.max(READABLE, room);
        while (low < high) {
            int ceiling = (low + high + 1) / 2;
            if (whole(columns, widths, ceiling) <= room) {
                low = ceiling;
            } else {
                high = ceiling - 1;
            }
        }
        for (int i = 0; i < widths.length; i++) {
            widths[i] = under(columns.get(i), widths[i], low);
        }
    }

    private static int whole(List<DataTable.Column> columns, int[] widths, int ceiling) {
        int whole = 0;
        for (int i = 0; i < widths.length; i++) {
            whole += under(columns.get(i), widths[i], ceiling);
        }
        return whole;
    }

    private static int under(DataTable.Column column, int width, int ceiling) {
        return column.numeric() ? width : Math.min(width, ceiling);
    }
}
