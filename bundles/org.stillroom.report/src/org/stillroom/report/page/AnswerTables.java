package org.stillroom.report.page;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.util.ArrayList;
import java.util.List;
import org.stillroom.inquiry.Answer.Block;

/** Writes a table of an answer as comma-separated values by RFC 4180. */
public final class AnswerTables {

    private AnswerTables() {}

    /** Returns the table with a header row; cells are text, so that “1/2” stays a half. */
    public static String toCsv(Block.Table table) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(table.columns());
        rows.addAll(table.rows());
        CsvMapper mapper =
                CsvMapper.builder()
                        .configure(CsvGenerator.Feature.STRICT_CHECK_FOR_QUOTING, true)
                        .build();
        CsvSchema schema = CsvSchema.emptySchema().withLineSeparator("\r\n");
        try {
            return mapper.writer(schema).writeValueAsString(rows);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("Cells of text can always be written", impossible);
        }
    }
}
