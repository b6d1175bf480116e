package org.stillroom.workbench.trace;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.model.explain.Problem;
import org.stillroom.report.page.AnswerTables;
import org.stillroom.workbench.Lane;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.Work;
import org.stillroom.workbench.widgets.DataTable;
import org.stillroom.workbench.widgets.FileChooser;
import org.stillroom.workbench.widgets.Names;
import org.stillroom.workbench.widgets.ReasonTree;

/** Shows any answer: words, tables, figures and reasons one under the other. */
final class AnswerPane {
    private static final int ROW_HEIGHT = 26;
    private static final int MOST_ROWS = 14;

    private final Work work;
    private final IThemeEngine themes;
    private final FileChooser files;
    private final Consumer<String> opened;
    private final Consumer<Navigator.Reason> explained;
    private final Lane saving;
    private final ScrolledComposite scrolled;
    private final List<FigurePane> figures = new ArrayList<>();
    private Composite content;

    /** Makes an empty pane; rows that are opened lead to their pages, reasons to the explanation. */
    AnswerPane(
            Composite parent,
            Work work,
            IThemeEngine themes,
            FileChooser files,
            Navigator navigator) {
        this.files = files;
        this.work = work;
        this.themes = themes;
        this.opened = navigator::page;
        this.explained = navigator::explain;
        saving = work.lane("Saving the table");
        scrolled = new ScrolledComposite(parent, SWT.V_SCROLL);
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        scrolled.addListener(SWT.Resize, e -> measure());
        scrolled.addListener(SWT.Dispose, e -> saving.close());
        content = fresh();
    }

    Control control() {
        return scrolled;
    }

    private Composite fresh() {
        Composite next = new Composite(scrolled, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(16, 12).spacing(0, 8).applyTo(next);
        scrolled.setContent(next);
        return next;
    }

    private void clear() {
        figures.clear();
        content.dispose();
        content = fresh();
    }

    /** Shows an answer. */
    void show(Answer answer) {
        clear();
        heading(answer.title());
        answer.problems().forEach(this::problem);
        answer.blocks().forEach(this::block);
        measure();
        scrolled.setOrigin(0, 0);
    }

    /** Shows why there is no answer. */
    void refuse(String words) {
        clear();
        paragraph(words);
        measure();
    }

    /** Draws the figures in the colours of the new theme. */
    void theme() {
        figures.forEach(FigurePane::redraw);
    }

    private void measure() {
        int width = Math.max(200, scrolled.getClientArea().width);
        content.layout(true, true);
        scrolled.setMinSize(content.computeSize(width, SWT.DEFAULT));
    }

    private void block(Block block) {
        switch (block) {
            case Block.Paragraph p -> paragraph(p.words());
            case Block.Heading h -> heading(h.words());
            case Block.Table t -> table(t);
            case Block.Why w -> why(w);
            case Block.Picture p -> picture(p);
        }
    }

    private void heading(String words) {
        label(words).setData("org.eclipse.e4.ui.css.CssClassName", "Heading");
    }

    private void paragraph(String words) {
        label(words);
    }

    private void problem(Problem problem) {
        label("⚠ " + problem.toText()).setData("org.eclipse.e4.ui.css.CssClassName", "Caution");
    }

    private Label label(String words) {
        Label label = new Label(content, SWT.WRAP);
        label.setText(words.replace("&", "&&"));
        GridDataFactory.fillDefaults().grab(true, false).hint(300, SWT.DEFAULT).applyTo(label);
        return label;
    }

    private void table(Block.Table block) {
        Composite head = new Composite(content, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(head);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        Label caption = new Label(head, SWT.NONE);
        caption.setText(block.caption().replace("&", "&&"));
        GridDataFactory.fillDefaults()
                .align(SWT.FILL, SWT.CENTER)
                .grab(true, false)
                .applyTo(caption);
        Button save = new Button(head, SWT.PUSH);
        save.setText("Save table…");
        Names.give(save, "Save table " + block.caption());
        save.addListener(SWT.Selection, e -> save(block));
        DataTable table = new DataTable(content, block.caption(), columns(block));
        table.onOpen(
                row -> {
                    String target = row.target(String.class);
                    if (!target.isEmpty()) {
                        opened.accept(target);
                    }
                });
        if (!block.whys().isEmpty()) {
            table.offer("Explain the amounts", row -> explain(block, row));
        }
        table.rows(rows(block));
        int rows = Math.min(MOST_ROWS, Math.max(2, block.rows().size())) + 2;
        GridDataFactory.fillDefaults()
                .grab(true, false)
                .hint(300, rows * ROW_HEIGHT)
                .applyTo(table.control());
    }

    private void explain(Block.Table block, DataTable.Row row) {
        int index = block.rows().indexOf(row.cells());
        block.why(index)
                .ifPresent(why -> explained.accept(new Navigator.Reason(heading(row), why)));
    }

    private static String heading(DataTable.Row row) {
        return String.join(" ", row.cells().stream().filter(c -> !c.isBlank()).limit(3).toList());
    }

    /** Gives each column room by the longest of its words, within reason. */
    private static List<DataTable.Column> columns(Block.Table block) {
        List<DataTable.Column> columns = new ArrayList<>();
        for (int i = 0; i < block.columns().size(); i++) {
            int column = i;
            int longest =
                    block.rows().stream().mapToInt(r -> r.get(column).length()).max().orElse(0);
            int letters = Math.max(longest, block.columns().get(i).length());
            int weight = Math.clamp(letters * 3 / 2, 10, 60);
            columns.add(
                    new DataTable.Column(block.columns().get(i), weight, block.numeric().get(i)));
        }
        return columns;
    }

    private static List<DataTable.Row> rows(Block.Table block) {
        List<DataTable.Row> rows = new ArrayList<>();
        for (int i = 0; i < block.rows().size(); i++) {
            String target = i < block.targets().size() ? block.targets().get(i) : "";
            rows.add(new DataTable.Row(block.rows().get(i), target));
        }
        return rows;
    }

    private void why(Block.Why block) {
        ReasonTree tree = new ReasonTree(content);
        tree.show(block.explanation());
        GridDataFactory.fillDefaults().grab(true, false).hint(300, 220).applyTo(tree.control());
    }

    private void picture(Block.Picture block) {
        FigurePane pane = new FigurePane(content, work, themes, files);
        figures.add(pane);
        GridDataFactory.fillDefaults().grab(true, false).hint(300, 460).applyTo(pane.control());
        pane.show(block.figure(), block.name());
    }

    private void save(Block.Table block) {
        FileChooser.Question question =
                new FileChooser.Question(
                        "Save table",
                        fileName(block.caption()),
                        List.of(new FileChooser.Form("Comma-separated values (CSV)", "csv")));
        files.toSave(scrolled.getShell(), question).ifPresent(p -> save(block, p));
    }

    private static String fileName(String caption) {
        String plain = caption.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\d]+", "-");
        return plain.replaceAll("^-|-$", "") + ".csv";
    }

    private void save(Block.Table block, Path file) {
        saving.run(
                progress -> Files.writeString(file, AnswerTables.toCsv(block)),
                written -> work.say("Saved " + written));
    }
}
