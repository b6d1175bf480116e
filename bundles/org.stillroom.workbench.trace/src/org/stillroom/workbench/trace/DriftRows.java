package org.stillroom.workbench.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.stillroom.drift.Drift;
import org.stillroom.inquiry.Amounts;
import org.stillroom.workbench.widgets.DataTable;

/** Puts a drift into the rows of tables. */
final class DriftRows {
    /** The columns of the events. */
    static final List<DataTable.Column> EVENTS =
            List.of(
                    DataTable.Column.words("Ingredient", 24),
                    DataTable.Column.words("Event", 17),
                    DataTable.Column.words("After", 19),
                    DataTable.Column.words("By", 19));

    private DriftRows() {}

    static List<DataTable.Column> columns(Drift drift) {
        List<DataTable.Column> columns = new ArrayList<>();
        columns.add(DataTable.Column.words("Version", 24));
        columns.add(DataTable.Column.figures("Year", 9));
        drift.roles().forEach(role -> columns.add(DataTable.Column.figures(role + " %", 15)));
        columns.add(DataTable.Column.figures("Distance", 15));
        columns.add(DataTable.Column.words("Descent", 18));
        return columns;
    }

    static List<DataTable.Row> points(Drift drift) {
        Map<String, Drift.Distance> distances =
                drift.distances().stream()
                        .collect(Collectors.toMap(Drift.Distance::to, d -> d, (a, b) -> a));
        List<DataTable.Row> rows = new ArrayList<>();
        for (Drift.Point point : drift.points()) {
            List<String> cells = new ArrayList<>();
            cells.add(point.label());
            cells.add(String.format(Locale.ROOT, "%.0f", point.year()));
            point.shares().forEach(s -> cells.add(Amounts.share(s)));
            cells.add(distance(distances.get(point.version())));
            cells.add(point.independent() ? "independent" : "a copy");
            rows.add(new DataTable.Row(cells, point.version()));
        }
        return rows;
    }

    private static String distance(Drift.Distance distance) {
        return distance == null
                ? "–"
                : distance.aitchison().map(d -> String.format(Locale.ROOT, "%.2f", d)).orElse("–");
    }

    static List<DataTable.Row> events(Drift drift) {
        return drift.events().stream()
                .map(
                        e ->
                                new DataTable.Row(
                                        List.of(
                                                e.ingredient(),
                                                e.enters() ? "→ enters" : "← leaves",
                                                e.after(),
                                                e.by()),
                                        e))
                .toList();
    }
}
