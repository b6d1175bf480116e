package org.stillroom.workbench.library;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.graphics.TextStyle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.stillroom.model.date.Certainty;
import org.stillroom.model.spec.Version;
import org.stillroom.search.SearchHit;
import org.stillroom.workbench.Ink;
import org.stillroom.workbench.widgets.DataTable;

/** What a search found, with the found words lit up where they were printed. */
final class HitTable {
    private static final int WORDS = 3;
    private static final List<DataTable.Column> COLUMNS =
            List.of(
                    DataTable.Column.words("Recipe", 22),
                    DataTable.Column.words("Source", 17),
                    DataTable.Column.words("Date", 13),
                    DataTable.Column.words("Words", 48));

    private final DataTable table;
    private final Ink ink;

    /** A hit with what is shown of it. */
    private record Shown(String version, Snippet snippet) {}

    HitTable(Composite parent) {
        table = new DataTable(parent, "Found recipes", COLUMNS);
        control().setData("org.eclipse.e4.ui.css.CssClassName", "Inked");
        ink = Ink.of(control(), control()::redraw);
        control()
                .addListener(
                        SWT.EraseItem,
                        e -> {
                            if (e.index == WORDS) {
                                e.detail &= ~SWT.FOREGROUND;
                            }
                        });
        control()
                .addListener(
                        SWT.PaintItem,
                        e -> {
                            if (e.index == WORDS) {
                                paint(e);
                            }
                        });
    }

    Table control() {
        return table.control();
    }

    /** Calls the consumer with a version's id when its row is opened. */
    void onOpen(Consumer<String> consumer) {
        table.onOpen(row -> consumer.accept(row.target(Shown.class).version()));
    }

    /** Offers an action on the selected hit's version in the context menu. */
    void offer(String words, Consumer<String> action) {
        table.offer(words, row -> action.accept(row.target(Shown.class).version()));
    }

    /** Returns the id of the version that is selected. */
    Optional<String> selected() {
        return table.selection().map(r -> r.target(Shown.class).version());
    }

    /** Returns the row of a hit. */
    static DataTable.Row row(SearchHit hit, Version version) {
        Snippet snippet = Snippet.of(version, hit.marks());
        String possibly = hit.certainty() == Certainty.POSSIBLE ? " (possibly)" : "";
        return new DataTable.Row(
                List.of(
                        hit.title(),
                        version.source().shortName(),
                        Places.date(version.source()) + possibly,
                        snippet.words()),
                new Shown(hit.version(), snippet));
    }

    void show(List<DataTable.Row> rows) {
        table.rows(rows);
        table.select(0);
    }

    private void paint(Event event) {
        TableItem item = (TableItem) event.item;
        int index = control().indexOf(item);
        if (index < 0 || index >= table.rows().size()) {
            return;
        }
        Snippet snippet = table.rows().get(index).target(Shown.class).snippet();
        boolean selected = (event.detail & SWT.SELECTED) != 0;
        Color plain =
                selected
                        ? event.display.getSystemColor(SWT.COLOR_LIST_SELECTION_TEXT)
                        : control().getForeground();
        TextLayout layout = new TextLayout(event.display);
        layout.setFont(control().getFont());
        layout.setText(snippet.words());
        TextStyle found =
                new TextStyle(
                        control().getFont(), ink.colour(Ink.Use.INK), ink.colour(Ink.Use.LIT));
        found.underline = true;
        for (int[] place : snippet.found()) {
            layout.setStyle(found, place[0], place[1] - 1);
        }
        Rectangle cell = item.getTextBounds(WORDS);
        event.gc.setForeground(plain);
        int top = cell.y + Math.max(0, (cell.height - layout.getBounds().height) / 2);
        layout.draw(event.gc, cell.x, top);
        layout.dispose();
    }
}
