package org.stillroom.inquiry;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import org.stillroom.model.explain.Explanation;
import org.stillroom.model.explain.Problem;

/**
 * What an inquiry found, for people and for programs.
 *
 * @param title what was asked, in words
 * @param blocks the answer for people, in order
 * @param json the answer for programs
 * @param problems what could not be read or is doubtful, said once
 */
public record Answer(String title, List<Block> blocks, JsonNode json, List<Problem> problems) {

    /** Keeps the lists unchangeable. */
    public Answer {
        blocks = List.copyOf(blocks);
        problems = List.copyOf(problems);
    }

    /** A part of an answer. */
    public sealed interface Block {

        /** Plain words. */
        record Paragraph(String words) implements Block {}

        /** A heading between parts. */
        record Heading(String words) implements Block {}

        /**
         * Rows under named columns.
         *
         * @param caption what the table shows
         * @param columns the columns' names
         * @param numeric for each column whether it holds numbers
         * @param rows the cells, as many in each row as there are columns
         * @param targets for each row the id of the witness that it is about, or empty
         * @param whys for each row why its amounts are so; empty where the table shows none
         */
        record Table(
                String caption,
                List<String> columns,
                List<Boolean> numeric,
                List<List<String>> rows,
                List<String> targets,
                List<Explanation> whys)
                implements Block {

            /** Makes a table that shows no amounts to explain. */
            public Table(
                    String caption,
                    List<String> columns,
                    List<Boolean> numeric,
                    List<List<String>> rows,
                    List<String> targets) {
                this(caption, columns, numeric, rows, targets, List.of());
            }

            /** Keeps the lists unchangeable and refuses rows of another width. */
            public Table {
                columns = List.copyOf(columns);
                numeric = List.copyOf(numeric);
                rows = rows.stream().map(List::copyOf).toList();
                targets = List.copyOf(targets);
                whys = List.copyOf(whys);
                int width = columns.size();
                if (numeric.size() != width || rows.stream().anyMatch(r -> r.size() != width)) {
                    throw new IllegalArgumentException(
                            caption + ": every row needs " + width + " cells");
                }
                if (!whys.isEmpty() && whys.size() != rows.size()) {
                    throw new IllegalArgumentException(
                            caption + ": every row needs its reason, or none has one");
                }
            }

            /** Returns why the amounts of a row are so, where the table explains them. */
            public Optional<Explanation> why(int row) {
                return row < whys.size() ? Optional.of(whys.get(row)) : Optional.empty();
            }
        }

        /** Why something is so. */
        record Why(Explanation explanation) implements Block {}

        /**
         * A picture that the report draws from a result.
         *
         * @param name short name for a file (“lineage”)
         * @param figure what it shows
         */
        record Picture(String name, Figure figure) implements Block {}
    }
}
