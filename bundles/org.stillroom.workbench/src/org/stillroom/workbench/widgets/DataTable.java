package org.stillroom.workbench.widgets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/**
 * A table of words and figures that shares its room among its columns.
 *
 * <p>Rows are made when they come into sight, so that ten thousand cost no more than ten. A
 * column's head sorts by it; Enter or a double click opens a row; the copy key copies the selected
 * rows.
 */
public final class DataTable {
    private static final int NARROWEST = 48;
    private static final int CELL_MARGIN = 3;

    /** The longest words among so many rows say how wide a column is. */
    private static final int MEASURED_ROWS = 200;

    private final Table table;
    private final List<Column> columns;
    private List<Row> rows = List.of();
    private int[] needed;
    private Consumer<Row> opened = row -> {};
    private Consumer<Optional<Row>> selected = row -> {};

    /**
     * A column.
     *
     * @param name its head
     * @param weight its share of the room beside the other columns' weights
     * @param numeric whether it holds figures, which stand to the right and sort by value
     */
    public record Column(String name, int weight, boolean numeric) {
        /** Returns a column of words. */
        public static Column words(String name, int weight) {
            return new Column(name, weight, false);
        }

        /** Returns a column of figures. */
        public static Column figures(String name, int weight) {
            return new Column(name, weight, true);
        }
    }

    /**
     * A row.
     *
     * @param cells one for each column
     * @param target what it is about, for the one who filled the table
     */
    public record Row(List<String> cells, Object target) {
        /** Keeps the cells as an unchangeable list. */
        public Row {
            cells = List.copyOf(cells);
        }

        /** Returns what it is about. */
        public <T> T target(Class<T> type) {
            return type.cast(target);
        }
    }

    /** Makes an empty table under a name. */
    public DataTable(Composite parent, String name, List<Column> columns) {
        this.columns = List.copyOf(columns);
        table = new Table(parent, SWT.FULL_SELECTION | SWT.MULTI | SWT.VIRTUAL);
        table.setHeaderVisible(true);
        Names.give(table, name);
        for (Column column : columns) {
            head(column);
        }
        needed = needed();
        table.addListener(SWT.SetData, this::fill);
        table.addListener(SWT.Resize, e -> widths());
        table.addListener(SWT.Selection, e -> selected.accept(selection()));
        table.addListener(SWT.DefaultSelection, e -> selection().ifPresent(opened));
        table.addListener(SWT.KeyDown, this::key);
        table.addListener(SWT.MouseMove, e -> table.setToolTipText(hidden(e.x, e.y)));
    }

    private void head(Column column) {
        TableColumn head = new TableColumn(table, column.numeric() ? SWT.RIGHT : SWT.LEFT);
        head.setText(column.name());
        head.setToolTipText(column.name());
        head.addListener(SWT.Selection, e -> sort(head));
    }

    /** Returns the widget. */
    public Table control() {
        return table;
    }

    /** Calls the consumer when a row is opened. */
    public DataTable onOpen(Consumer<Row> consumer) {
        opened = consumer;
        return this;
    }

    /** Offers an action on the selected row in the table's context menu. */
    public DataTable offer(String words, Consumer<Row> action) {
        Menu menu = Optional.ofNullable(table.getMenu()).orElseGet(() -> new Menu(table));
        table.setMenu(menu);
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(words);
        item.addListener(SWT.Selection, e -> selection().ifPresent(action));
        menu.addListener(SWT.Show, e -> item.setEnabled(selection().isPresent()));
        return this;
    }

    /** Calls the consumer when another row is selected, or none. */
    public DataTable onSelect(Consumer<Optional<Row>> consumer) {
        selected = consumer;
        return this;
    }

    /** Shows these rows. */
    public void rows(List<Row> next) {
        rows = new ArrayList<>(next);
        table.setSortColumn(null);
        needed = needed();
        show();
        widths();
    }

    private void show() {
        table.setRedraw(false);
        table.deselectAll();
        table.setItemCount(rows.size());
        table.clearAll();
        table.setRedraw(true);
    }

    /** Returns the rows in the order that is shown. */
    public List<Row> rows() {
        return List.copyOf(rows);
    }

    /** Returns the first selected row. */
    public Optional<Row> selection() {
        int index = table.getSelectionIndex();
        return index < 0 || index >= rows.size() ? Optional.empty() : Optional.of(rows.get(index));
    }

    /** Selects a row by its place and brings it into sight; does not tell the consumer. */
    public void select(int index) {
        if (index >= 0 && index < rows.size()) {
            table.setSelection(index);
        } else {
            table.deselectAll();
        }
    }

