package org.stillroom.measures.rows;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.stillroom.model.explain.Problem;

/**
 * The rows of a knowledge file: comma-separated values (RFC 4180) with a heading, one row a line.
 *
 * @param rows the rows that could be split, in the file's order
 * @param problems what could not be read
 */
public record Rows(List<Row> rows, List<Problem> problems) {

    /** Keeps both lists unchangeable. */
    public Rows {
        rows = List.copyOf(rows);
        problems = List.copyOf(problems);
    }

    /** Reads a file that ships with this bundle; a fault in it is a fault of the program. */
    public static List<Row> shipped(String name) {
        String path = "/org/stillroom/measures/data/" + name;
        try (InputStream in = Rows.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException("The file " + name + " is missing from the bundle");
            }
            Rows read = read(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
            if (!read.problems().isEmpty()) {
                throw new IllegalStateException(read.problems().getFirst().toText());
            }
            return read.rows();
        } catch (IOException e) {
            throw new UncheckedIOException("The file " + name + " cannot be read", e);
        }
    }

    /**
     * Splits a file's text into rows; a line that cannot be split is reported and left out.
     *
     * @param file the name for messages
     * @param text the whole text
     */
    public static Rows read(String file, String text) {
        return read(file, text, List.of());
    }

    /**
     * Splits a file's text into rows; a file without a column that every row needs is reported once,
     * and nothing of it is read.
     *
     * @param file the name for messages
     * @param text the whole text
     * @param needed the columns that it cannot do without
     */
    public static Rows read(String file, String text, List<String> needed) {
        ObjectReader cells = cells();
        List<Row> rows = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        List<String> heading = List.of();
        int number = 0;
        for (String line : text.lines().toList()) {
            number++;
            String bare = number == 1 && line.startsWith("\uFEFF") ? line.substring(1) : line;
            if (bare.isBlank() || bare.startsWith("#")) {
                continue;
            }
            List<String> found = split(cells, bare);
            if (found.isEmpty()) {
                problems.add(unclosed(file, number, bare));
            } else if (heading.isEmpty()) {
                heading = found.stream().map(c -> c.toLowerCase(Locale.ROOT)).toList();
                Optional<Problem> missing = missing(file, number, bare, heading, needed);
                if (missing.isPresent()) {
                    return new Rows(List.of(), List.of(missing.get()));
                }
            } else if (found.size() > heading.size()) {
                problems.add(tooLong(file, number, found, heading));
            } else {
                rows.add(new Row(file, number, cells(heading, found)));
            }
        }
        return new Rows(rows, problems);
    }

    /** Reads everything that a reader gives. */
    public static Rows read(String file, InputStream in) throws IOException {
        try (BufferedReader reader =
                new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            StringBuilder text = new StringBuilder();
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                text.append(line).append('\n');
            }
            return read(file, text.toString());
        }
    }

    private static ObjectReader cells() {
        return CsvMapper.builder()
                .enable(CsvParser.Feature.WRAP_AS_ARRAY)
                .build()
                .readerFor(String[].class);
    }

    private static List<String> split(ObjectReader cells, String line) {
        if (line.indexOf('"') < 0) {
            return Arrays.stream(line.split(",", -1)).map(String::strip).toList();
        }
        try (MappingIterator<String[]> found = cells.readValues(line)) {
            return Arrays.stream(found.next()).map(String::strip).toList();
        } catch (IOException | RuntimeException e) {
            return List.of();
        }
    }

    private static Optional<Problem> missing(
            String file, int number, String line, List<String> heading, List<String> needed) {
        List<String> gone = needed.stream().filter(n -> !heading.contains(n)).toList();
        if (gone.isEmpty()) {
            return Optional.empty();
        }
        String what =
                gone.size() == 1
                        ? "The heading has no column “" + gone.get(0) + "”"
                        : "The heading has no columns “" + String.join("”, “", gone) + "”";
        return Optional.of(
                Problem.error(
                        file,
                        number,
                        shortened(line),
                        what + "; nothing of the file was read.",
                        "Begin the file with a line such as " + String.join(",", needed) + "."));
    }

    private static Problem unclosed(String file, int number, String line) {
        return Problem.error(
                file,
                number,
                shortened(line),
                "The row cannot be split into cells.",
                "Close every quotation mark, and write a quotation mark inside a cell twice.");
    }

    private static Problem tooLong(
            String file, int number, List<String> cells, List<String> heading) {
        return Problem.error(
                file,
                number,
                cells.getLast(),
                "The row has " + cells.size() + " cells, the heading " + heading.size() + ".",
                "Put a cell that holds a comma between quotation marks.");
    }

    private static Map<String, String> cells(List<String> heading, List<String> cells) {
        Map<String, String> map = new HashMap<>();
        for (int i = 0; i < cells.size(); i++) {
            map.put(heading.get(i), cells.get(i));
        }
        return map;
    }

    private static String shortened(String line) {
        return line.length() > 60 ? line.substring(0, 60) + "…" : line;
    }
}
