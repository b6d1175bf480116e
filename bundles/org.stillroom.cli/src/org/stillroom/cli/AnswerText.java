package org.stillroom.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.Column;
import picocli.CommandLine.Help.Column.Overflow;
import picocli.CommandLine.Help.TextTable;

/** Writes an answer for a terminal. */
final class AnswerText {

    private static final int WIDTH = 110;
    private static final int NARROWEST = 8;
    private static final int GAP = 2;

    private AnswerText() {}

    /** Returns the answer for programs, two blanks a level, line feeds alone. */
    static String json(Answer answer) {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(indenter);
        printer.indentArraysWith(indenter);
        try {
            return new ObjectMapper().writer(printer).writeValueAsString(answer.json()) + "\n";
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("A tree of JSON can always be written", impossible);
        }
    }

    /** Returns the answer for people. */
    static String of(Answer answer) {
        StringBuilder out = new StringBuilder();
        out.append(answer.title()).append('\n');
        out.append("=".repeat(answer.title().length())).append('\n');
        for (Block block : answer.blocks()) {
            out.append('\n');
            switch (block) {
                case Block.Paragraph p -> wrap(out, p.words());
                case Block.Heading h ->
                        out.append(h.words()).append('\n').append("-".repeat(h.words().length())).append('\n');
                case Block.Table t -> table(out, t);
                case Block.Why w -> out.append(w.explanation().toText());
                case Block.Picture p -> out.append("(figure “").append(p.name())
                        .append("”: --figures FOLDER writes it)\n");
            }
        }
        return out.toString();
    }

    private static void wrap(StringBuilder out, String words) {
        int column = 0;
        for (String word : words.split("\\s+")) {
            if (column > 0 && column + 1 + word.length() > WIDTH) {
                out.append('\n');
                column = 0;
            } else if (column > 0) {
                out.append(' ');
                column++;
            }
            out.append(word);
            column += word.length();
        }
        out.append('\n');
    }

    private static void table(StringBuilder out, Block.Table t) {
        out.append(t.caption()).append('\n');
        int[] widths = widths(t);
        Column[] columns = new Column[widths.length];
        for (int i = 0; i < widths.length; i++) {
            columns[i] = new Column(widths[i] + GAP, 0, Overflow.WRAP);
        }
        TextTable table =
                TextTable.forColumns(
                        picocli.CommandLine.Help.defaultColorScheme(Ansi.OFF), columns);
        table.addRowValues(cells(t, t.columns(), widths));
        String[] rules = new String[widths.length];
        for (int i = 0; i < rules.length; i++) {
            rules[i] = "─".repeat(widths[i]);
        }
        table.addRowValues(rules);
        t.rows().forEach(r -> table.addRowValues(cells(t, r, widths)));
        out.append(table.toString().replace(System.lineSeparator(), "\n"));
    }

    private static String[] cells(Block.Table t, List<String> row, int[] widths) {
        String[] cells = new String[row.size()];
        for (int i = 0; i < cells.length; i++) {
            String cell = row.get(i);
            int blanks = t.numeric().get(i) ? widths[i] - cell.length() : 0;
            cells[i] = " ".repeat(Math.max(0, blanks)) + cell;
        }
        return cells;
    }

    /** Gives each column what it needs, and takes from the widest until all fit on a line. */
    private static int[] widths(Block.Table t) {
        int[] widths = new int[t.columns().size()];
        for (int i = 0; i < widths.length; i++) {
            int column = i;
            widths[i] =
                    Math.max(
                            t.columns().get(i).length(),
                            t.rows().stream().mapToInt(r -> r.get(column).length()).max().orElse(0));
        }
        while (total(widths) > WIDTH) {
            int widest = 0;
            for (int i = 1; i < widths.length; i++) {
                widest = widths[i] > widths[widest] ? i : widest;
            }
            if (widths[widest] <= NARROWEST) {
                break;
            }
            widths[widest]--;
        }
        return widths;
    }

    private static int total(int[] widths) {
        int total = 0;
        for (int width : widths) {
            total += width + GAP;
        }
        return total;
    }
}
