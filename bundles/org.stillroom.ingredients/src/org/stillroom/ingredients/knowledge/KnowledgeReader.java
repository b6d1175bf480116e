package org.stillroom.ingredients.knowledge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.stillroom.ingredients.Hazard;
import org.stillroom.ingredients.KnowledgeFile;
import org.stillroom.ingredients.Milestone;
import org.stillroom.model.explain.Problem;

/**
 * Reads knowledge files into rows; a bad row is reported with file, line, reason and the nearest
 * thing that would work, and the rest is read.
 *
 * <p>Which table a file holds is told by its columns: {@code id,label,role} senses, {@code
 * sense,label} names, {@code sense,quantity,…} figures, {@code sense,allergen,…} allergens, {@code
 * id,level,…} hazards, {@code id,kind,subjects,…} first and last dates.
 */
public final class KnowledgeReader {

    private final Cells cells;
    private final List<Problem> problems;
    private final SortedMap<String, SenseRow> senses = new TreeMap<>();
    private final Map<String, String> places = new HashMap<>();
    private final List<LabelRow> labels = new ArrayList<>();
    private final List<FigureRow> figures = new ArrayList<>();
    private final List<AllergenRow> allergens = new ArrayList<>();
    private final List<Hazard> hazards = new ArrayList<>();
    private final List<Milestone> milestones = new ArrayList<>();
    private final SortedMap<String, String> moved = new TreeMap<>();
    private final List<Stated> statements = new ArrayList<>();

    private KnowledgeReader(Sources sources, List<Problem> problems) {
        this.problems = problems;
        this.cells = new Cells(sources, problems);
    }

    /**
     * Reads files that belong together.
     *
     * @param files the files
     * @param sources the works that a {@code source} cell may name by key
     * @param before what is known already: senses that the rows may refer to
     * @param problems where problems are added
     */
    public static Knowledge read(
            List<KnowledgeFile> files, Sources sources, Knowledge before, List<Problem> problems) {
        KnowledgeReader reader = new KnowledgeReader(sources, problems);
        List<CsvTable> tables =
                files.stream()
                        .filter(f -> !SkosFile.isOne(f))
                        .map(f -> CsvTable.read(f.path(), f.text(), problems::add))
                        .filter(t -> !t.columns().isEmpty())
                        .toList();
        for (CsvTable table : tables) {
            if (Shape.of(table.columns()).equals(Optional.of(Shape.SENSES))) {
                reader.readSenses(table);
            }
        }
        files.stream()
                .filter(SkosFile::isOne)
                .flatMap(f -> SkosFile.read(f, problems).stream())
                .forEach(f -> reader.readConcepts(f, sources, before));
        References known = new References(before, reader.senses, problems);
        tables.forEach(t -> reader.readOthers(t, known));
        reader.statements.forEach(s -> reader.readStatements(s, known));
        SortedMap<String, SenseRow> sound = known.checked(reader.senses, reader.places);
        return new Knowledge(
                sound,
                reader.labels,
                reader.figures,
                reader.allergens,
                reader.hazards,
                reader.milestones,
                reader.moved);
    }

    /** The tables that a file may hold, told by columns that no other has. */
    enum Shape {
        SENSES(Set.of("id", "label", "role")),
        LABELS(Set.of("sense", "label")),
        FIGURES(Set.of("sense", "quantity", "likely")),
        ALLERGENS(Set.of("sense", "allergen")),
        HAZARDS(Set.of("id", "level", "rule")),
        MILESTONES(Set.of("id", "kind", "subjects"));

        private final Set<String> columns;

        Shape(Set<String> columns) {
            this.columns = columns;
        }

        static Optional<Shape> of(List<String> columns) {
            for (Shape shape : values()) {
                if (columns.containsAll(shape.columns)) {
                    return Optional.of(shape);
                }
            }
            return Optional.empty();
        }
    }

