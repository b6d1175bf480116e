package org.stillroom.ingredients.knowledge;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.stillroom.ingredients.KnowledgeFile;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.explain.Citation.Status;

/**
 * The works that {@code source} cells may name by key, from {@code sources.csv}.
 *
 * @param works works by key
 * @param otherwise what a source that is no key is taken for
 */
public record Sources(Map<String, String> works, Status otherwise) {

    /** Keeps the map unchangeable. */
    public Sources {
        works = Map.copyOf(works);
    }

    /** Returns the key of a work that is named in full. */
    private Optional<String> key(String work) {
        return works.entrySet().stream()
                .filter(e -> e.getValue().equals(work))
                .map(Map.Entry::getKey)
                .sorted()
                .findFirst();
    }

    /** Reads the works. */
    public static Sources read(KnowledgeFile file) {
        Map<String, String> works = new TreeMap<>();
        CsvTable.read(file.path(), file.text(), p -> {})
                .rows()
                .forEach(row -> works.put(row.cell("key"), row.cell("work")));
        return new Sources(works, Status.SECONDARY);
    }

    /** Returns the same works, for files of a user. */
    public Sources forUser() {
        return new Sources(works, Status.USER);
    }

    /**
     * Returns the citation of a {@code source} cell.
     *
     * @param cell a key, the whole work, other words, or “from memory”
     * @param status the status that the row states, where it states one
     */
    public Citation citation(String cell, Optional<Status> status) {
        if (cell.equalsIgnoreCase("from memory")) {
            return new Citation("", "from memory", Status.MEMORY);
        }
        String work = works.get(cell);
        if (work != null) {
            return new Citation(cell, work, status.orElse(Status.PRIMARY));
        }
        return key(cell)
                .map(key -> new Citation(key, cell, status.orElse(Status.PRIMARY)))
                .orElseGet(() -> new Citation("", cell, status.orElse(otherwise)));
    }
}
