package org.stillroom.workbench.library;

import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.stillroom.inquiry.Study;
import org.stillroom.model.source.Source;

/** What is typed into the search field together with the facets that are ticked. */
final class Question {
    /** The facet whose values are decades. */
    private static final String DECADE = "decade";

    /** The facet whose values are short names of sources. */
    private static final String SOURCE = "source";

    private final SortedMap<String, SortedSet<String>> ticked = new TreeMap<>();
    private String typed = "";

    void type(String words) {
        typed = words.strip();
    }

    void tick(String field, String value, boolean on) {
        SortedSet<String> values = ticked.computeIfAbsent(field, f -> new TreeSet<>());
        if (on) {
            values.add(value);
        } else {
            values.remove(value);
        }
    }

    boolean isTicked(String field, String value) {
        return ticked.getOrDefault(field, new TreeSet<>()).contains(value);
    }

    /** Unticks every facet. */
    void clear() {
        ticked.clear();
    }

    /** Returns the question in the language of the search field. */
    String words(Study study) {
        StringBuilder all = new StringBuilder(typed);
        for (Map.Entry<String, SortedSet<String>> facet : ticked.entrySet()) {
            String joint = " ";
            for (String value : facet.getValue()) {
                all.append(joint).append(condition(facet.getKey(), value, study));
                joint = " or ";
            }
        }
        return all.toString().strip();
    }

    private static String condition(String field, String value, Study study) {
        return switch (field) {
            case DECADE -> "date:" + value.replaceFirst("0s$", "X");
            case SOURCE -> "source:\"" + sourceId(value, study) + "\"";
            default -> field + ":\"" + value.replace('"', ' ') + "\"";
        };
    }

    private static String sourceId(String shortName, Study study) {
        return study.sources().stream()
                .filter(s -> s.shortName().equals(shortName))
                .map(Source::id)
                .findFirst()
                .orElse(shortName);
    }
}
