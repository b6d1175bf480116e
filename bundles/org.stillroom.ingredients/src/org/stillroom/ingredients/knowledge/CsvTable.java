package org.stillroom.ingredients.knowledge;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.stillroom.model.explain.Problem;

/**
 * A comma-separated file with a header (RFC 4180).
 *
 * <p>A sound file is parsed in one go. One that is not is parsed record by record, so that one
 * broken record costs no other.
 *
 * @param path the file’s path for messages
 * @param columns its columns in lower case
 * @param rows its rows
 */
record CsvTable(String path, List<String> columns, List<Row> rows) {

    private static final int LONGEST_RECORD = 20;

    private static final ObjectReader READER =
            new CsvMapper()
                    .enable(CsvParser.Feature.WRAP_AS_ARRAY)
                    .enable(CsvParser.Feature.TRIM_SPACES)
                    .readerFor(String[].class);

    private record Record(int line, String text) {}

    /** Reads a file’s text and reports what cannot be read. */
    static CsvTable read(String path, String text, Consumer<Problem> problems) {
        List<Record> records =
                records(text).stream()
                        .filter(r -> !r.text.isBlank() && !r.text.startsWith("#"))
                        .toList();
        Optional<List<String[]>> all = cells(records);
        List<String> columns = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < records.size(); i++) {
            Record one = records.get(i);
            String[] cells = all.isPresent() ? all.get().get(i) : alone(path, one, problems);
            if (cells.length == 0) {
                continue;
            }
            if (columns.isEmpty()) {
                List.of(cells).forEach(c -> columns.add(c.toLowerCase(Locale.ROOT)));
            } else {
                checkWidth(path, one, columns, cells, problems);
                rows.add(new Row(one.line, byColumn(columns, cells)));
            }
        }
        return new CsvTable(path, List.copyOf(columns), List.copyOf(rows));
    }

    /** Returns the cells of all records, or nothing where one of them is broken. */
    private static Optional<List<String[]>> cells(List<Record> records) {
        String text = records.stream().map(Record::text).collect(Collectors.joining("\n"));
        try (MappingIterator<String[]> read = READER.readValues(text)) {
            List<String[]> all = read.readAll();
            return all.size() == records.size() ? Optional.of(all) : Optional.empty();
        } catch (IOException broken) {
            return Optional.empty();
        }
    }

    private static String[] alone(String path, Record one, Consumer<Problem> problems) {
        try (MappingIterator<String[]> read = READER.readValues(one.text)) {
            List<String[]> cells = read.readAll();
            return cells.isEmpty() ? new String[0] : cells.get(0);
        } catch (JsonProcessingException broken) {
            problems.accept(
                    Problem.error(
                            path,
                            one.line,
                            one.text.lines().findFirst().orElse(""),
                            "The quotation marks of this row do not match; it was left out.",
                            "Begin and end a quoted cell with one double quote, and write a"
                                    + " double quote inside it twice."));
        } catch (IOException unreadable) {
            problems.accept(Problem.error(path, "It could not be read.", ""));
        }
        return new String[0];
    }

    private static void checkWidth(
            String path,
            Record one,
            List<String> columns,
            String[] cells,
            Consumer<Problem> problems) {
        if (cells.length > columns.size()) {
            problems.accept(
                    Problem.warning(
                            path,
                            one.line,
                            cells[columns.size()],
                            "The row has "
                                    + cells.length
                                    + " cells under "
                                    + columns.size()
                                    + " columns; what is too much was left out.",
                            "Put words that hold a comma between double quotes."));
        }
    }

    private static Map<String, String> byColumn(List<String> columns, String[] cells) {
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            row.put(columns.get(i), i < cells.length ? cells[i].strip() : "");
        }
        return row;
    }

    /** Parts a text into records; a quoted cell may hold line feeds, within reason. */
    private static List<Record> records(String text) {
        List<String> lines =
                List.of((text.startsWith("\uFEFF") ? text.substring(1) : text).split("\r?\n", -1));
        List<Record> records = new ArrayList<>();
        int i = 0;
        while (i < lines.size()) {
            int end = lastLine(lines, i);
            String record = end == i ? lines.get(i) : String.join("\n", lines.subList(i, end + 1));
            records.add(new Record(i + 1, record));
            i = end + 1;
        }
        return records;
    }

    /** Returns the line on which the record ends, or the same line where its quotes never close. */
    private static int lastLine(List<String> lines, int first) {
        if (lines.get(first).indexOf('"') < 0) {
            return first;
        }
        int quotes = 0;
        for (int i = first; i < lines.size() && i < first + LONGEST_RECORD; i++) {
            quotes += (int) lines.get(i).chars().filter(c -> c == '"').count();
            if (quotes % 2 == 0) {
                return i;
            }
        }
        return first;
    }
}
