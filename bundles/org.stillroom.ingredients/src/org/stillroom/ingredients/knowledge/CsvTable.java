package org.stillroom.ingredients.knowledge;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import org.stillroom.model.explain.Problem;

/**
 * A comma-separated file with a header (RFC 4180), read record by record so that one broken record
 * costs no other.
 *
 * @param path the file’s path for messages
 * @param columns its columns in lower case
 * @param rows its rows
 */
record CsvTable(String path, List<String> columns, List<Row> rows) {

    private static final int LONGEST_RECORD = 20;

    /** Reads a file’s text and reports what cannot be read. */
    static CsvTable read(String path, String text, Consumer<Problem> problems) {
        ObjectReader reader =
                new CsvMapper()
                        .enable(CsvParser.Feature.WRAP_AS_ARRAY)
                        .enable(CsvParser.Feature.TRIM_SPACES)
                        .readerFor(String[][].class);
        List<String> columns = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        for (Record one : records(text)) {
            if (one.text.isBlank() || one.text.startsWith("#")) {
                continue;
            }
            List<String> cells = cells(path, one, reader, problems);
            if (cells.isEmpty()) {
                continue;
            }
            if (columns.isEmpty()) {
                cells.forEach(c -> columns.add(c.toLowerCase(Locale.ROOT)));
            } else {
                checkWidth(path, one, columns, cells, problems);
                rows.add(new Row(one.line, byColumn(columns, cells)));
            }
        }
        return new CsvTable(path, List.copyOf(columns), List.copyOf(rows));
    }

    private static void checkWidth(
            String path,
            Record one,
            List<String> columns,
            List<String> cells,
            Consumer<Problem> problems) {
        if (cells.size() > columns.size()) {
            problems.accept(
                    Problem.warning(
                            path,
                            one.line,
                            cells.get(columns.size()),
                            "The row has " + cells.size() + " cells under " + columns.size()
                                    + " columns; what is too much was left out.",
                            "Put words that hold a comma between double quotes."));
        }
    }

    private static Map<String, String> byColumn(List<String> columns, List<String> cells) {
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            row.put(columns.get(i), i < cells.size() ? cells.get(i).strip() : "");
        }
        return row;
    }

    private static List<String> cells(
            String path, Record one, ObjectReader reader, Consumer<Problem> problems) {
        try {
            String[][] read = reader.readValue(one.text);
            return read.length == 0 ? List.of() : List.of(read[0]);
        } catch (JsonProcessingException e) {
            problems.accept(
                    Problem.error(
                            path,
                            one.line,
                            one.text.lines().findFirst().orElse(""),
                            "The quotation marks of this row do not match; it was left out.",
                            "Begin and end a quoted cell with one double quote, and write a"
                                    + " double quote inside it twice."));
            return List.of();
        }
    }

    private record Record(int line, String text) {}

    /** Parts a text into records; a quoted cell may hold line feeds, within reason. */
    private static List<Record> records(String text) {
        String[] lines = (text.startsWith("\uFEFF") ? text.substring(1) : text).split("\r?\n", -1);
        List<Record> records = new ArrayList<>();
        int i = 0;
        while (i < lines.length) {
            int end = lastLine(lines, i);
            records.add(
                    new Record(i + 1, String.join("\n", List.of(lines).subList(i, end + 1))));
            i = end + 1;
        }
        return records;
    }

    /** Returns the line on which the record ends, or the same line where its quotes never close. */
    private static int lastLine(String[] lines, int first) {
        int quotes = 0;
        for (int i = first; i < lines.length && i < first + LONGEST_RECORD; i++) {
            quotes += (int) lines[i].chars().filter(c -> c == '"').count();
            if (quotes % 2 == 0) {
                return i;
            }
        }
        return first;
    }
}
