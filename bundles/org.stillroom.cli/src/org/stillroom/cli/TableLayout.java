package org.stillroom.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.stillroom.inquiry.Answer.Block;

/**
 * Sets a table in columns of a terminal.
 *
 * <p>Own code, because the table of the argument library starts a cell on the line where the cell
 * before it ends, so that wrapped cells do not stand side by side.
 */
final class TableLayout {

    private static final int NARROWEST = 10;
    private static final String GAP = "  ";

    private final Block.Table table;
    private final int[] widths;

    TableLayout(Block.Table table, int width) {
        this.table = table;
        this.widths = widths(table, width);
    }

    String toText() {
        StringBuilder out = new StringBuilder();
        row(out, table.columns());
        List<String> rules = new ArrayList<>();
        for (int width : widths) {
            rules.add("─".repeat(width));
        }
        row(out, rules);
        table.rows().forEach(r -> row(out, r));
        return out.toString();
    }

    /**
     * Gives each column what it needs; where that is too much, takes from those that are widest for
     * what they hold, so that a column of long cells keeps the most. Words are cut only where the
     * columns' longest words together are wider than the line.
     */
    private static int[] widths(Block.Table t, int all) {
        int[] widths = new int[t.columns().size()];
        int[] content = new int[widths.length];
        int[] words = new int[widths.length];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = length(t.columns().get(i));
            content[i] = widths[i];
            words[i] = Math.max(NARROWEST, longestWord(t.columns().get(i)));
            for (List<String> row : t.rows()) {
                widths[i] = Math.max(widths[i], length(row.get(i)));
                content[i] += length(row.get(i));
                words[i] = Math.max(words[i], longestWord(row.get(i)));
            }
        }
        int[] least = new int[widths.length];
        Arrays.fill(least, NARROWEST);
        narrow(widths, content, words, all);
        narrow(widths, content, least, all);
        return widths;
    }

    private static int longestWord(String cell) {
        return Arrays.stream(cell.strip().split("\\s+"))
                .mapToInt(TableLayout::length)
                .max()
                .orElse(0);
    }

    private static void narrow(int[] widths, int[] content, int[] least, int all) {
        int spare = spare(widths, content, least);
        while (total(widths) > all && spare >= 0) {
            widths[spare]--;
            spare = spare(widths, content, least);
        }
    }

    /** Returns the column that can best be narrower, or -1. */
    private static int spare(int[] widths, int[] content, int[] least) {
        int best = -1;
        double most = 0;
        for (int i = 0; i < widths.length; i++) {
            double ease = widths[i] * (double) widths[i] / content[i];
            if (widths[i] > least[i] && ease > most) {
                most = ease;
                best = i;
            }
        }
        return best;
    }

    private static int total(int[] widths) {
        int total = -GAP.length();
        for (int width : widths) {
            total += width + GAP.length();
        }
        return total;
    }

    private void row(StringBuilder out, List<String> cells) {
        List<List<String>> columns = new ArrayList<>();
        int lines = 1;
        for (int i = 0; i < widths.length; i++) {
            List<String> wrapped = wrap(cells.get(i), widths[i]);
            columns.add(wrapped);
            lines = Math.max(lines, wrapped.size());
        }
        for (int n = 0; n < lines; n++) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                String words = n < columns.get(i).size() ? columns.get(i).get(n) : "";
                String blanks = " ".repeat(Math.max(0, widths[i] - length(words)));
                line.append(i == 0 ? "" : GAP);
                line.append(table.numeric().get(i) ? blanks + words : words + blanks);
            }
            out.append(line.toString().stripTrailing()).append('\n');
        }
    }

    /** Cuts words into lines; a word that is too long for a line is cut itself. */
    private static List<String> wrap(String cell, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : cell.strip().split("\\s+")) {
            String rest = word;
            if (!line.isEmpty() && length(line.toString()) + 1 + length(rest) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (length(rest) > width) {
                int cut = rest.offsetByCodePoints(0, width);
                lines.add(rest.substring(0, cut));
                rest = rest.substring(cut);
            }
            line.append(line.isEmpty() ? "" : " ").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }

    private static int length(String words) {
        return words.codePointCount(0, words.length());
    }
}
