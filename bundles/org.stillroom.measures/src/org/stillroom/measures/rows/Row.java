package org.stillroom.measures.rows;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.number.Rational;

/**
 * One row of a knowledge file.
 *
 * @param file the file's name
 * @param line its line from 1
 * @param cells the cells by their heading, in lower case
 */
public record Row(String file, int line, Map<String, String> cells) {

    /** Keeps the cells unchangeable. */
    public Row {
        cells = Map.copyOf(cells);
    }

    /** Returns a cell, empty where the row or the file has none. */
    public String get(String heading) {
        return cells.getOrDefault(heading, "");
    }

    /** Returns a cell that is not empty. */
    public Optional<String> maybe(String heading) {
        return Optional.of(get(heading)).filter(c -> !c.isEmpty());
    }

    /** Returns a cell as an exact number, unless it is empty or no number. */
    public Optional<Rational> number(String heading) {
        return maybe(heading).flatMap(Rational::parse);
    }

    /** Returns a cell as a year, unless it is empty or no whole number. */
    public OptionalInt year(String heading) {
        String cell = get(heading);
        return cell.matches("-?\\d{1,5}")
                ? OptionalInt.of(Integer.parseInt(cell))
                : OptionalInt.empty();
    }

    /** Returns the parts of a cell that are set apart by semicolons. */
    public List<String> list(String heading) {
        return Stream.of(get(heading).split(";"))
                .map(String::strip)
                .filter(s -> !s.isEmpty())
                .toList();
    }

    /** Returns an error about this row. */
    public Problem error(String words, String reason, String remedy) {
        return Problem.error(file, line, words, reason, remedy);
    }

    /** Returns a warning about this row. */
    public Problem warning(String words, String reason, String remedy) {
        return Problem.warning(file, line, words, reason, remedy);
    }
}