    /** Returns the row at a place of the widget. */
    public Optional<Row> at(int x, int y) {
        TableItem item = table.getItem(new org.eclipse.swt.graphics.Point(x, y));
        int index = item == null ? -1 : table.indexOf(item);
        return index < 0 || index >= rows.size() ? Optional.empty() : Optional.of(rows.get(index));
    }

    /** Returns the words of a cell that is too narrow for them, or null, which shows no tool tip. */
    private String hidden(int x, int y) {
        org.eclipse.swt.graphics.Point place = new org.eclipse.swt.graphics.Point(x, y);
        TableItem item = table.getItem(place);
        for (int i = 0; item != null && i < columns.size(); i++) {
            if (item.getBounds(i).contains(place)) {
                String words = item.getText(i);
                return isCut(words, item.getBounds(i).width) ? words : null;
            }
        }
        return null;
    }

    private boolean isCut(String words, int width) {
        GC gc = new GC(table);
        int needed = gc.textExtent(words).x + 2 * CELL_MARGIN;
        gc.dispose();
        return needed > width;
    }

    private void fill(Event event) {
        TableItem item = (TableItem) event.item;
        if (event.index < 0 || event.index >= rows.size()) {
            return; // the toolkit asks late for a row that is gone
        }
        Row row = rows.get(event.index);
        for (int i = 0; i < columns.size(); i++) {
            item.setText(i, row.cells().get(i).replace('\n', ' '));
        }
    }

    private void widths() {
        int room = table.getClientArea().width - 4;
        int[] widths = ColumnWidths.share(room, columns, needed);
        for (int i = 0; i < widths.length; i++) {
            if (table.getColumn(i).getWidth() != widths[i]) {
                table.getColumn(i).setWidth(widths[i]);
            }
        }
    }

    /** Measures each column's head and the longest words of its first rows. */
    private int[] needed() {
        int[] needed = new int[columns.size()];
        GC gc = new GC(table);
        Font bold =
                FontDescriptor.createFrom(table.getFont())
                        .setStyle(SWT.BOLD)
                        .createFont(table.getDisplay());
        for (int i = 0; i < needed.length; i++) {
            int column = i;
            String longest =
                    rows.stream()
                            .limit(MEASURED_ROWS)
                            .map(r -> r.cells().get(column))
                            .max(Comparator.comparingInt(String::length))
                            .orElse("");
            gc.setFont(table.getFont());
            int words = gc.textExtent(longest.replace('\n', ' ')).x;
            gc.setFont(bold);
            int head = gc.textExtent(columns.get(i).name()).x;
            needed[i] = Math.max(NARROWEST, Math.max(words, head) + 4 * CELL_MARGIN);
        }
        bold.dispose();
        gc.dispose();
        return needed;
    }

    private void sort(TableColumn head) {
        int index = table.indexOf(head);
        boolean up = table.getSortColumn() != head || table.getSortDirection() == SWT.DOWN;
        Comparator<Row> order =
                columns.get(index).numeric()
                        ? Comparator.comparingDouble(r -> number(r.cells().get(index)))
                        : Comparator.comparing(r -> r.cells().get(index));
        rows.sort(up ? order : order.reversed());
        table.setSortColumn(head);
        table.setSortDirection(up ? SWT.UP : SWT.DOWN);
        show();
    }

    private static double number(String cell) {
        StringBuilder digits = new StringBuilder();
        for (char c : cell.toCharArray()) {
            boolean part = Character.isDigit(c) || c == '.' || digits.isEmpty() && c == '-';
            if (part) {
                digits.append(c);
            } else if (!digits.isEmpty()) {
                break;
            }
        }
        try {
            return Double.parseDouble(digits.toString());
        } catch (NumberFormatException none) {
            return Double.NEGATIVE_INFINITY;
        }
    }

    private void key(Event event) {
        boolean copy = (event.stateMask & SWT.MOD1) != 0 && event.keyCode == 'c';
        if (copy && table.getSelectionCount() > 0) {
            String words = Stream.of(copied()).collect(Collectors.joining("\n"));
            Clipboard clipboard = new Clipboard(table.getDisplay());
            clipboard.setContents(
                    new Object[] {words}, new Transfer[] {TextTransfer.getInstance()});
            clipboard.dispose();
        }
    }

    private String[] copied() {
        return java.util.Arrays.stream(table.getSelectionIndices())
                .mapToObj(i -> String.join("\t", rows.get(i).cells()))
                .toArray(String[]::new);
    }
}
