package org.stillroom.ingredients.knowledge;

import java.util.Map;

/**
 * One row of a knowledge file.
 *
 * @param line the line it starts on, from 1
 * @param cells its cells by the name of their column, stripped; a missing cell is empty
 */
record Row(int line, Map<String, String> cells) {

    String cell(String column) {
        return cells.getOrDefault(column, "");
    }

    /** Returns the row as one would see it in the file. */
    String words() {
        String words = String.join(",", cells.values());
        return words.length() > 120 ? words.substring(0, 119) + "…" : words;
    }
}
