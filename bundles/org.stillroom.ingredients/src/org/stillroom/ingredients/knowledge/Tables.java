package org.stillroom.ingredients.knowledge;

import java.util.List;
import java.util.Map;
import org.stillroom.ingredients.KnowledgeFile;

/** Reads plain tables whose rows need no checking. */
public final class Tables {

    private Tables() {}

    /** Returns the rows of a file, each as cells by column. */
    public static List<Map<String, String>> rows(KnowledgeFile file) {
        return CsvTable.read(file.path(), file.text(), p -> {}).rows().stream()
                .map(Row::cells)
                .toList();
    }
}
