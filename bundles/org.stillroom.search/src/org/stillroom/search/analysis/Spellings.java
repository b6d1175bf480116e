package org.stillroom.search.analysis;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import org.apache.lucene.analysis.miscellaneous.StemmerOverrideFilter;
import org.apache.lucene.analysis.miscellaneous.StemmerOverrideFilter.StemmerOverrideMap;

/** Reads the table of period spellings. */
final class Spellings {

    private static final String TABLE = "spellings.tsv";

    private Spellings() {}

    /** Returns each folded spelling with the form that is searched by. */
    static Map<String, String> shipped() {
        Map<String, String> spellings = new TreeMap<>();
        try (BufferedReader table =
                new BufferedReader(
                        new InputStreamReader(
                                Spellings.class.getResourceAsStream(TABLE),
                                StandardCharsets.UTF_8))) {
            for (String line = table.readLine(); line != null; line = table.readLine()) {
                String[] cells = line.split("\t");
                if (cells.length > 1 && !line.startsWith("#")) {
                    spellings.put(cells[0], cells[1]);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return spellings;
    }

    static StemmerOverrideMap toMap(Map<String, String> spellings) {
        StemmerOverrideFilter.Builder builder = new StemmerOverrideFilter.Builder(false);
        spellings.forEach(builder::add);
        try {
            return builder.build();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