    private void readSenses(CsvTable table) {
        for (Row row : table.rows()) {
            cells.sense(table.path(), row)
                    .ifPresent(
                            sense -> {
                                if (senses.containsKey(sense.id())) {
                                    problems.add(duplicate(table.path(), row, sense.id()));
                                } else {
                                    senses.put(sense.id(), sense);
                                    places.put(sense.id(), table.path() + '\n' + row.line());
                                }
                            });
        }
    }

    private void readConcepts(SkosFile file, Sources sources, Knowledge before) {
        SkosReader.Result read =
                new SkosReader(
                                file,
                                sources,
                                id -> senses.containsKey(id) || before.senses().containsKey(id),
                                problems)
                        .read();
        for (SkosReader.Placed placed : read.senses()) {
            SenseRow sense = placed.sense();
            if (senses.containsKey(sense.id())) {
                Row row = new Row(placed.line(), Map.of());
                problems.add(duplicate(file.path(), row, sense.id()));
            } else {
                senses.put(sense.id(), sense);
                places.put(sense.id(), file.path() + '\n' + placed.line());
            }
        }
        labels.addAll(read.labels());
        figures.addAll(read.figures());
        statements.add(new Stated(file, read.statements()));
    }

    /** What a SKOS file states of senses that may stand in another file. */
    private record Stated(SkosFile file, SkosStatementReader.Result result) {}

    private void readStatements(Stated stated, References known) {
        String path = stated.file().path();
        Row row = new Row(1, Map.of());
        stated.result().allergens().stream()
                .filter(a -> known.has(path, row, a.sense()))
                .forEach(allergens::add);
        stated.result().hazards().stream()
                .filter(h -> h.senses().stream().allMatch(s -> known.has(path, row, s)))
                .forEach(hazards::add);
        milestones.addAll(stated.result().milestones());
        stated.result()
                .moved()
                .forEach(
                        (from, into) -> {
                            if (known.has(path, row, into)) {
                                moved.put(from, into);
                            }
                        });
    }

    private Problem duplicate(String path, Row row, String id) {
        String[] first = places.get(id).split("\n");
        return Problem.error(
                path,
                row.line(),
                id,
                "There is a sense with this id already, in "
                        + first[0]
                        + " on line "
                        + first[1]
                        + "; this one was left out.",
                "Give it an id of its own, for example " + id + "-2, or join the two rows.");
    }

    private void readOthers(CsvTable table, References known) {
        Optional<Shape> shape = Shape.of(table.columns());
        if (shape.isEmpty()) {
            problems.add(
                    Problem.error(
                            table.path(),
                            1,
                            String.join(",", table.columns()),
                            "These columns belong to no table of ingredients; the file was left"
                                    + " out.",
                            "Begin a file of senses with id,label,role,broader,source or one of"
                                    + " names with sense,label,kind,source."));
            return;
        }
        for (Row row : table.rows()) {
            switch (shape.get()) {
                case SENSES -> {}
                case LABELS ->
                        cells.label(table.path(), row)
                                .filter(l -> known.has(table.path(), row, l.sense()))
                                .ifPresent(labels::add);
                case FIGURES ->
                        cells.figure(table.path(), row)
                                .filter(f -> known.has(table.path(), row, f.sense()))
                                .ifPresent(figures::add);
                case ALLERGENS ->
                        cells.allergen(table.path(), row)
                                .filter(a -> known.has(table.path(), row, a.sense()))
                                .ifPresent(allergens::add);
                case HAZARDS ->
                        cells.hazard(table.path(), row)
                                .filter(
                                        h ->
                                                h.senses().stream()
                                                        .allMatch(
                                                                s ->
                                                                        known.has(
                                                                                table.path(),
                                                                                row,
                                                                                s)))
                                .ifPresent(hazards::add);
                case MILESTONES -> cells.milestone(table.path(), row).ifPresent(milestones::add);
            }
        }
    }
}
