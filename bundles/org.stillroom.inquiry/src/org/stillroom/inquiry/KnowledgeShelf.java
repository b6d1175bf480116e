package org.stillroom.inquiry;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillroom.ingredients.KnowledgeFile;
import org.stillroom.ingredients.Thesaurus;
import org.stillroom.ingredients.ThesaurusEdit;
import org.stillroom.library.LibraryLayout;
import org.stillroom.library.journal.Journal;
import org.stillroom.measures.MeasureTable;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.explain.Problem;
import org.stillroom.reading.Reader;

/** Puts what ships with the program and what a library adds together, once for each state. */
final class KnowledgeShelf {

    /** Changes whenever a new program would read the same words otherwise. */
    private static final String READER = "reader-2";

    private final MeasureTable shippedMeasures = MeasureTable.shipped();
    private final Thesaurus shippedThesaurus = Thesaurus.shipped();
    private Optional<Knowledge> last = Optional.empty();

    Knowledge of(Optional<LibraryLayout> layout) {
        List<Problem> problems = new ArrayList<>();
        Optional<String> places = file(layout, "places.csv", problems);
        Optional<String> measures = file(layout, "measures.csv", problems);
        Optional<String> yields = file(layout, "yields.csv", problems);
        List<KnowledgeFile> ingredients = ingredientFiles(layout, problems);
        List<Assertion> decisions = decisions(layout);
        String digest =
                Digests.sha256(
                        READER
                                + "\n"
                                + places.orElse("")
                                + "\n"
                                + measures.orElse("")
                                + "\n"
                                + yields.orElse("")
                                + "\n"
                                + ingredients
                                + "\n"
                                + decisions);
        if (last.isPresent() && last.get().digest().equals(digest)) {
            return last.get();
        }
        MeasureTable table = shippedMeasures;
        if (places.isPresent()) {
            MeasureTable.Extended more = table.withPlaces("knowledge/places.csv", places.get());
            problems.addAll(more.problems());
            table = more.table();
        }
        if (measures.isPresent()) {
            MeasureTable.Extended more = table.with("knowledge/measures.csv", measures.get());
            problems.addAll(more.problems());
            table = more.table();
        }
        if (yields.isPresent()) {
            MeasureTable.Extended more = table.withYields("knowledge/yields.csv", yields.get());
            problems.addAll(more.problems());
            table = more.table();
        }
        Thesaurus thesaurus = thesaurus(ingredients, decisions, problems);
        Knowledge fresh =
                new Knowledge(
                        table, thesaurus, Reader.of(thesaurus, table.words()), problems, digest);
        last = Optional.of(fresh);
        return fresh;
    }

    /** Our senses, then the library's rows, then its decisions, which so outlive our updates. */
    private Thesaurus thesaurus(
            List<KnowledgeFile> ingredients, List<Assertion> decisions, List<Problem> problems) {
        Thesaurus thesaurus = shippedThesaurus;
        if (!ingredients.isEmpty()) {
            Thesaurus.Loaded more = thesaurus.with(ingredients);
            problems.addAll(more.problems());
            thesaurus = more.thesaurus();
        }
        if (!decisions.isEmpty()) {
            Thesaurus.Loaded more = thesaurus.apply(edits(decisions, problems));
            problems.addAll(more.problems());
            thesaurus = more.thesaurus();
        }
        return thesaurus;
    }

    private static List<ThesaurusEdit> edits(List<Assertion> decisions, List<Problem> problems) {
        List<ThesaurusEdit> edits = new ArrayList<>();
        for (Assertion decision : decisions) {
            Optional<ThesaurusEdit> edit = ThesaurusEdit.fromValues(decision.values());
            edit.ifPresent(edits::add);
            if (edit.isEmpty()) {
                problems.add(
                        Problem.warning(
                                "research/journal.jsonl",
                                "The decision "
                                        + decision.id()
                                        + " about senses says nothing that can be done: "
                                        + decision.values()
                                        + ".",
                                "Take it back, or decide add-sense, add-label, remove-label, merge"
                                        + " or split."));
            }
        }
        return edits;
    }

    /** Returns the decisions about senses that stand; faults of the journal are told elsewhere. */
    private static List<Assertion> decisions(Optional<LibraryLayout> layout) {
        return layout
                .map(l -> new Journal(l.research()).standing(new ArrayList<>()))
                .orElse(List.of())
                .stream()
                .filter(d -> d.kind().equals(ThesaurusEdit.ASSERTION_KIND))
                .toList();
    }

    private static List<KnowledgeFile> ingredientFiles(
            Optional<LibraryLayout> layout, List<Problem> problems) {
        List<KnowledgeFile> files = new ArrayList<>();
        if (layout.isEmpty() || !Files.isDirectory(layout.get().knowledge())) {
            return files;
        }
        try (var list = Files.list(layout.get().knowledge())) {
            List<String> names =
                    list.map(p -> p.getFileName().toString())
                            .filter(KnowledgeShelf::isOfIngredients)
                            .sorted()
                            .toList();
            for (String name : names) {
                file(layout, name, problems)
                        .ifPresent(t -> files.add(new KnowledgeFile("knowledge/" + name, t)));
            }
        } catch (IOException e) {
            problems.add(unreadable("knowledge", e));
        }
        return files;
    }

    /** Tells whether a file holds senses: rows of ours by their name, or SKOS of anybody's. */
    private static boolean isOfIngredients(String name) {
        boolean rows = name.startsWith("ingredients") && name.endsWith(".csv");
        return rows || name.endsWith(".ttl") || name.endsWith(".rdf");
    }

    private static Optional<String> file(
            Optional<LibraryLayout> layout, String name, List<Problem> problems) {
        Optional<Path> path = layout.map(l -> l.knowledge().resolve(name)).filter(Files::exists);
        if (path.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Files.readString(path.get(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            problems.add(unreadable("knowledge/" + name, e));
            return Optional.empty();
        }
    }

    private static Problem unreadable(String file, IOException e) {
        return Problem.error(
                file,
                "It cannot be read (" + e.getMessage() + ").",
                "Save it as UTF-8 with the right to read it; what ships with the program holds.");
    }
}
