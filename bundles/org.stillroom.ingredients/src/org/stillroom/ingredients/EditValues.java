package org.stillroom.ingredients;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.stillroom.ingredients.ThesaurusEdit.AddLabel;
import org.stillroom.ingredients.ThesaurusEdit.AddSense;
import org.stillroom.ingredients.ThesaurusEdit.Merge;
import org.stillroom.ingredients.ThesaurusEdit.RemoveLabel;
import org.stillroom.ingredients.ThesaurusEdit.Split;

/** Writes edits as named values and reads them back; lists are parted by line feeds. */
final class EditValues {

    private EditValues() {}

    static SortedMap<String, String> of(ThesaurusEdit edit) {
        return switch (edit) {
            case AddSense e ->
                    values(
                            "edit",
                            "add-sense",
                            "id",
                            e.id(),
                            "label",
                            e.label(),
                            "role",
                            e.kind().word(),
                            "broader",
                            String.join("\n", e.broader()),
                            "scope",
                            e.scope());
            case AddLabel e ->
                    values(
                            "edit",
                            "add-label",
                            "sense",
                            e.sense(),
                            "label",
                            e.text(),
                            "kind",
                            e.kind().word(),
                            "language",
                            e.language());
            case RemoveLabel e ->
                    values("edit", "remove-label", "sense", e.sense(), "label", e.text());
            case Merge e -> values("edit", "merge", "from", e.from(), "into", e.into());
            case Split e ->
                    values(
                            "edit",
                            "split",
                            "sense",
                            e.sense(),
                            "id",
                            e.id(),
                            "label",
                            e.label(),
                            "labels",
                            String.join("\n", e.labels()));
        };
    }

    private static SortedMap<String, String> values(String... namesAndValues) {
        SortedMap<String, String> values = new TreeMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            values.put(namesAndValues[i], namesAndValues[i + 1]);
        }
        return values;
    }

    static Optional<ThesaurusEdit> read(Map<String, String> v) {
        return switch (v.getOrDefault("edit", "")) {
            case "add-sense" -> addSense(v);
            case "add-label" -> addLabel(v);
            case "remove-label" ->
                    has(v, "sense", "label")
                            ? Optional.of(new RemoveLabel(v.get("sense"), v.get("label")))
                            : Optional.empty();
            case "merge" ->
                    has(v, "from", "into")
                            ? Optional.of(new Merge(v.get("from"), v.get("into")))
                            : Optional.empty();
            case "split" ->
                    has(v, "sense", "id", "label")
                            ? Optional.of(
                                    new Split(
                                            v.get("sense"),
                                            v.get("id"),
                                            v.get("label"),
                                            list(v.getOrDefault("labels", ""))))
                            : Optional.empty();
            default -> Optional.empty();
        };
    }

    private static Optional<ThesaurusEdit> addSense(Map<String, String> v) {
        if (!has(v, "id", "label", "role")) {
            return Optional.empty();
        }
        return IngredientKind.of(v.get("role"))
                .map(
                        kind ->
                                new AddSense(
                                        v.get("id"),
                                        v.get("label"),
                                        kind,
                                        list(v.getOrDefault("broader", "")),
                                        v.getOrDefault("scope", "")));
    }

    private static Optional<ThesaurusEdit> addLabel(Map<String, String> v) {
        if (!has(v, "sense", "label")) {
            return Optional.empty();
        }
        return Label.Kind.of(v.getOrDefault("kind", "alternative"))
                .map(
                        kind ->
                                new AddLabel(
                                        v.get("sense"),
                                        v.get("label"),
                                        kind,
                                        v.getOrDefault("language", "en")));
    }

    private static boolean has(Map<String, String> values, String... names) {
        return Stream.of(names).allMatch(n -> !values.getOrDefault(n, "").isBlank());
    }

    private static List<String> list(String value) {
        return value.lines().map(String::strip).filter(s -> !s.isEmpty()).toList();
    }
}
