package org.stillroom.library.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.stillroom.model.date.UncertainDate;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Circumstances;
import org.stillroom.model.source.Place;
import org.stillroom.model.source.Trade;

/** Turns the fields of a front matter into a bibliography. */
final class BibliographyFields {

    /** The names of all fields. */
    static final List<String> NAMES =
            List.of(
                    "title",
                    "author",
                    "edition",
                    "place",
                    "text-date",
                    "printing-date",
                    "language",
                    "trade",
                    "rights",
                    "scan",
                    "transcriber",
                    "notes",
                    "measures");

    private final Map<String, FrontMatter.Field> fields;
    private final List<Problem> problems = new ArrayList<>();

    BibliographyFields(Map<String, FrontMatter.Field> fields) {
        this.fields = fields;
    }

    /** Returns what was wrong, after {@link #toBibliography}. */
    List<Problem> problems() {
        return problems;
    }

    /** Returns the bibliography; where the fields are silent the defaults speak. */
    Bibliography toBibliography(String fallbackTitle, Circumstances defaults) {
        fields.forEach(this::checkName);
        return new Bibliography(
                words("title").orElse(fallbackTitle),
                words("author"),
                words("edition"),
                words("place").map(Place::of).or(defaults::place),
                date("text-date"),
                date("printing-date"),
                words("language").or(defaults::language),
                trade().or(defaults::trade),
                words("rights"),
                words("scan"),
                words("transcriber"),
                words("notes"),
                words("measures"));
    }

    private void checkName(String name, FrontMatter.Field field) {
        if (!NAMES.contains(name)) {
            String nearest = nearest(name, NAMES);
            problems.add(
                    Problem.warning(
                            field.file(),
                            field.line(),
                            name,
                            "No field has this name.",
                            "Perhaps “" + nearest + "” is meant."));
        }
    }

    private static String nearest(String word, List<String> words) {
        Optional<String> holding =
                words.stream().filter(w -> List.of(w.split("-")).contains(word)).findFirst();
        if (holding.isPresent()) {
            return holding.get();
        }
        LevenshteinDistance distance = LevenshteinDistance.getDefaultInstance();
        return words.stream()
                .min(java.util.Comparator.comparing(w -> distance.apply(word, w)))
                .orElseThrow();
    }

    private Optional<String> words(String name) {
        return Optional.ofNullable(fields.get(name))
                .map(FrontMatter.Field::words)
                .filter(w -> !w.isBlank());
    }

    private Optional<UncertainDate> date(String name) {
        Optional<String> words = words(name);
        Optional<UncertainDate> date = words.flatMap(UncertainDate::parse);
        if (words.isPresent() && date.isEmpty()) {
            String written = words.get();
            String remedy =
                    DatePhrase.toEdtf(written)
                            .map(e -> "Perhaps “" + e + "” is meant.")
                            .orElse("Write 1862, 1862~ (about), 186X (the 1860s) or 1860/1865.");
            problems.add(
                    Problem.warning(
                            fields.get(name).file(),
                            fields.get(name).line(),
                            written,
                            "The date is not in EDTF and is left out.",
                            remedy));
        }
        return date;
    }

    private Optional<Trade> trade() {
        Optional<String> words = words("trade");
        Optional<Trade> trade = words.flatMap(Trade::of);
        if (words.isPresent() && trade.isEmpty()) {
            List<String> known = java.util.Arrays.stream(Trade.values()).map(Trade::word).toList();
            problems.add(
                    Problem.warning(
                            fields.get("trade").file(),
                            fields.get("trade").line(),
                            words.get(),
                            "No trade has this name; it is left out.",
                            "Perhaps “"
                                    + nearest(words.get(), known)
                                    + "” is meant (one of "
                                    + String.join(", ", known)
                                    + ")."));
        }
        return trade;
    }
}
